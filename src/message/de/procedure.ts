import type { AtPart, PartKind, ProcedureCodes, RampObstacle } from '../../procedure/index.js'
import type { Texts } from '../catalogue.js'
import { nameOf } from '../phrases.js'
import { SIGNAL_WORDS, writeFactNames } from './words.js'

// Names come from the sheet in any language: they stand in brackets or before a colon, without an article.

/** `Ablassschraube (Vorderachsgetriebe, links)`; undefined if no part is named. */
function writePart({ part, gearcase, instance }: AtPart): string | undefined {
  const name = part ?? gearcase
  const places = [part === undefined ? undefined : gearcase, instance].filter((place) => place !== undefined)
  return name === undefined ? undefined : `${name}${places.length === 0 ? '' : ` (${places.join(', ')})`}`
}

/** `Ablassschraube (Vorderachsgetriebe, links): `, or the fallback if no part is named. */
function startWithPart(params: AtPart, fallback = ''): string {
  const part = writePart(params) ?? fallback
  return part === '' ? '' : `${part}: `
}

/** `Vorderachsgetriebe (links): `, or the fallback if no gearcase is named. */
const startWithGearcase = ({ gearcase, instance }: AtPart, fallback = ''): string =>
  startWithPart(gearcase === undefined ? {} : { gearcase, ...(instance && { instance }) }, fallback)

const RAMP_OBSTACLES: Readonly<Record<RampObstacle, string>> = {
  'must not run': 'Diese Maschine darf vor dem Ölwechsel nicht laufen.',
  'manual forbids ramps': 'Die Anleitung verbietet Rampen für diese Räder.',
  'axle not known': 'Das Datenblatt gibt nicht an, welche Achse die Abstützpunkte anheben.',
  'wheel must turn': 'Dafür muss ein Rad drehen, Räder auf Rampen können es nicht.',
  'level needs flat ground':
    'Das Getriebe muss waagerecht stehen, mit einem Ende auf Rampen steht es schräg.',
  'level needs stands': 'Die Anleitung prüft den Ölstand auf Böcken.',
  'guard is off': 'Die Schutzeinrichtung wäre ab, während die Maschine fährt.',
}

/** ` (Schritt „front-crack-fill“)`, if a step is named. */
const writeStep = ({ step }: AtPart): string => (step === undefined ? '' : ` (Schritt „${step}“)`)

const PART_KINDS: Readonly<Record<PartKind, string>> = {
  machine: 'die ganze Maschine (ohne „on“)',
  support: 'einen Abstützpunkt',
  'secured item': 'ein zu sicherndes Teil',
  axle: 'eine Achse',
  shield: 'ein Schutzblech',
  gearcase: 'ein Getriebe',
  opening: 'eine Öffnung',
  cover: 'einen Deckel',
  seal: 'eine Dichtung',
  'cover seal': 'eine Deckeldichtung',
  filter: 'einen Filter',
  'filter seal': 'eine Filterdichtung',
}

