import type { RuleCodes } from '../../rules/index.js'
import type { CaseFace, WarrantyFact } from '../../spec/index.js'
import type { Say, Texts } from '../catalogue.js'
import { nameOf, writeFigure, writeUnitName } from '../phrases.js'
import { cardWords } from './card.js'
import { MEASURE_NAMES } from './quantity.js'
import { writeMeterName } from './words.js'

interface Suggestion {
  readonly known: readonly string[]
  readonly more: number
  readonly meant: string | undefined
}

/** The probable name, or the known names. Starts with a space; empty if no name is known. */
function writeSuggestion({ meant, known, more }: Suggestion, say: Say): string {
  if (meant !== undefined) return ` Gemeint: „${meant}“?`
  if (known.length === 0) return ''
  const names = known.map((name) => `„${name}“`)
  const moreText = more > 0 ? [`${say.number(more)} weitere`] : []
  return ` Vorhanden: ${say.list([...names, ...moreText])}.`
}

type Volume = RuleCodes['record/refill-outside-tolerance']['refilled']

const WARRANTY_FACT_NAMES: Readonly<Record<WarrantyFact, string>> = {
  'who did it': 'Name des Ausführenden',
  photos: 'Fotos',
  'oil batch': 'Charge des Öls',
  'part numbers': 'Nummern der neuen Teile',
  'wrench certificate': 'Kalibrierschein jedes Drehmomentschlüssels',
  signature: 'Unterschrift',
}

function writeRefillFix({ value, unit }: Volume, byLevel: boolean, say: Say): string {
  if (byLevel)
    return 'sicherstellen, dass die Maschine waagerecht steht und das Öl ganz abgelassen war, dann den Ölstand auf die Markierung bringen.'
  const amount = say.quantity({ value: Math.abs(value), unit })
  return `${amount} ${value > 0 ? 'entnehmen' : 'nachfüllen'}, dann den Ölstand prüfen.`
}

const UNMEASURED_TEXTS: Readonly<Record<RuleCodes['record/tightening-not-measured']['done'], string>> = {
  'by hand': 'nur von Hand angezogen. Nach Datenblatt anziehen, bevor sich die Maschine bewegt',
  'without a wrench': 'fest, aber das Drehmoment wurde nicht gemessen. Mit Drehmomentschlüssel anziehen',
  'not checked': 'fester Sitz nicht geprüft. Prüfen, bevor sich die Maschine bewegt',
  'not known': 'fester Sitz nicht bekannt. Prüfen, bevor sich die Maschine bewegt',
}

const SERIAL_MISTAKES: Readonly<Record<RuleCodes['spec/serial-range-wrong']['what'], string>> = {
  'prefix repeated': 'Die Nummer wiederholt das Präfix. Dort das Präfix weglassen',
  'not a number': 'Beide Enden dürfen nur Ziffern enthalten. Buchstaben in das Präfix setzen',
  'different widths': 'Beide Enden brauchen gleich viele Ziffern. Führende Nullen schreiben',
  'ends before it starts': 'Der Bereich endet vor seinem Anfang',
}

/** With its article, after `Das Datenblatt hat`. */
const NO_TARGETS: Readonly<Record<RuleCodes['spec/dangling-reference']['to'], string>> = {
  source: 'keine Quelle',
  axle: 'keine Achse',
  support: 'keinen Abstützpunkt',
  gearcase: 'kein Getriebe',
  opening: 'keine Öffnung',
  cover: 'keinen Deckel',
  shield: 'kein Schutzblech',
  service: 'keine Wartung',
}

const SIDES: Readonly<Record<CaseFace, string>> = {
  front: 'vorn',
  rear: 'hinten',
  left: 'links',
  right: 'rechts',
  top: 'oben',
  bottom: 'unten',
}

