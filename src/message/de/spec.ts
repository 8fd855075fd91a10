import type { ExpectedJson, NotPlainData, SpecCodes, TypeName } from '../../spec/index.js'
import type { Texts } from '../catalogue.js'
import { capitalize, join, nameOf, writeUnitName } from '../phrases.js'
import { cardWords } from './card.js'
import { describeNotation } from './notation.js'
import { writeFactName } from './words.js'

const TYPE_NAMES: Readonly<Record<TypeName, string>> = {
  object: 'ein Objekt',
  list: 'eine Liste',
  text: 'ein Text',
  number: 'eine Zahl',
  'whole-number': 'eine ganze Zahl',
  'true-or-false': '„true“ oder „false“',
  null: '„null“',
}

/** Reasons why a line of a history cannot be used. */
const HISTORY_PROBLEMS: Readonly<Record<SpecCodes['spec/history-line-unreadable']['problem'], string>> = {
  'not-json': 'kein gültiges JSON',
  'repeated-key': 'ein Schlüssel kommt zweimal vor',
  'too-deep': 'zu tief verschachtelt',
  'not-an-addition': 'erwartet: {"op":"add","path":…,"value":…}',
  'no-such-place': 'das Betriebsbuch hat diesen Pfad nicht, oder er darf sich nicht ändern',
  'not-at-the-end': 'Einträge kommen nur an das Ende einer Liste: der Pfad muss mit /- enden',
  'replaces-a-part': 'vorhandene Daten würden ersetzt; jede Zeile fügt einer Liste einen Eintrag hinzu',
}

const JSON_NEEDS: Readonly<Record<ExpectedJson, string>> = {
  value: 'erwartet: ein Wert',
  key: 'erwartet: ein Schlüssel in doppelten Anführungszeichen (kein Komma vor schließender geschweifter Klammer)',
  colon: 'erwartet: ein Doppelpunkt',
  'comma-or-brace': 'erwartet: ein Komma oder eine schließende geschweifte Klammer',
  'comma-or-bracket': 'erwartet: ein Komma oder eine schließende eckige Klammer',
  end: 'erwartet: das Ende des Texts',
  'closing-quote': 'das schließende Anführungszeichen fehlt',
  escape: 'unbekannte Escape-Folge; Backslash verdoppeln',
  'no-control-character':
    'Zeilenende, Tabulator oder anderes Steuerzeichen in Anführungszeichen muss als Escape-Folge geschrieben werden',
}

const NOT_PLAIN_NAMES: Readonly<Record<NotPlainData, string>> = {
  undefined: 'ein nicht definierter Wert; stattdessen den Schlüssel weglassen',
  function: 'eine Funktion',
  symbol: 'ein Symbol',
  bigint: 'ein BigInt; eine Zahl schreiben',
  'not-finite': 'eine Zahl, die nicht endlich ist',
  cycle: 'ein Objekt, das sich selbst enthält',
  'sparse-list': 'eine Liste mit Lücken',
  'list-with-keys': 'eine Liste mit Schlüsseln',
  accessor: 'ein Getter; den Wert angeben',
  'hidden-property': 'eine nicht aufzählbare Eigenschaft',
  'symbol-key': 'ein Symbol als Schlüssel',
  'class-instance': 'eine Instanz einer Klasse; ein einfaches Objekt angeben',
  unreadable: 'ein nicht lesbares Objekt',
}

const SEAL_SIZES: Readonly<Record<string, string>> = {
  inside: 'Innendurchmesser',
  outside: 'Außendurchmesser',
  thickness: 'Dicke',
  section: 'Schnurstärke',
}

const quote = (text: string): string => `"${text}"`
const joinWithOr = (items: readonly string[]): string => join(items, 'oder')
const writeSuggestion = (didYouMean: string | undefined): string =>
  didYouMean === undefined ? '' : ` Gemeint: ${quote(didYouMean)}?`
const writeRange = (from: number | string | undefined, to: number | string | undefined): string =>
  from === undefined ? `bis ${to}` : to === undefined ? `ab ${from}` : `${from} bis ${to}`