export const procedureTexts: Texts<ProcedureCodes> = {
  'procedure/variant-not-found': (params) =>
    `${startWithPart(params, 'Teil')}nur bei manchen Varianten vorhanden, und kein Schritt stellt die Variante dieser Maschine fest${writeStep(params)}. Zuerst die Variante feststellen.`,
  'procedure/manual-not-read': (params) =>
    `Die Arbeit beginnt vor dem Schritt, die Betriebsanleitung der Maschine zu lesen${writeStep(params)}. Diesen Schritt an den Anfang stellen.`,
  'procedure/protection-not-worn': (params) =>
    `Die Arbeit beginnt ohne Handschuhe und Augenschutz${writeStep(params)}. Diesen Schritt an den Anfang stellen.`,
  'procedure/machine-not-on-level-ground': (params) =>
    `Die Arbeit beginnt, bevor die Maschine waagerecht abgestellt ist${writeStep(params)}. Zuerst abstellen.`,
  'procedure/engine-running': (params) =>
    `Der Motor läuft möglicherweise noch${writeStep(params)}. Vor Arbeitsbeginn abstellen.`,
  'procedure/wheels-not-chocked': (params) =>
    `Kein Rad ist verkeilt${writeStep(params)}. Zuerst die Räder verkeilen, die am Boden bleiben.`,
  'procedure/machine-not-secured': (params) =>
    `Die Arbeit beginnt, bevor alles gesichert ist, was das Datenblatt nennt${writeStep(params)}. Zuerst sichern.`,
  'procedure/machine-not-secured-for-run': (params) =>
    `Die Maschine läuft, bevor alles gesichert ist, was das Datenblatt für den Lauf nennt${writeStep(params)}. Zuerst sichern.`,
  'procedure/run-without-oil': (params) =>
    `Die Maschine läuft, während ein Getriebe leer ist${writeStep(params)}: Die Zahnräder laufen trocken. Zuerst neues Öl eingießen.`,
  'procedure/lowered-with-drain-open': (params) =>
    `Die Maschine wird abgesenkt, während eine Ablassschraube oder ein Deckel fehlt${writeStep(params)}: Öl läuft aus, und die Öffnung ist nicht mehr erreichbar. Zuerst schließen.`,
  'procedure/chocks-or-pan-in-place': (params) =>
    `Die Maschine läuft, während Keile oder Auffangwanne noch dort sind${writeStep(params)}. Zuerst wegräumen.`,
  'procedure/guard-not-refitted': (params) =>
    `Die Maschine läuft ohne Schutzeinrichtung an bewegten Teilen${writeStep(params)}. Zuerst wieder anbauen.`,
  'procedure/chocks-on-lifted-wheels': (params) =>
    `Die Keile liegen an Rädern, die vom Boden abheben${writeStep(params)}. Räder einer Achse verkeilen, die am Boden bleibt.`,
  'procedure/axle-not-chocked': (params) =>
    `Nur einige der Achsen am Boden sind verkeilt${writeStep(params)}. Jedes Rad am Boden beidseitig verkeilen.`,
  'procedure/jack-as-support': (params) =>
    `Unter einer Maschine wird gearbeitet, die nur der Wagenheber hält${writeStep(params)}. Zuerst auf Böcke setzen: Ein Wagenheber hebt, er hält nicht.`,
  'procedure/ramps-and-jack': (params) =>
    `Die Maschine wird auf Rampen angehoben${writeStep(params)} und kann herunterrollen. Zuerst von den Rampen fahren.`,
  'procedure/ramps-not-permitted': (params) =>
    `Die Anleitung lässt diese Räder nicht auf Rampen zu${writeStep(params)}. Wagenheber und Böcke verwenden.`,
  'procedure/driven-with-plug-loose': (params) =>
    `Die Maschine fährt von den Rampen, während eine Schraube, ein Deckel oder ein Filter lose ist${writeStep(params)}. Zuerst anziehen; eine Einfüll- oder Kontrollschraube darf von Hand eingedreht sein.`,
  'procedure/machine-not-raised': (params) =>
    `Die Maschine ist nicht angehoben${writeStep(params)}. Zuerst anheben oder diesen Schritt weglassen.`,
  'procedure/drain-not-raised': (params) =>
    `${startWithPart(params)}Öl wird abgelassen, bevor die Maschine dafür angehoben ist${writeStep(params)}. Zuerst anheben: Ist die Schraube heraus, ist es zu spät.`,
  'procedure/run-on-stands': (params) =>
    `Die Maschine läuft oder wird bewegt, während sie angehoben ist${writeStep(params)}. Zuerst absenken.`,
  'procedure/machine-must-not-run': (params) =>
    `Die Maschine läuft mit altem Öl, obwohl ein eingetragenes Ereignis das verbietet${writeStep(params)}. Nicht laufen lassen, nicht schleppen: frei schieben oder mit der Winde ziehen und transportieren.`,
  'procedure/wheel-not-clear': (params) =>
    `${startWithPart(params)}Das Rad lässt sich am Boden nicht drehen${writeStep(params)}. Zuerst die Maschine anheben.`,
  'procedure/wheel-turned-with-plug-out': (params) =>
    `${startWithPart(params)}Das Rad wird gedreht, während eine Öffnung offen ist${writeStep(params)}. Zuerst die Schraube von Hand eindrehen.`,
  'procedure/wrong-attitude': (params) =>
    `${startWithPart(params)}Die Maschine steht nicht so, wie die Anleitung es für den Ölstand verlangt${writeStep(params)}. Nach Datenblatt absenken oder auf die Böcke setzen.`,
  'procedure/area-not-cleaned': (params) =>
    `${startWithPart(params)}Die Öffnung wird geöffnet, bevor ihre Umgebung sauber ist${writeStep(params)}. Zuerst reinigen, sonst fällt Schmutz hinein.`,
  'procedure/shield-in-the-way': (params) =>
    `${startWithPart(params)}Die Arbeit beginnt, während das Schutzblech im Weg ist${writeStep(params)}. Zuerst Schutzblech abnehmen.`,
  'procedure/fill-not-cracked': (params) =>
    `${startWithPart(params)}Das Getriebe wird geöffnet, bevor feststeht, dass sich die Einfüllschraube lösen lässt${writeStep(params)}. Zuerst Einfüllschraube lösen: Ein leeres Getriebe, das sich nicht füllen lässt, legt die Maschine still.`,
  'procedure/fill-plug-loose': (params) =>
    `${startWithPart(params)}Beim Öffnen ist die Einfüllschraube noch lose${writeStep(params)}. Zuerst Einfüllschraube von Hand wieder eindrehen.`,
  'procedure/plug-not-cracked': (params) =>
    `${startWithPart(params, 'Schraube')}sitzt noch fest${writeStep(params)}. Zuerst lösen.`,
  'procedure/no-pan': (params) =>
    `${startWithPart(params)}Beim Öffnen steht keine Wanne darunter${writeStep(params)}. Zuerst Wanne unterstellen.`,
  'procedure/opening-closed': (params) =>
    `${startWithPart(params, 'Öffnung')}nicht geöffnet${writeStep(params)}. Zuerst öffnen.`,
  'procedure/drain-not-out': (params) =>
    `${startWithPart(params)}Das Ablassen beginnt vor dem Herausdrehen${writeStep(params)}. Zuerst herausdrehen.`,
  'procedure/part-not-removed': (params) =>
    `${startWithPart(params, 'Teil')}nicht ausgebaut, der Schritt ist so nicht möglich${writeStep(params)}. Zuerst ausbauen.`,
  'procedure/fill-not-vented': (params) =>
    `${startWithPart(params)}Öl läuft ab, während die Einfüllöffnung geschlossen ist${writeStep(params)}. Einfüllschraube herausdrehen, damit Luft eintritt.`,
  'procedure/oil-not-warm': (params) =>
    `Das Öl wird kalt abgelassen${writeStep(params)}. Zuerst erwärmen, damit es den Schmutz mitnimmt: warm, nicht heiß.`,
  'procedure/sample-not-taken': (params) =>
    `${startWithGearcase(params, 'Getriebe')}keine Ölprobe genommen${writeStep(params)}, aber die Wartung verlangt eine. Aus der Mitte des Strahls nehmen.`,
  'procedure/sample-too-late': (params) =>
    `${startWithGearcase(params)}Das Öl ist schon abgelaufen${writeStep(params)}. Probe nehmen, während es läuft; Öl aus der Wanne ist als Probe unbrauchbar.`,
  'procedure/breather-not-cleared': (params) =>
    `${startWithGearcase(params)}Der Entlüfter wurde nicht geprüft${writeStep(params)}. Zuerst sicherstellen, dass er frei ist.`,
  'procedure/wrong-wheel-mark': (params) =>
    `${startWithPart(params)}Das Rad steht nicht in der verlangten Stellung${writeStep(params)}. Zuerst mit eingedrehter Schraube auf die Markierung drehen.`,
  'procedure/magnet-not-inspected': (params) =>
    `${startWithPart(params)}Der Magnet wurde nicht geprüft${writeStep(params)}. Vor dem Einbau prüfen. Bei Spänen oder Bruchstücken nicht befüllen.`,
  'procedure/magnet-not-cleaned': (params) =>
    `${startWithPart(params)}Der Magnet wird schmutzig wieder eingebaut${writeStep(params)}. Zuerst sauber wischen.`,
  'procedure/filter-before-drain': (params) =>
    `${startWithPart(params, 'Filter')}vor dem Ablassen des Öls abgenommen${writeStep(params)}. Zuerst ablassen, sonst läuft das ganze Öl dort aus.`,
  'procedure/filter-not-reached': (params) =>
    `${startWithPart(params)}Davor sitzt noch eine Schraube oder ein Deckel${writeStep(params)}. Zuerst abnehmen.`,
  'procedure/filter-not-inspected': (params) =>
    `${startWithPart(params, 'Filter')}nicht auf Metall geprüft${writeStep(params)}. Zuerst prüfen. Bei Spänen oder Bruchstücken nicht befüllen.`,
  'procedure/filter-not-cleaned': (params) =>
    `${startWithPart(params, 'Ölsieb')}wird schmutzig wieder eingebaut${writeStep(params)}. Zuerst reinigen.`,
  'procedure/filter-left-out': (params) =>
    `${startWithPart(params, 'Öffnung')}wird geschlossen, während der Filter dahinter fehlt${writeStep(params)}. Zuerst Filter einbauen.`,
  'procedure/old-seal-not-removed': (params) =>
    `${startWithPart(params)}Die alte Dichtung ist noch eingebaut${writeStep(params)}. Zuerst entfernen und sicherstellen, dass sie nicht am Gehäuse klebt.`,
  'procedure/face-not-wiped': (params) =>
    `${startWithPart(params)}Die Dichtfläche wurde nicht abgewischt${writeStep(params)}. Zuerst sauber wischen.`,
  'procedure/seal-not-renewed': (params) =>
    `${startWithPart(params, 'Teil')}wird ohne die Dichtung eingebaut, die das Datenblatt verlangt${writeStep(params)}. Nach Datenblatt neue Dichtung einsetzen, Dichtmittel auftragen oder alte Dichtung prüfen. Eine gelöste Schraube gilt als geöffnet.`,
  'procedure/part-not-fitted': (params) =>
    `${startWithPart(params, 'Teil')}wird angezogen vor dem Einbau mit Dichtung${writeStep(params)}. Zuerst einbauen.`,
  'procedure/oil-not-drained': (params) =>
    `${startWithPart(params)}Das alte Öl wird nie abgelassen${writeStep(params)}. Vor dem Eingießen des neuen Öls ablassen.`,
  'procedure/drain-left-closed': (params) =>
    `${startWithPart(params)}Eine weitere Ablassöffnung wird nie geöffnet${writeStep(params)}. Das Datenblatt nennt sie unter „also“: vor dem Eingießen des neuen Öls auch dort ablassen.`,
  'procedure/oil-not-inspected': (params) =>
    `${startWithGearcase(params)}Das alte Öl wird nicht geprüft${writeStep(params)}. Prüfen, solange das Getriebe noch offen ist.`,
  'procedure/oil-not-measured': (params) =>
    `${startWithGearcase(params)}Das neue Öl wird nicht abgemessen${writeStep(params)}. Zuerst die Füllmenge abmessen.`,
  'procedure/additive-missing': (params) =>
    `${startWithPart(params)}Das Öl wird ohne den Zusatz eingegossen, den das Datenblatt verlangt${writeStep(params)}. Zuerst zugeben.`,
  'procedure/oil-poured-twice': (params) =>
    `${startWithGearcase(params)}Die ganze Füllmenge wird ein zweites Mal eingegossen${writeStep(params)}: Zu viel Öl schäumt und drückt Dichtungen heraus. Schritt entfernen oder zuerst ablassen.`,
  'procedure/drain-not-tightened': (params) =>
    `${startWithPart(params)}Öl wird eingegossen, während eine Schraube, ein Deckel oder ein Filter darunter nicht fest ist${writeStep(params)}. Zuerst anziehen.`,
  'procedure/cover-not-cured': (params) =>
    `${startWithPart(params)}Öl wird eingegossen, bevor das Dichtmittel am Deckel ausgehärtet ist${writeStep(params)}. Zuerst Aushärten abwarten.`,
  'procedure/cover-not-tightened': (params) =>
    `${startWithPart(params)}Das Dichtmittel härtet aus, bevor der Deckel fest ist${writeStep(params)}. Zuerst anziehen.`,
  'procedure/hose-not-empty': (params) =>
    `${startWithPart(params)}Im Schlauch ist noch Öl${writeStep(params)}. Warten, bis er leer ist, erst dann den Ölstand prüfen oder die Einfüllöffnung schließen.`,
  'procedure/oil-not-settled': (params) =>
    `${startWithPart(params)}Der Ölstand wird geprüft, bevor sich das Öl gesetzt hat${writeStep(params)}. Zuerst ruhen lassen.`,
  'procedure/level-not-checked': (params) =>
    `${startWithPart(params)}Der Ölstand wird nie geprüft${writeStep(params)}. Prüfen, solange die Schraube heraus ist.`,
  'procedure/level-not-rechecked': (params) =>
    `${startWithPart(params)}Der Ölstand wird nach dem Lauf nicht erneut geprüft${writeStep(params)}. Erneut prüfen: Der Lauf verteilt das Öl.`,
  'procedure/oil-not-topped-up': (params) =>
    `${startWithPart(params)}Kein Schritt füllt nach der zweiten Prüfung Öl nach${writeStep(params)}. Diesen Schritt ergänzen.`,
  'procedure/part-not-tightened': (params) =>
    `${startWithPart(params, 'Teil')}offen oder nicht fest${writeStep(params)}. Zuerst anziehen.`,
  'procedure/gearcase-not-wiped': (params) =>
    `${startWithPart(params, 'Getriebe')}wird auf Dichtheit geprüft, aber vorher nicht abgewischt${writeStep(params)}. Zuerst abwischen: Verschüttetes Öl verdeckt eine undichte Stelle.`,
  'procedure/leaks-not-checked': (params) =>
    `${startWithPart(params)}Die Dichtheit wird nicht geprüft${writeStep(params)}. Prüfen, wenn alles fest ist.`,
  'procedure/leaks-not-checked-after-run': (params) =>
    `${startWithPart(params)}Die Dichtheit wird nach dem Lauf nicht geprüft${writeStep(params)}. Erneut prüfen: Warmes Öl tritt leichter aus.`,
  'procedure/filter-not-changed': (params) =>
    `${startWithPart(params)}Ein Filter oder Ölsieb wird nie ausgebaut. Wechseln oder reinigen, solange das Öl abgelassen ist.`,
  'procedure/oil-not-refilled': (params) =>
    `${startWithPart(params, 'Getriebe')}wird abgelassen und nie wieder befüllt. Neues Öl eingießen, bevor die Schrauben wieder eingebaut werden.`,
  'procedure/no-short-run': (params) =>
    `${startWithPart(params)}Das Datenblatt verlangt nach einem kurzen Lauf eine zweite Prüfung des Ölstands, und es gibt keinen Lauf. Lauf und Prüfung ergänzen.`,
  'procedure/shield-left-off': (params) =>
    `${startWithPart(params, 'Schutzblech')}wird nie wieder angebaut. Anbauen.`,
  'procedure/machine-not-lowered': () => 'Die Maschine bleibt angehoben. Am Ende auf den Boden absenken.',
  'procedure/used-oil-left': () =>
    'In der Wanne bleibt Altöl. In einem geschlossenen, als Altöl gekennzeichneten Behälter abgeben.',
  'procedure/work-not-recorded': () =>
    'Die Arbeit wird nach dem Anziehen des letzten Teils nicht eingetragen. Am Ende eintragen.',
  'procedure/unknown-action': ({ step, action }) =>
    `Schritt „${step}“: unbekannte Aktion „${action}“. Eine aus der Tabelle der Aktionen verwenden.`,
  'procedure/duplicate-step-id': ({ step }) =>
    `Doppelte Schrittkennung „${step}“. Jedem Schritt eine eigene Kennung geben.`,
  'procedure/wrong-part': ({ step, action, required }, say) =>
    `Schritt „${step}“: „${action}“ gilt für ${say.list(required.map((kind) => nameOf(PART_KINDS, kind)))}. „on“ berichtigen.`,
  'procedure/unknown-part': ({ step, on }) =>
    `Schritt „${step}“ zeigt auf ${on}, das ist kein Teil des Datenblatts. Zeiger berichtigen.`,
  'procedure/instance-missing': ({ step, gearcase, known }, say) =>
    `Schritt „${step}“ nennt keine Einbaustelle (${gearcase}): ${say.list(known)}. Einbaustelle angeben.`,
  'procedure/unknown-instance': ({ step, instance, gearcase, known }, say) =>
    known.length === 0
      ? `Schritt „${step}“ nennt die Einbaustelle „${instance}“, es gibt aber nur eine${gearcase === undefined ? '' : ` (${gearcase})`}. Einbaustelle weglassen.`
      : `Schritt „${step}“ nennt die Einbaustelle „${instance}“; vorhanden${gearcase === undefined ? '' : ` (${gearcase})`}: ${say.list(known)}.`,
  'procedure/wheel-mark-missing': (params) =>
    `Der Schritt gibt nicht an, wo die Markierung des Rades stehen muss${writeStep(params)}. Radmarkierung angeben.`,
  'procedure/part-not-on-this-machine': (params) =>
    `${startWithPart(params, 'Teil')}an dieser Maschine nicht vorhanden${writeStep(params)}. Schritt weglassen.`,
  'procedure/figure-missing': ({ step, name, pointer }) =>
    `Schritt „${step}“ hat kein „${name}“. Auf ${pointer} zeigen lassen.`,
  'procedure/wrong-figure': ({ step, name, pointer, found }) =>
    `Schritt „${step}“: „${name}“ zeigt auf ${found}, das gehört zu einem anderen Teil. Auf ${pointer} zeigen lassen.`,
  'procedure/dangling-pointer': ({ step, name, found }) =>
    `Schritt „${step}“: „${name}“ zeigt auf ${found}, das nicht im Datenblatt steht. Zeiger berichtigen oder weglassen.`,
  'procedure/other-sheet': ({ named, namedRevision, sheet, revision }) =>
    `Der Ablauf wurde für das Datenblatt „${named}“, Revision ${namedRevision}, geschrieben; dies ist „${sheet}“, Revision ${revision}. Gegen das genannte Datenblatt prüfen, oder durchsehen und dieses Datenblatt nennen.`,
  'procedure/unknown-service': ({ service, known }, say) =>
    `Das Datenblatt hat keine Wartung „${service}“${known.length === 0 ? '' : `; vorhanden: ${say.list(known)}`}.`,
  'procedure/only-without-match': ({ service, gearcase, instance }) =>
    `„only“ nennt die Wartung „${service}“ an „${gearcase}“${instance === undefined ? '' : ` (${instance})`}, die nicht zu diesem Einsatz gehört. Kennungen berichtigen oder Eintrag entfernen.`,
  'procedure/sample-not-possible': ({ service, gearcase }) =>
    `Die Wartung „${service}“ verlangt eine Ölprobe von „${gearcase}“, aber eine Probe lässt sich nur bei einem Ölwechsel durch eine Ablassschraube nehmen.`,
  'procedure/service-not-for-this-machine': ({ service }) =>
    `Die Wartung „${service}“ gilt nicht für diese Maschine; dafür werden keine Schritte geschrieben.`,
  'procedure/part-not-known': ({ part, missing }, say) =>
    `Nicht bekannt, ob diese Maschine dieses Teil hat (${part}): Das hängt ab von: ${say.list(writeFactNames(missing))}. Zuerst die Maschine prüfen, wie in den Schritten beschrieben.`,
  'procedure/oil-owner-missing': ({ part }) =>
    `${part}: teilt das Öl mit einem Getriebe, das nicht im Datenblatt steht; dafür lassen sich keine Schritte schreiben.`,
  'procedure/no-fill-opening': ({ gearcase }) =>
    `${gearcase}: an dieser Maschine keine Einfüllöffnung; dafür lassen sich keine Schritte schreiben.`,
  'procedure/no-way-to-empty': ({ gearcase }) =>
    `${gearcase}: Das Datenblatt gibt für diese Maschine kein Verfahren zum Entleeren an. Unter „emptying“ ergänzen.`,
  'procedure/no-level-opening': ({ gearcase }) =>
    `${gearcase}: an dieser Maschine keine Kontrollöffnung. Der Ölstand lässt sich nicht prüfen.`,
  'procedure/no-supports': ({ gearcase }) =>
    `${gearcase}: Für die Arbeit muss die Maschine angehoben werden, das Datenblatt nennt aber keine Abstützpunkte. Unter „access“ ergänzen.`,
  'procedure/supports-on-another-axle': ({ gearcase }) =>
    `${gearcase}: Die Abstützpunkte heben eine andere Achse an, die falschen Räder würden vom Boden abheben. Achse oder Abstützpunkte unter „access“ berichtigen.`,
  'procedure/wheel-on-the-ground': ({ part, gearcase }) =>
    `${part} (${gearcase}): dreht sich mit dem Rad, und laut Datenblatt wird vom Boden aus gearbeitet: Die Maschine wird gerollt, bis die Markierung richtig steht.`,
  'procedure/drain-left-out': ({ part, gearcase }) =>
    `${part} (${gearcase}): ist eine Ablassöffnung, aber kein Verfahren zum Entleeren nennt sie, daher öffnet sie kein Schritt. Altes Öl kann im Gehäuse bleiben, und die angegebene Füllmenge wäre dann zu viel. Unter „emptying“ ergänzen oder bei „also“ einer anderen geöffneten Ablassöffnung.`,
  'procedure/attitude-not-stated': ({ gearcase }) =>
    `${gearcase}: Die Stellung der Maschine für die Prüfung des Ölstands ist nicht angegeben. Siehe Anleitung.`,
  'procedure/ramps-not-possible': ({ because, part }) =>
    `Rampen sind nicht verwendbar${part === undefined ? '' : ` (${part})`}: ${RAMP_OBSTACLES[because]} Auf Böcke setzen.`,
  'procedure/ramps-not-stated': ({ part }) =>
    `Die Anleitung gibt nicht an, ob auf Rampen gefahren werden darf (${part}). Vor der Verwendung von Rampen fragen.`,
  'procedure/second-lift': ({ gearcase }) =>
    `${gearcase}: Die zweite Prüfung des Ölstands nach dem Lauf erfordert ein zweites Anheben.`,
  'procedure/caution-machine-may-move': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Wegrollende Maschinen können Menschen zerquetschen. Feststellbremse anziehen, Schlüssel abziehen, Räder verkeilen.`,
  'procedure/caution-must-not-run': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Zahnräder, die in Wasser, Schmutz oder ohne Öl laufen, sind in Minuten zerstört. Maschine nicht laufen lassen und nicht schleppen, bis das Öl jedes betroffenen Getriebes gewechselt ist.`,
  'procedure/caution-exhaust': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Abgase sind tödlich. Motor im Freien laufen lassen oder Abgase ins Freie leiten.`,
  'procedure/caution-lifting': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Eine angehobene Maschine kann herunterfallen und töten. Abstand halten, solange sich der Wagenheber bewegt; nie unter dem Wagenheber arbeiten.`,
  'procedure/caution-parking-brake': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Eine Feststellbremse an der angehobenen Achse oder ihrem Antrieb hält möglicherweise nicht. Nur verkeilte Räder am Boden halten.`,
  'procedure/caution-stands': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Ein schwacher oder rutschender Bock lässt die Maschine fallen. Tragfähige Unterstellböcke auf festem Boden verwenden; zur Probe gegen die Maschine drücken.`,
  'procedure/caution-ramps': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Eine Maschine, die von Rampen rollt oder kippt, kann töten. Rampen verwenden, die breiter als die Reifen sind, auf festem, waagerechtem Boden stehen und für die Maschine tragfähig sind. Alle von Front und Heck fernhalten, solange sie fährt. Nicht darunter arbeiten, bevor die Räder am Boden verkeilt sind.`,
  'procedure/caution-hot-oil': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Heißes Öl verbrüht. Abkühlen lassen, bis es nur noch warm ist; Gesicht und Hände fernhalten.`,
  'procedure/caution-oil-on-skin': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Altöl schadet der Haut. Handschuhe tragen; danach mit Seife waschen.`,
  'procedure/caution-wheel-turns': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Das andere Rad kann mitdrehen und eine Hand erfassen. Personen davon fernhalten.`,
  'procedure/caution-rolling': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Eine rollende Maschine kann Menschen zerquetschen. Personen fernhalten, eine Person an der Bremse, nur auf waagerechtem Boden rollen.`,
  'procedure/caution-chips': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Späne, Plättchen oder Stücke im Öl oder am Magneten bedeuten inneren Schaden. Nicht befüllen; untersuchen lassen.`,
  'procedure/caution-used-oil': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Altöl verseucht Boden und Wasser. In einem dichten, geschlossenen, gekennzeichneten Behälter aufbewahren.`,
  'procedure/caution-weeping-washer': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Schwitzt eine Schraube an der Dichtung, braucht sie eine neue Dichtung, nie mehr Drehmoment.`,
  'procedure/caution-weeping-taper': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Eine kegelige Schraube, die schwitzt, darf weitergedreht werden, aber nur innerhalb der Umdrehungen laut Anleitung.`,
  'procedure/caution-sharp-scraper': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Schaber und festklebende Dichtringe schneiden. Von der Hand weg ziehen; Dichtfläche nicht zerkratzen.`,
  'procedure/caution-shield-stays': ({ signal, shield }) =>
    `${SIGNAL_WORDS[signal]}: Bleibt angebaut: ${shield}. Die Schraube durch das Loch erreichen und das darauf laufende Öl abwischen.`,
}