export const rulesTexts: Texts<RuleCodes> = {
  // Sheets, and references to them.
  'spec/condition-empty': ({ holds }) =>
    holds === 'always'
      ? 'Leere Bedingung: Jede Maschine erfüllt sie. Ergänzen oder entfernen.'
      : 'Leere Liste: Keine Maschine erfüllt die Bedingung. Liste ergänzen oder entfernen.',
  'spec/dangling-reference': ({ to, id, ...names }, say) =>
    `Das Datenblatt hat ${nameOf(NO_TARGETS, to)} „${id}“.${writeSuggestion(names, say)}`,
  'spec/id-used-twice': ({ kind, id }) =>
    `Doppelte Kennung „${id}“ („${kind}“) in diesem Dokumentensatz. Jedem Dokument eine eigene Kennung geben.`,
  'spec/instances-without-per': ({ gearcase, count }, say) =>
    `Die Maschine hat ${say.number(count)} × „${gearcase}“. Gilt die Menge für eines oder für alle? „per“ ergänzen.`,
  'spec/limits-reversed': ({ min, max, unit }, say) =>
    `Mindestwert ${say.quantity({ value: min, unit })} liegt über Höchstwert ${say.quantity({ value: max, unit })}. Anleitung prüfen.`,
  'spec/model-years-reversed': ({ from, to }) =>
    `Die Modelljahre enden ${to}, bevor sie ${from} beginnen; keine Maschine erfüllt diese Bedingung. Jahre berichtigen.`,
  'spec/no-fill-opening': ({ gearcase }) =>
    `„${gearcase}“ hat keine Einfüllöffnung und lässt sich nach dem Ablassen nicht befüllen. Einer Öffnung die Verwendung „fill“ geben.`,
  'spec/no-way-to-empty': ({ gearcase }) =>
    `Eine Wartung wechselt das Öl von „${gearcase}“, aber das Datenblatt gibt kein Verfahren zum Entleeren an. Ablassschraube, Deckel oder Absaugen angeben.`,
  'spec/oil-space-chain': ({ gearcase, with: owner }) =>
    `„${gearcase}“ teilt das Öl von „${owner}“, das selbst das Öl eines anderen Getriebes teilt. Das Getriebe angeben, zu dem das Öl gehört.`,
  'spec/opening-without-role': ({ opening, role, use }) =>
    `„${opening}“ ist hier für „${use}“ genannt, hat in seinem Eintrag aber nicht die Verwendung „${role}“. Eines von beiden berichtigen.`,
  'spec/overlapping-overrides': ({ target, with: other }) =>
    `Diese Überschreibung und ${other} setzen ${target} für dieselbe Maschine. Eine der Bedingungen enger fassen; die Reihenfolge der Überschreibungen entscheidet nicht.`,
  'spec/override-of-other-kind': ({ target, kind, there }) =>
    `Diese Überschreibung ist von der Art „${kind}“, ${target} aber von der Art „${there}“.`,
  'spec/override-target-missing': ({ target }) =>
    `Das Datenblatt hat bei ${target} keinen Wert, den die Überschreibung setzen kann. Zeiger prüfen.`,
  'spec/part-supersedes-itself': ({ partNumber, numbers }) =>
    `Teil ${partNumber} wird durch sich selbst ersetzt (${numbers.join(' → ')}), es gibt keine Nummer zum Kaufen. Eine davon berichtigen.`,
  'spec/period-as-hours': ({ hours, months }, say) =>
    `${say.quantity({ value: hours, unit: 'h' })} sehen aus wie ${say.count(months, 'Monat', 'Monate')}, als Stunden geschrieben. Ein Betriebsstundenzähler zählt Arbeit, nicht den Kalender: Zeitraum als P${months}M schreiben.`,
  'spec/serial-range-wrong': ({ what, prefix = '', from = '…', to = '…' }) =>
    `Seriennummern ${prefix}${from} bis ${prefix}${to}: ${SERIAL_MISTAKES[what]}.`,
  'spec/sheet-not-found': ({ id, ...names }, say) =>
    `Kein Datenblatt „${id}“ in diesem Dokumentensatz.${writeSuggestion(names, say)}`,
  'spec/sheet-of-other-revision': ({ id, revision, known }, say) =>
    `Hier steht Revision „${revision}“ des Datenblatts „${id}“; der Dokumentensatz hat ${say.list(known.map((knownRevision) => `„${knownRevision}“`))}. Beide vergleichen, dann die richtige Revision nennen.`,
  'spec/tolerance-too-large': ({ value, minus, plus, unit }, say) =>
    `Eine Toleranz von − ${writeFigure(minus, say)} + ${writeFigure(plus, say)} auf ${say.quantity({ value, unit })} ist so groß wie der Wert. Dezimalzeichen prüfen.`,
  'spec/unit-of-other-measure': ({ unit, measure, required }, say) =>
    `Erwartet: ${MEASURE_NAMES[required]}; gefunden: ${MEASURE_NAMES[measure]} (${writeUnitName(unit, say)}).`,
  'spec/unknown-variant': ({ id, ...names }, say) =>
    `Das Datenblatt hat keine Variante „${id}“.${writeSuggestion(names, say)}`,
  'spec/variants-overlap': ({ variant, with: other }) =>
    `Nach diesen Bedingungen kann eine Maschine „${variant}“ und „${other}“ zugleich sein. Enger fassen, sodass nur eine zutrifft.`,
  'spec/waiver-without-finding': ({ code, waived }) =>
    `Diese Ausnahme passt zu keinem Befund: kein „${code}“ bei ${waived === '' ? 'dem ganzen Dokument' : waived}. Entfernen oder ihren Zeiger berichtigen.`,
  'spec/support-on-another-axle': ({ gearcase, axle, lifted }, say) =>
    `„${gearcase}“ sitzt hier: ${axle}; die Abstützpunkte heben aber an: ${say.list(lifted)}. Die Maschine würde am falschen Ende angehoben. Anleitung prüfen.`,
  'spec/drain-at-mark-up': ({ opening }) =>
    `„${opening}“ lässt bei Markierung oben ab: Die Öffnung ist dann oben, und das Öl bleibt im Gehäuse. Anleitung prüfen.`,
  'spec/wheel-mark-missing': ({ opening }) =>
    `„${opening}“ dient zum Einfüllen, Ablassen und Prüfen, aber das Datenblatt gibt nicht für jede Verwendung die Radstellung an. „wheelMark“ ergänzen.`,
  'spec/implausible-drain-temperature': ({ gearcase, temperature }, say) =>
    `${gearcase}: Ablassen bei ${say.quantity(temperature)} würde den verbrennen, der die Schraube öffnet. ${temperature.unit === 'degC' ? 'War der Wert in °F gedruckt? ' : ''}Anleitung prüfen.`,
  'spec/drain-not-named': ({ opening, gearcase }) =>
    `${gearcase}: „${opening}“ ist eine Ablassöffnung, aber kein Verfahren zum Entleeren nennt sie: Sie bliebe geschlossen, und altes Öl bliebe im Gehäuse. Nennen oder die Verwendung „drain“ entfernen.`,
  'spec/gearcase-without-change': ({ gearcase }) =>
    `Keine Wartung wechselt das Öl von „${gearcase}“. In eine aufnehmen; bei Lebensdauerfüllung laut Anleitung eine Ausnahme setzen.`,
  'spec/filter-without-change': ({ gearcase }) =>
    `Kein Ölwechsel umfasst die Filter von „${gearcase}“, weil es nie entleert wird. Zum Getriebe verschieben, zu dem das Öl gehört, oder das Entleeren angeben.`,
  'spec/position-contradicts-place': ({ part, place, position }) =>
    `${part}: Die Lage in Worten sagt „${nameOf(SIDES, place)}“, die Position „${nameOf(SIDES, position)}“. Anleitung prüfen und eine davon berichtigen.`,
  'spec/position-off-face': ({ part, face, coordinate }) =>
    coordinate === 'offset'
      ? `${part}: Ein Versatz ist ein Abstand zu einer Seite. „across“ ergänzen, zum Beispiel „left“.`
      : `${part}: Diese Seite (${cardWords.caseFaces[face]}) hat kein solches „${coordinate}“. Entfernen oder die Seite berichtigen.`,
  'spec/level-on-raised-end': ({ gearcase, raised }) =>
    raised === 'nothing'
      ? `${gearcase}: Der Ölstand wird auf Böcken abgelesen, aber die Maschine bleibt am Boden. Eines von beiden berichtigen.`
      : `${gearcase}: Der Ölstand wird auf Böcken abgelesen, sie heben aber nur ein Ende an, und eine schräge Maschine zeigt einen falschen Ölstand. Anleitung prüfen.`,
  'spec/implausible-mass': ({ mass }, say) =>
    `Eine Maschine von ${say.quantity(mass)} ist unplausibel, und die Tragfähigkeit der Böcke wird damit verglichen. Wurden Tonnen und Kilogramm verwechselt?`,
  'spec/source-date-in-the-future': ({ date, today }, say) =>
    `Diese Quelle trägt ein Datum in der Zukunft: ${say.date(date)} (heute: ${say.date(today)}). Jahr prüfen.`,
  'spec/override-far-from-base': ({ figure, base }, say) =>
    `${say.quantity(figure)} bei manchen Maschinen und ${say.quantity(base)} bei den anderen weichen stark voneinander ab. Dezimalzeichen und Einheit prüfen.`,
  'spec/size-spelling': ({ size, meant }) =>
    `Größen werden als Text verglichen: „${meant}“ schreiben, nicht „${size}“.`,
  'spec/override-equals-base': ({ target }) =>
    `Diese Überschreibung setzt den Wert, den das Datenblatt bei ${target} schon hat. Entfernen oder den Wert prüfen.`,
  'spec/model-year-gap': ({ from, to }) =>
    `Keine Variante gilt für ${from === to ? `das Modelljahr ${from}` : `die Modelljahre ${from} bis ${to}`}. Prüfen, ob damals eine Maschine gebaut wurde.`,
  // Printed figures: second units, threads and torques.
  'quantity/interval-distances-differ': ({ first, second }, say) =>
    `${say.quantity(first)} und ${say.quantity(second)} unterscheiden sich um mehr als ein Zehntel. Die kürzere Strecke entscheidet.`,
  'quantity/second-unit-disagrees': (params, say) =>
    say.reason({
      code: `quantity/printed-figures-${params.how === 'miss' ? 'differ-slightly' : params.how}`,
      params,
    }),
  'quantity/second-unit-slip': (params, say) => say.reason({ code: 'quantity/printed-figures-slip', params }),
  'quantity/distance-converted-wrong-way': ({ first, second }, say) =>
    `${say.quantity(first)} und ${say.quantity(second)}: Eine Strecke in Meilen ist die kleinere Zahl, sie wurde also falsch herum umgerechnet. Anleitung prüfen; die kürzere Strecke entscheidet.`,
  'thread/designation-unreadable': ({ thread, part, because }, say) =>
    `${part}: Das Gewinde „${thread}“ ist nicht lesbar.${because === null ? '' : ` ${say.reason(because)}`}`,
  'torque/above-proof-load': ({ part, thread, propertyClass, torque, load, proof }, say) =>
    `${part}: ${say.quantity(torque)} würden eine Schraube (${thread}, Klasse ${propertyClass}) mit etwa ${say.quantity({ value: Math.round(load.value / 100) / 10, unit: 'kN' })} belasten; ihre Prüfkraft beträgt ${say.quantity({ value: Math.round(proof.value / 100) / 10, unit: 'kN' })}. Einheit und Klasse prüfen.`,
  'torque/fill-and-drain-swapped': ({ gearcase, fill, drain }, say) =>
    `${gearcase}: ${say.quantity(fill)} an der Einfüllschraube und ${say.quantity(drain)} an der Ablassschraube passen besser zum Gewinde der jeweils anderen. Prüfen, ob sie vertauscht wurden; steht es so in der Anleitung, eine Ausnahme setzen.`,
  'torque/slip-at-plug': ({ part, thread, torque, factor, becomes, meant }, say) =>
    `${part}: ${say.quantity(torque)} sind für eine Verschlussschraube mit Gewinde ${thread} ungewöhnlich; ${factor.replace('.', ',')} sind es ${say.quantity({ value: Number(becomes.value.toPrecision(3)), unit: becomes.unit })}.${meant === undefined ? '' : ` Der Wert ist vielleicht in ${writeUnitName(meant, say)} angegeben.`} Vor Gebrauch die Anleitung prüfen.`,
  'torque/stages-not-rising': ({ part, before, step }, say) =>
    `${part}: ${say.quantity(step)} folgt auf ${say.quantity(before)}. Jede Stufe muss über der vorigen liegen.`,
  'torque/turns-on-parallel-thread': ({ part, thread }) =>
    `${part}: ${thread} ist ein zylindrisches Gewinde. Umdrehungen über handfest gelten für kegelige Gewinde und würden es ausreißen.`,
  'torque/turns-reversed': ({ part, min, max }, say) =>
    `${part}: Mindestwert ${writeFigure(min, say)} Umdrehungen liegt über Höchstwert ${writeFigure(max, say)}. Datenblatt berichtigen.`,
  'torque/large-for-drive': ({ part, drive, torque, limit }, say) =>
    `${part}: ${say.quantity(torque)} sind viel zu viel für einen Sechskant ${drive}; zu erwarten sind höchstens etwa ${say.quantity({ value: Number(limit.value.toPrecision(2)), unit: limit.unit })}. Einheit prüfen.`,
  'torque/fill-and-drain-far-apart': ({ gearcase, high, low }, say) =>
    `${gearcase}: ${say.quantity(high)} an der einen und ${say.quantity(low)} an der anderen Schraube weichen stark voneinander ab. Einheiten prüfen.`,
  'torque/small-for-class': ({ part, thread, propertyClass, torque, load, proof }, say) =>
    `${part}: ${say.quantity(torque)} belasten eine Schraube (${thread}, Klasse ${propertyClass}) nur mit etwa ${say.number(Math.round((100 * load.value) / proof.value))} % ihrer Prüfkraft. Einheit und Dezimalzeichen prüfen.`,
  'torque/implausible-turns': ({ part, turns }, say) =>
    `${part}: ${writeFigure(turns, say)} Umdrehungen über handfest würden das Gehäuse sprengen. Dezimalzeichen prüfen.`,
  'torque/implausible-angle': ({ part, angle }, say) =>
    `${part}: ${say.quantity(angle)} sind mehr als eine ganze Umdrehung und würden die Schraube abreißen. Wert prüfen.`,
  'torque/unknown-class': ({ part, propertyClass, meant }) =>
    `${part}: Keine Schraube hat die Festigkeitsklasse „${propertyClass}“.${meant === undefined ? ' Anleitung prüfen.' : ` Gemeint: „${meant}“?`}`,
  // Seals, oils and quantities.
  'seal/crush-washer-reused': ({ part }) =>
    `${part}: Das Datenblatt ersetzt den Dichtring nur „on condition“. Durch das Stauchen wird er hart: bei jedem Öffnen einen neuen einsetzen oder mit der Seite der Anleitung eine Ausnahme setzen.`,
  'seal/material-doubtful-in-oil': ({ part, reason }, say) => `${part}: ${say.reason(reason)}`,
  'seal/material-not-for-oil': ({ part, material }) =>
    `${part}: Getriebeöl zerstört ${nameOf(cardWords.sealMaterials, material)}. Ersatzteilliste prüfen.`,
  'seal/o-ring-size-differs': ({ part, reason }, say) =>
    `${part}: Nummer und Größe bezeichnen zwei verschiedene Ringe. ${say.reason(reason)}`,
  'seal/washer-does-not-fit': ({ part, reason }, say) => `${part}: ${say.reason(reason)}`,
  'seal/none-at-opening': ({ part }) =>
    `${part}: keine Dichtung aufgeführt. Dichtring oder Dichtmittel aufführen, „none“, wenn die Schraube keine Dichtung hat, oder „not stated“, wenn die Anleitung nichts angibt.`,
  'seal/none-beside-seal': ({ part }) =>
    `${part}: Eine Dichtung und „none“ sind beide aufgeführt. Eines entfernen.`,
  'seal/none-on-parallel-thread': ({ part, thread }) =>
    `${part}: ${thread} ist ein zylindrisches Gewinde und dichtet nicht selbst. Dichtring aufführen; für eine Schraube mit Metallkegel eine Ausnahme setzen.`,
  'seal/sealant-on-dry-thread': ({ part }) =>
    `${part}: Ein Gewindedichtmittel ist aufgeführt, das Anziehen gilt aber für ein trockenes Gewinde. Anleitung prüfen.`,
  'seal/o-ring-far-from-plug': ({ part, inside, thread }, say) =>
    `${part}: Ein O-Ring mit ${say.quantity(inside)} innen gehört nicht auf eine Schraube ${thread}. Ersatzteilliste prüfen.`,
  'seal/cure-of-zero': ({ part }) =>
    `${part}: Eine Aushärtezeit von null bedeutet, dass Öl das Dichtmittel sofort berühren darf. „not stated“ schreiben, wenn die Anleitung keine Zeit nennt.`,
  'oil/additive-counted-twice': ({ additive, volume, refill, dryFill }, say) =>
    `Füllmenge ${say.quantity(refill)} plus ${say.quantity(volume)} „${additive}“ übersteigt die Erstfüllmenge von ${say.quantity(dryFill)}. Die Füllmenge scheint den Zusatz zu enthalten.`,
  'oil/additive-exceeds-refill': ({ additive, volume, refill }, say) =>
    `${say.quantity(volume)} „${additive}“ sind so viel wie die Füllmenge von ${say.quantity(refill)} oder mehr. Einheit prüfen.`,
  'oil/ambient-gap': ({ from, to }, say) =>
    `Zwischen ${say.quantity(from)} und ${say.quantity(to)} ist kein Öl dieser Liste zulässig. Bereiche prüfen.`,
  'oil/unknown-edition': ({ grade, system, edition, known }, say) =>
    `${system}, Ausgabe „${edition}“: Die Grenzen von ${grade} sind nicht bekannt. Bekannte Ausgaben: ${say.list(known.map((name) => `„${name}“`))}.`,
  'oil/unknown-grade': ({ grade, system, others }, say) =>
    `${system} hat keine Klasse „${grade}“.${others.length === 0 ? '' : ` Vorhanden in: ${say.list(others)}.`}`,
  'oil/viscosity-outside-grade': ({ oil, grade, viscosity }, say) =>
    `${oil}: ${say.quantity(viscosity)} liegt außerhalb der Klasse ${grade}. Produktdatenblatt prüfen.`,
  'oil/unknown-category': ({ category }) =>
    `Es gibt keine Leistungsklasse „${category}“: Getriebeöle sind GL-1 bis GL-6. Anleitung prüfen.`,
  'fill/portion-larger-than-refill': ({ gearcase, portion, refill }, say) =>
    `${gearcase}: Der Anteil am gemeinsamen Öl, ${say.quantity(portion)}, übersteigt die ganze Füllmenge von ${say.quantity(refill)}. Einheit prüfen.`,
  'fill/refill-larger-than-dry-fill': ({ gearcase, refill, dryFill }, say) =>
    `${gearcase}: Die Füllmenge ${say.quantity(refill)} übersteigt die Erstfüllmenge ${say.quantity(dryFill)}, obwohl immer etwas Öl im Gehäuse bleibt. Prüfen, ob beide vertauscht wurden.`,
  'fill/implausible-refill': ({ gearcase, refill, limit }, say) =>
    `${gearcase}: Eine Füllmenge von ${say.quantity(refill)} ist hier unplausibel; zu erwarten sind höchstens etwa ${say.quantity({ value: Number(limit.value.toPrecision(2)), unit: limit.unit })}. Einheit prüfen.`,
  'fill/dry-fill-far-above-refill': ({ gearcase, dryFill, refill }, say) =>
    `${gearcase}: Die Erstfüllmenge ${say.quantity(dryFill)} ist mehr als das Fünffache der Füllmenge von ${say.quantity(refill)}. Dezimalzeichen und Einheit prüfen.`,
  'fill/minutes-with-engine-running': ({ gearcase }) =>
    `${gearcase}: Der Ölstand lässt sich nicht bei laufendem Motor und zugleich einige Minuten nach dem Abstellen ablesen. Eines von beiden berichtigen.`,
  'fill/implausible-level-depth': ({ gearcase, below }, say) =>
    `${gearcase}: Ein Ölstand ${say.quantity(below)} unter der Bohrung ist unplausibel. Dezimalzeichen und Einheit prüfen.`,
  'spec/implausible-hours': ({ hours }, say) =>
    `${say.quantity({ value: hours, unit: 'h' })} zwischen zwei Wartungen sind unplausibel. Dezimalzeichen prüfen.`,
  // Logs, toolboxes and stocks.
  'log/date-in-the-future': ({ date, today }, say) =>
    `${say.date(date)} liegt in der Zukunft (heute: ${say.date(today)}). Jahr und Monat prüfen.`,
  'log/oil-not-permitted': ({ gearcase, oil, permitted }, say) =>
    `${gearcase}: mit „${oil}“ nachgefüllt, nicht zulässig (zulässig: ${say.list(permitted)}). Öl wechseln, bevor die Maschine wieder arbeitet.`,
  'log/pause-reversed': ({ from, to }, say) =>
    `Die Pause endet am ${say.date(to)}, bevor sie am ${say.date(from)} beginnt.`,
  'log/record-of-other-machine': ({ machine, log, record }) =>
    `Der Nachweis „${record}“ gehört zur Maschine „${machine}“, dies ist aber das Betriebsbuch von „${log}“.`,
  'log/unknown-part': ({ id, ...names }, say) =>
    `Das Datenblatt hat hier kein „${id}“.${writeSuggestion(names, say)}`,
  'log/used-before-commissioned': ({ date, commissioned }, say) =>
    `${say.date(date)} liegt vor der Erstinbetriebnahme am ${say.date(commissioned)}. Eines der beiden Daten berichtigen.`,
  'log/variant-contradicted': ({ variant, candidates }, say) => {
    const others =
      candidates.length === 0
        ? 'Sie passen zu keiner Variante des Datenblatts'
        : `Sie passen zu ${say.list(candidates.map((candidate) => `„${candidate}“`))}`
    return variant === undefined
      ? 'Seriennummer, Modelljahr und Markt passen zu keiner Variante des Datenblatts. Typenschild prüfen.'
      : `Seriennummer, Modelljahr und Markt schließen die angegebene Variante „${variant}“ aus: ${others}. Typenschild prüfen.`
  },
  'log/meter-through-pause': ({ meter, first, last }, say) =>
    `Der Zählerstand (${writeMeterName(meter)}) stieg während dieser Pause von ${say.number(first)} auf ${say.number(last)}. Daten der Pause prüfen.`,
  'toolbox/implausible-accuracy': ({ wrench, percent }, say) =>
    `${wrench}: ${say.number(percent)} % sind für einen Drehmomentschlüssel unplausibel. Kalibrierschein prüfen.`,
  'toolbox/calibration-in-the-future': ({ wrench, date, today }, say) =>
    `${wrench}: Kalibrierung in der Zukunft: ${say.date(date)} (heute: ${say.date(today)}). Kalibrierschein prüfen.`,
  'toolbox/declared-range-reversed': ({ wrench, min, max }, say) =>
    `${wrench}: Der angegebene Bereich endet bei ${say.quantity(max)}, nicht über seinem Anfang von ${say.quantity(min)}.`,
  'toolbox/scale-wrong': ({ wrench, lowest, highest, graduation, unit }, say) =>
    `${wrench}: Eine Skala von ${say.number(lowest)} bis ${say.quantity({ value: highest, unit })} in Schritten von ${say.number(graduation)} ist unmöglich.`,
  'toolbox/scales-disagree': ({ wrench, first, other }, say) =>
    `${wrench}: Eine Skala endet bei ${say.quantity(first)}, die andere bei ${say.quantity(other)}. Skalen eines Schlüssels enden beim selben Drehmoment; Einheiten prüfen.`,
  'toolbox/vessel-graduation': ({ vessel, size, mark }, say) =>
    `${vessel}: Teilung oder unterster Teilstrich ${say.quantity(mark)} übersteigt den Inhalt von ${say.quantity(size)}.`,
  'toolbox/implausible-load-rating': ({ tool, rating }, say) =>
    `${tool}: Eine Tragfähigkeit von ${say.quantity(rating)} ist unplausibel. Schild erneut lesen: Wurden Tonnen und Kilogramm verwechselt?`,
  'stock/opened-larger-than-size': ({ container, opened, size }, say) =>
    `${container}: ${say.quantity(opened)} Rest in einem Gebinde von ${say.quantity(size)}. Volle Gebinde getrennt aufführen oder Einheit prüfen.`,
  'stock/viscosities-swapped': ({ container, kv40, kv100 }, say) =>
    `${container}: ${say.quantity(kv100)} bei 100 °C liegt nicht unter ${say.quantity(kv40)} bei 40 °C. Öl wird beim Erwärmen dünner; prüfen, ob beide vertauscht wurden.`,
  'stock/implausible-density': ({ container, density }, say) =>
    `${container}: Kein Öl hat eine Dichte von ${say.quantity(density)}. Einheit prüfen.`,
  'stock/implausible-pour-point': ({ container, pourPoint }, say) =>
    `${container}: Ein Pourpoint von ${say.quantity(pourPoint)} ist für ein Getriebeöl unplausibel. Fehlt das Minuszeichen?`,
  // Service records.
  'record/corrects-itself': ({ id }) =>
    `Die Berichtigung von „${id}“ führt zu diesem Nachweis zurück. Den Nachweis der Wartung selbst nennen.`,
  'record/corrects-unknown-record': ({ id, ...names }, say) =>
    `Das Betriebsbuch dieser Maschine hat keinen Nachweis „${id}“ zum Berichtigen.${writeSuggestion(names, say)}`,
  'record/date-in-the-future': ({ date, today }, say) =>
    `Der Nachweis trägt ein Datum in der Zukunft: ${say.date(date)} (heute: ${say.date(today)}). Jahr und Monat prüfen.`,
  'record/leak-left': ({ gearcase, found }) =>
    `${gearcase}: geschlossen, obwohl es ${found === 'weeping' ? 'schwitzt' : 'tropft'}. Eine Schraube mit Dichtring braucht einen neuen Dichtring, nie mehr Drehmoment; eine kegelige Schraube darf innerhalb ihrer Umdrehungen nachgezogen werden.`,
  'record/level-not-right': ({ gearcase, level }) =>
    level === 'not checked'
      ? `${gearcase}: Ölstand nicht geprüft. Prüfen, bevor die Maschine arbeitet.`
      : `${gearcase}: Ölstand ${level === 'below' ? 'unter' : 'über'} der Markierung. Berichtigen, bevor die Maschine arbeitet.`,
  'record/machine-not-found': ({ id, ...names }, say) =>
    `Kein Betriebsbuch der Maschine „${id}“ in diesem Dokumentensatz.${writeSuggestion(names, say)}`,
  'record/metal-in-the-oil': ({ gearcase, found }) =>
    `${gearcase}: ${METAL_FINDINGS[found]}, aber wieder befüllt. Maschine stillsetzen und das Getriebe öffnen lassen.`,
  'record/oil-not-permitted': ({ gearcase, oil, permitted }, say) =>
    `${gearcase}: mit „${oil}“ befüllt, nicht zulässig (zulässig: ${say.list(permitted)}). Ablassen, bevor die Maschine arbeitet.`,
  'record/part-not-on-machine': ({ part }) =>
    `Diese Maschine hat nach Variante, Seriennummer, Modelljahr oder Markt kein „${part}“. Prüfen, ob der Nachweis zu einer anderen Maschine gehört.`,
  'record/plug-not-tightened': ({ part }) =>
    `${part}: geöffnet, aber nicht als angezogen eingetragen. Schraube prüfen, bevor sich die Maschine bewegt.`,
  'record/reading-contradicts-log': ({ reason }, say) =>
    `Dieser Zählerstand widerspricht dem Betriebsbuch der Maschine. ${say.reason(reason)}`,
  'record/reading-missing': ({ meter }) =>
    `Der Zählerstand fehlt (${writeMeterName(meter)}); die nächste Wartung lässt sich von diesem Nachweis aus nicht zählen.`,
  'record/refill-not-recorded': ({ gearcase }) =>
    `${gearcase}: Ölwechsel ohne eingefüllte Menge. Ölstand prüfen, dann die Menge eintragen.`,
  'record/refill-outside-tolerance': ({ gearcase, refilled, printedRefill, byLevel, reason }, say) =>
    `${gearcase}: ${say.quantity(refilled)} eingefüllt, das Datenblatt gibt ${say.quantity(printedRefill)} an: ${writeRefillFix(reason.params['difference'] as Volume, byLevel, say)}`,
  'record/seal-not-new': ({ part, seal, usedAgain }) =>
    usedAgain
      ? `${part}: wiederverwendet (${nameOf(cardWords.seals, seal)}). Bei jedem Öffnen muss die Dichtung neu sein; neue einsetzen.`
      : `${part}: geöffnet, aber keine neue Dichtung eingetragen (${nameOf(cardWords.seals, seal)}). Schraube prüfen; im Zweifel neue Dichtung einsetzen.`,
  'record/tightening-method-differs': ({ part, done, required }) =>
    `${part}: nach ${done === 'turns' ? 'Umdrehungen' : 'Drehmoment'} angezogen; das Datenblatt gibt ${required === 'turns' ? 'Umdrehungen' : 'ein Drehmoment'} an.`,
  'record/tightening-not-measured': ({ part, done }) => `${part}: ${UNMEASURED_TEXTS[done]}.`,
  'record/torque-outside-band': ({ part, set, stated, side }, say) =>
    `${part}: auf ${say.quantity(set)} eingestellt; das Datenblatt gibt ${say.quantity(stated)} an. ${
      side === 'above'
        ? 'Herausdrehen, Gewinde prüfen, neuen Dichtring einsetzen, falls vorhanden, und erneut anziehen.'
        : 'Mit dem angegebenen Drehmoment anziehen.'
    }`,
  'record/turns-outside-band': ({ part, turns, min, max }, say) =>
    `${part}: ${say.count(turns, 'Umdrehung', 'Umdrehungen')} über handfest; das Datenblatt gibt ${max === undefined ? `mindestens ${writeFigure(min, say)}` : `${writeFigure(min, say)} bis ${writeFigure(max, say)}`} an.`,
  'record/unknown-container': ({ id, ...names }, say) =>
    `Kein Gebinde „${id}“ in diesem Dokumentensatz.${writeSuggestion(names, say)}`,
  'record/unknown-part': ({ id, ...names }, say) =>
    `Das Datenblatt hat hier kein „${id}“.${writeSuggestion(names, say)}`,
  'record/unknown-tool': ({ id, ...names }, say) =>
    `Kein Drehmomentschlüssel „${id}“ in diesem Dokumentensatz.${writeSuggestion(names, say)}`,
  'record/water-in-the-oil': ({ gearcase }) =>
    `${gearcase}: milchiges Öl. Eintrittsstelle des Wassers suchen, dann das Öl nach kurzem Lauf erneut wechseln.`,
  'record/wrench-cannot-reach': ({ part, wrench, torque, because }, say) =>
    [
      `${part}: „${wrench}“ lässt sich nicht auf ${say.quantity(torque)} einstellen.`,
      ...because.map((reason) => say.reason(reason)),
      'Mit einem geeigneten Schlüssel erneut anziehen.',
    ].join(' '),
  'record/drain-not-opened': ({ gearcase }) =>
    `${gearcase}: Ölwechsel ohne geöffnete Ablassöffnung. Das alte Öl ist vielleicht noch im Gehäuse; prüfen, bevor die Maschine arbeitet.`,
  'record/drained-far-below-refill': ({ gearcase, drained, refilled }, say) =>
    `${gearcase}: ${say.quantity(drained)} abgelassen, ${say.quantity(refilled)} eingefüllt. Entweder ging Öl verloren (undichte Stelle suchen), oder altes Öl blieb im Gehäuse (Ölstand prüfen).`,
  'record/wrench-out-of-calibration': ({ wrench, calibrated, date }, say) =>
    `${wrench}: zuletzt kalibriert am ${say.date(calibrated)}, die Kalibrierung war am ${say.date(date)} abgelaufen. Prüfen lassen; bei Mängeln diese Drehmomente erneut aufbringen.`,
  'record/warranty-facts-missing': ({ lacks }, say) =>
    `Die Garantie verlangt Angaben, die in diesem Nachweis fehlen: ${say.list(lacks.map((fact) => WARRANTY_FACT_NAMES[fact]))}. Mit einer Berichtigung ergänzen, solange sie noch zu finden sind.`,
  'record/certificate-expired': ({ wrench, certificate, validTo, date }, say) =>
    `${wrench}: Kalibrierschein ${certificate} war gültig bis ${say.date(validTo)}, vor der Arbeit am ${say.date(date)}. Den Schein jenes Tages nennen oder den Schlüssel prüfen lassen.`,
  'record/filter-not-changed': ({ part, change }) =>
    `${part}: kein Eintrag, dass mit dem Öl auch ${change === 'every change' ? 'gewechselt' : 'gereinigt'} wurde. Arbeit ausführen oder eintragen.`,
  'record/shield-not-refitted': ({ shield, gearcase }) =>
    `${gearcase}: kein Eintrag, dass „${shield}“ wieder angebaut wurde. Maschine vor dem Lauf prüfen.`,
  'record/other-part-number': ({ part, fitted, stated }) =>
    `${part}: Dichtung ${fitted} eingebaut; das Datenblatt gibt ${stated} an. Prüfen, ob sie passt oder der Hersteller die Nummer geändert hat.`,
  'record/more-than-container-held': ({ container, used, held }, say) =>
    `${container}: ${say.quantity(used)} daraus eingetragen, der Bestand hatte aber nur ${say.quantity(held)}. Gebinde und Einheit prüfen.`,
}

const METAL_FINDINGS: Readonly<Record<RuleCodes['record/metal-in-the-oil']['found'], string>> = {
  metallic: 'Metall im Öl',
  chips: 'Späne am Magneten oder in einem Filter',
  pieces: 'Bruchstücke am Magneten oder in einem Filter',
}