export const specTexts: Texts<SpecCodes> = {
  'spec/variant-stated': ({ variant }) => `Das Betriebsbuch nennt die Variante ${variant}.`,
  'spec/variant-selected': ({ variant }) => `Nur die Bedingung der Variante ${variant} ist erfüllt.`,
  'spec/variant-only': ({ variant }) => `Variante ${variant} ist die einzige im Datenblatt.`,
  'spec/variant-not-known': ({ candidates }) =>
    candidates.length === 0
      ? 'Das Datenblatt hat keine Varianten.'
      : `Die Variante ist nicht bekannt: ${joinWithOr(candidates)}. Im Betriebsbuch eintragen.`,
  'spec/variant-not-on-sheet': ({ variant, known }, say) =>
    `Das Betriebsbuch nennt die Variante ${quote(variant)}, die nicht im Datenblatt steht${known.length === 0 ? '' : ` (${say.list(known)})`}. Datenblatt und Betriebsbuch prüfen.`,
  'spec/variant-contradicted': ({ variant, candidates }, say) =>
    `Das Betriebsbuch nennt die Variante ${variant}, aber die übrigen Angaben der Maschine schließen sie aus${candidates.length === 0 ? '' : `; sie passen zu ${say.list(candidates)}`}. Typenschild der Maschine prüfen.`,
  'spec/variant-none-fits': ({ known }, say) =>
    `Keine Variante des Datenblatts passt zu dieser Maschine; vorhanden: ${say.list(known)}. Seriennummer prüfen oder das Datenblatt suchen, das für sie gilt.`,
  'spec/variant-without-condition': ({ variant }) =>
    `Das Datenblatt gibt für Variante ${variant} keine Bedingung an; das Betriebsbuch muss sie nennen.`,
  'spec/fact-missing': ({ fact }) => `${writeFactName(fact)} nicht bekannt. Im Betriebsbuch eintragen.`,
  'spec/variant-listed': ({ variants, listed }, say) =>
    `Gilt für ${say.list(listed)}; diese Maschine ist ${say.list(variants)}.`,
  'spec/variant-not-listed': ({ variants, listed }, say) =>
    listed.length === 0
      ? 'Gilt für keine Variante: Die Liste ist leer.'
      : `Gilt nur für ${say.list(listed)}; diese Maschine ist ${say.list(variants)}.`,
  'spec/model-year-in-range': ({ modelYear, from, to }) =>
    `Modelljahr ${modelYear} liegt im Bereich ${writeRange(from, to)}.`,
  'spec/model-year-out-of-range': ({ modelYear, from, to }) =>
    `Modelljahr ${modelYear} liegt außerhalb des Bereichs ${writeRange(from, to)}.`,
  'spec/serial-in-range': ({ serial, prefix, from, to }) =>
    `Seriennummer ${serial} liegt im Bereich ${writeSerialRange(prefix, from, to)}.`,
  'spec/serial-out-of-range': ({ serial, prefix, from, to }) =>
    `Seriennummer ${serial} liegt außerhalb des Bereichs ${writeSerialRange(prefix, from, to)}.`,
  'spec/serial-form-differs': ({ serial, prefix, width }, say) =>
    `Seriennummer ${quote(serial)} hat nicht die Form des Bereichs: ${prefix === '' ? '' : `${quote(prefix)}, dann `}${width === undefined ? 'eine Zahl' : `eine Zahl aus ${say.count(width, 'Ziffer', 'Ziffern')}`}. Typenschild prüfen.`,
  'spec/serial-range-unreadable': ({ prefix, from, to }) =>
    `Der Bereich der Seriennummern ${writeSerialRange(prefix, from, to)} ist nicht verwendbar: Beide Enden müssen Zahlen mit gleich vielen Ziffern sein.`,
  'spec/market-listed': ({ market, listed }, say) =>
    `Gilt für den Markt ${say.list(listed)}; diese Maschine ist für ${market}.`,
  'spec/market-not-listed': ({ market, listed }, say) =>
    listed.length === 0
      ? 'Gilt für keinen Markt: Die Liste ist leer.'
      : `Gilt nur für den Markt ${say.list(listed)}; diese Maschine ist für ${market}.`,
  'spec/market-case-differs': ({ market, listed }, say) =>
    `Markt ${quote(market)} unterscheidet sich von ${say.list(listed)} nur in der Groß- und Kleinschreibung. Beide gleich schreiben.`,
  'spec/part-on-every-machine': () => 'Jede Maschine dieses Datenblatts hat dieses Teil.',
  'spec/part-on-some-machines': () => 'Nur manche Maschinen dieses Datenblatts haben dieses Teil.',
  'spec/leaf-from-sheet': () => 'Das Datenblatt gibt diesen Wert direkt an.',
  'spec/leaf-absent': () => 'Das Datenblatt gibt diesen Wert nicht an.',
  'spec/override-applies': () => 'Eine Überschreibung des Datenblatts gilt für diese Maschine.',
  'spec/override-may-apply': () =>
    'Eine Überschreibung des Datenblatts gilt möglicherweise für diese Maschine.',
  'spec/override-does-not-fit': () =>
    'Eine Überschreibung des Datenblatts zeigt hierher, aber ihr Wert hat eine andere Art, oder sie zeigt auf einen Teil eines Werts. Datenblatt berichtigen.',
  'spec/overrides-overlap': ({ overrides }, say) =>
    `${say.count(overrides.length, 'Überschreibung', 'Überschreibungen')} des Datenblatts gelten hier zugleich. Datenblatt so berichtigen, dass nur eine gilt.`,
  'spec/candidates-agree': ({ candidates }, say) =>
    `Möglich: ${say.count(candidates.length, 'Wert', 'Werte')}; alle sind gleich.`,
  'spec/not-yaml': ({ line, column, problem }) =>
    `Kein gültiges YAML: Zeile ${line}, Spalte ${column}: ${problem}`,
  'spec/yaml-comma-in-braces': ({ text }) =>
    `YAML liest ${quote(text)} als Schlüssel: In geschweiften Klammern beendet ein Komma einen Text. Texte mit Komma in Anführungszeichen setzen.`,
  'spec/yaml-comment-in-text': ({ text, comment }) =>
    `YAML liest nur ${quote(text)}, und ${quote(`#${comment}`)} als Kommentar. Text in Anführungszeichen setzen oder ein Leerzeichen nach # setzen.`,
  'spec/yaml-key-is-boolean': ({ key }) =>
    `YAML liest diesen Schlüssel als ${key}, nicht als Wort. In Anführungszeichen setzen.`,
  'spec/yaml-too-large': ({ limit }, say) =>
    `Dieses YAML hat mehr als ${say.number(limit)} Wörter, Zeichen und Zeilenenden. Als JSON schreiben oder aufteilen.`,
  'spec/not-json': ({ line, column, needs }) =>
    `Kein gültiges JSON: Zeile ${line}, Spalte ${column}: ${JSON_NEEDS[needs]}.`,
  'spec/table-instead-of-document': ({ columns }, say) =>
    `Das ist eine Tabelle (CSV) mit den Spalten ${say.list(columns.map(quote))}, kein Dokument. Ein Dokument als JSON oder YAML schreiben. Für eine Flotte jede Zeile als JSON-Zeile an „due -“ geben.`,
  'spec/history-line-unreadable': ({ line, problem }) =>
    `Zeile ${line} des Verlaufs ist nicht verwendbar: ${HISTORY_PROBLEMS[problem]}.`,
  'spec/history-cut-off': ({ line }) =>
    `Zeile ${line}, die letzte des Verlaufs, ist abgeschnitten und wurde nicht gelesen. Löschen und erneut hinzufügen.`,
  'spec/duplicate-key': ({ key }) =>
    `Doppelter Schlüssel ${quote(key)}. Nur der letzte würde gelesen: den falschen löschen.`,
  'spec/not-plain-data': ({ found }) => `Keine JSON-Daten; gefunden: ${NOT_PLAIN_NAMES[found]}.`,
  'spec/forbidden-key': ({ key }) =>
    `Schlüssel ${quote(key)} ist in einem Dokument nicht erlaubt. Einen anderen wählen.`,
  'spec/too-deep': ({ limit }, say) =>
    `Listen und Objekte sind tiefer verschachtelt als ${say.count(limit, 'Ebene', 'Ebenen')}.`,
  'spec/too-long': ({ length, limit }, say) =>
    `Dieser Text hat ${say.number(length)} Zeichen; zulässig sind ${say.number(limit)}.`,
  'spec/too-large': ({ limit }, say) =>
    `Es sind mehr als ${say.number(limit)} Werte oder Schlüssel. Dokument aufteilen.`,
  'spec/more-mistakes': ({ shown }, say) =>
    `Dieses Dokument hat mehr als ${say.count(shown, 'Fehler', 'Fehler')}; die übrigen sind nicht aufgeführt.`,
  'spec/wrong-kind': ({ found, expected, didYouMean }) =>
    `Erwartet: Art ${joinWithOr(expected)}; gefunden: ${quote(found)}.${writeSuggestion(didYouMean)}`,
  'spec/wrong-version': ({ found, readable, quotes }) =>
    quotes
      ? `Erwartet: die Version als Text: ${quote(readable[0] ?? '')} schreiben, in Anführungszeichen.`
      : `Erwartet: Version ${joinWithOr(readable)}; gefunden: ${found}.`,
  'spec/missing-key': ({ key, allowed }) =>
    `Fehlender Schlüssel ${quote(key)}${allowed === undefined ? '' : ` (${joinWithOr(allowed.map(quote))})`}.`,
  'spec/unknown-key': ({ key, known, didYouMean }, say) =>
    `Unbekannter Schlüssel ${quote(key)}.${didYouMean === undefined ? (known.length === 0 ? '' : ` Bekannt: ${say.list(known)}.`) : writeSuggestion(didYouMean)}`,
  'spec/wrong-type': ({ expected, found, value }) =>
    `Erwartet: ${TYPE_NAMES[expected]}; gefunden: ${TYPE_NAMES[found]}${value === undefined ? '' : ` (${value})`}.`,
  'spec/not-in-list': ({ found, allowed, didYouMean }) =>
    `Erwartet: ${joinWithOr(allowed.map(quote))}; gefunden: ${quote(found)}.${writeSuggestion(didYouMean)}`,
  'spec/bad-figure': ({ found }) =>
    `Erwartet: ein Zahlenwert; gefunden: ${quote(found)}. Ziffern wie gedruckt mit Dezimalpunkt schreiben: bis zu neun davor und sechs danach. Ein Bruch gehört in "asPrinted".`,
  'spec/interval-too-long': ({ found }) =>
    `Intervall ${found} ist unplausibel lang: höchstens sechs Ziffern vor dem Dezimalpunkt.`,
  'spec/comma-decimal': ({ found, didYouMean }) =>
    didYouMean === undefined
      ? `Zahlenwert ${quote(found)} hat ein Komma, das Dezimalstellen oder Tausender bedeuten kann. Dezimalpunkt und kein Tausenderzeichen schreiben.`
      : `Zahlenwert ${quote(found)} hat ein Dezimalkomma. ${quote(didYouMean)} schreiben.`,
  'spec/figure-without-quotes': ({ found }, say) =>
    `Erwartet: ein Zahlenwert in Anführungszeichen; gefunden: die Zahl ${say.number(found, 15)}, die gedruckte Nullen verliert. Wie gedruckt schreiben.`,
  'spec/bad-id': ({ found, didYouMean }) =>
    `Erwartet: eine Kennung (Kleinbuchstaben, Ziffern und Bindestriche, am Anfang ein Buchstabe, höchstens 64 Zeichen); gefunden: ${quote(found)}.${writeSuggestion(didYouMean)}`,
  'spec/bad-date': ({ found }) => `Erwartet: ein Datum wie 2031-03-09; gefunden: ${quote(found)}.`,
  'spec/bad-period': ({ found }) =>
    `Erwartet: ein Zeitraum aus ganzen Jahren, Monaten, Wochen oder Tagen wie P1Y, P6M, P2W oder P10D; gefunden: ${quote(found)}.`,
  'spec/bad-pointer': ({ found }) =>
    `Erwartet: ein JSON-Zeiger; gefunden: ${quote(found)}. Jeden Schlüssel mit / beginnen; in einem Schlüssel ~1 für / und ~0 für ~ schreiben.`,
  'spec/bad-currency': ({ found }) =>
    `Erwartet: ein Währungscode aus drei Großbuchstaben wie EUR; gefunden: ${quote(found)}.`,
  'spec/bad-sha256': ({ found }) =>
    `Erwartet: ein SHA-256 aus 64 Ziffern und Buchstaben a bis f; gefunden: ${quote(found)}.`,
  'spec/empty-text': ({ key }) =>
    `Leerer Text bei ${quote(key)}. Ausfüllen oder den Schlüssel weglassen, wenn er nicht verlangt ist.`,
  'spec/empty-list': ({ key }) => `Leere Liste bei ${quote(key)}; mindestens ein Eintrag ist nötig.`,
  'spec/bad-notation': describeNotation,
  'spec/number-too-small': ({ found, limit, inclusive }, say) =>
    `Erwartet: ${inclusive ? `${say.number(limit)} oder mehr` : `mehr als ${say.number(limit)}`}; gefunden: ${say.number(found, 15)}.`,
  'spec/number-too-large': ({ found, limit }, say) =>
    `Erwartet: ${say.number(limit)} oder weniger; gefunden: ${say.number(found, 15)}.`,
  'spec/interval-empty': () =>
    'Leeres Intervall: Die Wartung wäre nie fällig. Stunden, Strecke oder Zeitraum angeben, oder „not stated“.',
  'spec/limits-empty': ({ unit }, say) =>
    `Diese Grenzen (${writeUnitName(unit, say)}) haben weder Mindest- noch Höchstwert. Einen angeben, oder „not stated“.`,
  'seal/zero-size': ({ part, size }) =>
    `${capitalize(part)}: Maß der Dichtung (${nameOf(SEAL_SIZES, size)}) ist 0 mm. Ein nicht bekanntes Maß weglassen.`,
  'interval/limit-not-above-zero': ({ by }) =>
    `Die Grenze ist null (${nameOf(cardWords.dueBy, by)}). Datenblatt berichtigen.`,
}

function writeSerialRange(prefix: string, from: string | undefined, to: string | undefined): string {
  if (from === undefined && to === undefined) return `${prefix}…`
  return writeRange(
    from === undefined ? undefined : `${prefix}${from}`,
    to === undefined ? undefined : `${prefix}${to}`,
  )
}
