import type { ToolKind } from '../../procedure/index.js'
import type { PartName, ServiceCodes } from '../../service/index.js'
import type { Say, Texts } from '../catalogue.js'
import { capitalize, join, nameOf } from '../phrases.js'
import { cardWords } from './card.js'
import { SIGNAL_WORDS, writeFactNames, writeMeterName } from './words.js'

const SUPPLY_NAMES: Readonly<Record<string, string>> = {
  rags: 'Putzlappen',
  'gloves and goggles': 'Handschuhe und Schutzbrille',
  oil: 'Öl',
  additive: 'Zusatz',
  seal: 'neue Dichtungen',
  sealant: 'Dichtmittel',
  'sample bottle': 'für jede Ölprobe eine saubere, trockene Probenflasche mit Verschluss',
  solvent: 'Lösungsmittel und eine Schale zum Auswaschen des Ölsiebs',
  'suction pump': 'eine Absaugpumpe mit einem Schlauch, der bis zum Gehäuseboden reicht',
  'used-oil container': 'ein geschlossener, für Altöl gekennzeichneter Behälter',
}

const TOOL_NAMES: Readonly<Record<ToolKind, string>> = {
  chocks: 'Unterlegkeile',
  jack: 'Wagenheber',
  stands: 'Unterstellböcke',
  ramps: 'Auffahrrampen',
  brush: 'Bürste',
  'breaker bar': 'Knebel mit langem Hebel',
  'socket or key': 'Steckschlüssel oder Schlüssel',
  'drain pan': 'Auffangwanne',
  'suction pump': 'Absaugpumpe',
  scraper: 'Schaber',
  'measuring vessel': 'Messbecher',
  'funnel and hose': 'Trichter mit Schlauch',
  'torque wrench': 'Drehmomentschlüssel',
}

const writeRole = (role: string): string => nameOf(cardWords.roles, role)
const writeDrive = (drive: string): string => nameOf(cardWords.drives, drive)

/** `Hinterachsgetriebe, links: Ablassschraube`. */
function writePart({ gearcase, part, instance }: PartName): string {
  const placeText = [gearcase, instance?.name].filter((word) => word !== undefined).join(', ')
  if (part === undefined) return placeText === '' ? 'Maschine' : placeText
  return placeText === '' ? part : `${placeText}: ${part}`
}

/** `2019 bis 2021`, `ab KA004512`. */
function writeRange(from: string | number | undefined, to: string | number | undefined, prefix = ''): string {
  if (from === undefined) return to === undefined ? `mit Anfang ${prefix}` : `bis ${prefix}${to}`
  return to === undefined ? `ab ${prefix}${from}` : `${prefix}${from} bis ${prefix}${to}`
}

/** `80 bis 95 h`, `mindestens 80 h`; rounded to two digits after a word such as `etwa`. */
function writeAmount(
  { min, max, unit }: { readonly min?: number; readonly max?: number; readonly unit: string },
  say: Say,
  about = '',
): string {
  const writeQuantity = (value: number) =>
    say.quantity({ value: about === '' ? value : Number(value.toPrecision(2)), unit })
  if (min === undefined) return max === undefined ? '' : `höchstens ${writeQuantity(max)}`
  if (max === undefined) return `mindestens ${writeQuantity(min)}`
  return writeQuantity(min) === writeQuantity(max)
    ? `${about}${writeQuantity(min)}`
    : `${about}${writeQuantity(min)} bis ${writeQuantity(max)}`
}

export const serviceTexts: Texts<ServiceCodes> = {
  'service/part-not-known': ({ part, facts }, say) =>
    `Nicht bekannt, ob diese Maschine dieses Teil hat (${writePart(part)}). Feststellen: ${say.list(writeFactNames(facts))}.`,
  'service/variant-not-known': ({ facts, candidates }, say) =>
    `Die Variante ist nicht bekannt: ${join(candidates, 'oder')}. Feststellen: ${say.list(writeFactNames(facts))}.`,
  'service/variant-contradicted': ({ candidates }) =>
    candidates.length === 0
      ? 'Die Angaben im Betriebsbuch passen zu keiner Variante des Datenblatts. Typenschild prüfen.'
      : `Das Betriebsbuch widerspricht sich: Seine übrigen Angaben passen zu ${join(candidates, 'oder')}, nicht zur genannten Variante. Typenschild prüfen.`,
  'service/figure-not-stated': ({ part, role }) =>
    role === 'fasteners'
      ? `${capitalize(writePart(part))}: Anzahl der Schrauben nicht angegeben. Zählen.`
      : `${capitalize(writePart(part))}: ${writeRole(role)} nicht angegeben. Siehe Anleitung.`,
  'service/figure-not-known': ({ part, role, facts }, say) =>
    `${capitalize(writePart(part))}: ${writeRole(role)} hängt ab von: ${say.list(writeFactNames(facts))}. Zuerst feststellen.`,
  'service/torque-not-settled': ({ part }) =>
    `${capitalize(writePart(part))}: Drehmoment angegeben, aber kein Einstellwert gefunden. Siehe „${cardWords.sections.tightening}“.`,
  'service/settings-need-toolbox': ({ parts }) =>
    `Kein Werkzeugkasten angegeben, daher keine Einstellwerte für die angegebenen Drehmomente (${parts.map(writePart).join('; ')}). Werkzeugkasten angeben.`,
  'service/due-not-known': ({ parts, service, reason }, say) =>
    `Nicht bekannt, ob „${service}“ fällig ist (${parts.map(writePart).join('; ')}). ${say.reason(reason)}`,
  'service/ambient-not-given': ({ part }) =>
    `Keine Umgebungstemperatur angegeben; Öl nicht nach Temperatur gewählt (${writePart(part)}).`,
  'service/no-toolbox': () => 'Kein Werkzeugkasten angegeben: Schlüssel, Messbecher und Wanne nicht geprüft.',
  'service/no-stock': () => 'Kein Bestand angegeben: alles als Kauf aufgeführt.',
  'service/viscosity-not-known': ({ oil }) =>
    `${oil}: Viskosität bei dieser Temperatur nicht bekannt, daher wird keine Eingießzeit berechnet.`,
  'service/oil-for-ambient': ({ oil, ambient }, say) =>
    `Bei ${say.quantity(ambient)} lässt das Datenblatt ${oil} zu.`,
  'service/several-suitable-oils': ({ part, oils, chosen }, say) =>
    `Mehrere Öle im Bestand entsprechen der Anleitung (${writePart(part)}): ${say.list(oils)}. Dieser Plan verwendet ${chosen}; das eingefüllte Öl eintragen.`,
  'service/oil-only-choice': ({ oil }) => `Das Datenblatt lässt nur ${oil} zu.`,
  'service/no-oil-for-ambient': ({ part, ambient }, say) =>
    `Bei ${say.quantity(ambient)} ist kein Öl des Datenblatts zulässig (${writePart(part)}).`,
  'service/oil-does-not-meet': ({ container, oil, reason }, say) =>
    `Im Gebinde ist nicht ${oil}: ${container}. ${say.reason(reason)}`,
  'service/ask-oil-maker': ({ container, oil, reason }, say) =>
    `Den Ölhersteller fragen, ob dieses Öl ${oil} ersetzen darf: ${container}. ${say.reason(reason)}`,
  'service/no-suitable-oil': ({ part, oil, offered, reasons }, say) =>
    [
      `Kein geeignetes Öl im Bestand (${writePart(part)}): verlangt ${oil}, im Bestand ${say.list(offered)}.`,
      ...reasons.map((reason) => say.reason(reason)),
    ].join(' '),
  'service/no-wrench-fits': ({ part, reasons }, say) =>
    [
      `Kein Schlüssel im Werkzeugkasten lässt sich dafür einstellen (${writePart(part)}).`,
      ...reasons.map((reason) => say.reason(reason)),
    ].join(' '),
  'service/wrench-required': ({ from, to, count }, say) =>
    `Einen Drehmomentschlüssel für ${say.quantity({ kind: 'limits', min: String(from.value), max: String(to.value), unit: to.unit })} besorgen, für ${say.count(count, 'Verschraubung', 'Verschraubungen')}.`,
  'service/calibration-expired': ({ wrench, dueOn }, say) =>
    `Die Kalibrierung ist am ${say.date(dueOn)} abgelaufen: ${wrench}. Vor Gebrauch kalibrieren lassen.`,
  'service/calibration-cycles-used-up': ({ wrench, cycles, limit }, say) =>
    `${say.number(cycles)} Lastwechsel seit der Kalibrierung (Grenze ${say.number(limit)}): ${wrench}. Kalibrieren lassen.`,
  'service/scale-reversed': ({ wrench, lowest, highest }, say) =>
    `Skala von „${wrench}“: Der unterste Teilstrich, ${say.quantity(lowest)}, liegt über dem obersten, ${say.quantity(highest)}. Der Schlüssel wird nicht verwendet; Werkzeugkasten berichtigen.`,
  'service/calibration-not-recorded': ({ wrench }) =>
    `Der Werkzeugkasten gibt die letzte Kalibrierung nicht an: ${wrench}.`,
  'service/socket-found': ({ tool, size }) =>
    size === '' ? `${capitalize(tool)}.` : `${capitalize(tool)} passt zu ${size}.`,
  'service/adaptor-between': ({ adaptor, wrenches }, say) =>
    `Zwischen Steckschlüssel und Drehmomentschlüssel (${say.list(wrenches)}) einsetzen: ${adaptor}. Er liegt in der Achse, der Einstellwert ändert sich nicht.`,
  'service/socket-missing': ({ part, drive, size }) =>
    `Der Werkzeugkasten hat kein Werkzeug für ${size === '' ? writeDrive(drive) : `${writeDrive(drive)} ${size}`} (${writePart(part)}).`,
  'service/turned-by-hand': ({ part }) => `Von Hand (${writePart(part)}).`,
  'service/drive-not-stated': ({ part }) =>
    `Das Datenblatt gibt keine Werkzeuggröße an (${writePart(part)}). Größe vor der Abfahrt feststellen.`,
  'service/vessel-too-coarse': ({ vessel, part, reason }, say) =>
    `„${vessel}“ ist nicht genau genug (${writePart(part)}). ${say.reason(reason)}`,
  'service/no-vessel': ({ part }) => `Der Werkzeugkasten hat keinen Messbecher (${writePart(part)}).`,
  'service/pan-too-small': ({ pan, size, volume }, say) =>
    `„${pan}“ (${say.quantity(size)}) ist zu klein für ${say.quantity(volume)} bei diesem Einsatz. Eine größere mitbringen oder zwischendurch leeren.`,
  'service/no-pan': ({ volume }, say) =>
    `Der Werkzeugkasten hat keine Auffangwanne; bei diesem Einsatz werden ${say.quantity(volume)} abgelassen.`,
  'service/stands-too-few': ({ have, need }, say) =>
    `Unterstellböcke nötig: ${say.number(need)}; im Werkzeugkasten: ${say.number(have)}.`,
  'service/stands-too-weak': ({ stands, rating, mass }, say) =>
    `${capitalize(stands)}: Tragfähigkeit je ${say.quantity(rating)}; die Maschine wiegt ${say.quantity(mass)}. Nicht verwenden.`,
  'service/stands-strong-enough': ({ stands, rating, mass }, say) =>
    `${capitalize(stands)}: Tragfähigkeit je ${say.quantity(rating)}; die ganze Maschine wiegt ${say.quantity(mass)}.`,
  'service/stands-missing': ({ need }, say) =>
    `Unterstellböcke nötig: ${say.number(need)}; keine im Werkzeugkasten. Nie auf einen Wagenheber allein verlassen.`,
  'service/ramps-too-few': ({ have, need }, say) =>
    `Auffahrrampen nötig: ${say.number(need)}; im Werkzeugkasten: ${say.number(have)}.`,
  'service/ramps-too-weak': ({ ramps, rating, mass }, say) =>
    `${capitalize(ramps)}: Tragfähigkeit je ${say.quantity(rating)}; die Maschine wiegt ${say.quantity(mass)}. Nicht verwenden.`,
  'service/ramps-strong-enough': ({ ramps, rating, mass }, say) =>
    `${capitalize(ramps)}: Tragfähigkeit je ${say.quantity(rating)}; die ganze Maschine wiegt ${say.quantity(mass)}.`,
  'service/ramps-missing': ({ need }, say) =>
    `Auffahrrampen nötig: ${say.number(need)}; keine im Werkzeugkasten.`,
  'service/mass-not-stated': () =>
    'Das Datenblatt gibt die Masse der Maschine nicht an: Tragfähigkeit von Böcken oder Rampen mit dem Typenschild vergleichen.',
  'service/seal-every-opening': ({ count }, say) => `${say.number(count)} neu: bei jedem Öffnen ersetzen.`,
  'service/seal-replace-not-stated': ({ count }, say) =>
    `${say.number(count)} neu: Die Anleitung gibt nicht an, wann zu ersetzen ist.`,
  'service/access-not-stated': ({ part }) =>
    `${capitalize(writePart(part))}: Zugang nicht angegeben. Siehe Anleitung. Muss die Maschine angehoben werden, die Ansatzpunkte der Anleitung und tragfähige Unterstellböcke verwenden. Nie unter einer Maschine arbeiten, die nur ein Wagenheber hält.`,
  'service/seal-on-condition': ({ count }, say) =>
    `Prüfen und nur in gutem Zustand wiederverwenden; ${say.count(count, 'Ersatzdichtung', 'Ersatzdichtungen')} bereithalten.`,
  'service/seal-not-known': ({ part }) =>
    `Die Dichtung ist nicht bekannt (${writePart(part)}). Siehe Anleitung.`,
  'service/pour-through': ({ filler, oil, temperature }, say) =>
    `${capitalize(oil)} bei ${say.quantity(temperature)} durch: ${filler}.`,
  'service/hose-bore-not-known': ({ filler }) =>
    `Innendurchmesser des Schlauchs nicht bekannt (${filler}), daher wird keine Eingießzeit berechnet. Der Schlauch ist leer, wenn nichts mehr tropft.`,
  'service/usual-hoses': ({ from, to, fastest, slowest }, say) =>
    `Etwa ${say.number(Number(fastest.value))} bis ${say.quantity(slowest)} bei üblichen Schläuchen (Innendurchmesser ${say.number(Number(from.value))} bis ${say.quantity(to)}).`,
  'service/warm-the-bottle': ({ temperature }, say) =>
    `Bei ${say.quantity(temperature)} ist Öl dickflüssig: Flasche vor dem Einsatz drinnen lagern oder verschlossen in warmes Wasser stellen. Nie über einer Flamme erwärmen.`,
  'service/no-filler': ({ part }) =>
    `Der Werkzeugkasten hat keinen Trichter mit Schlauch (${writePart(part)}).`,
  'service/no-oil-to-pour': ({ part }) =>
    `Das Öl ist nicht bekannt, daher wird keine Eingießzeit berechnet (${writePart(part)}).`,
  'service/pour-volume-not-known': ({ part }) =>
    `Die Menge ist nicht bekannt, daher wird keine Eingießzeit berechnet (${writePart(part)}).`,
  'service/drain-until-drips': () => 'Ablaufen lassen, bis es nur noch tropft.',
  'service/settle-stated': ({ minutes }, say) =>
    `Das Datenblatt gibt eine Ruhezeit von ${say.quantity(minutes)} an.`,
  'service/settle-not-stated': () => 'Das Datenblatt gibt keine Ruhezeit an. Siehe Anleitung.',
  'service/cure-stated': ({ product, time }, say) =>
    `${say.quantity(time)} aushärten lassen, bevor Öl daran kommt: ${product}.`,
  'service/cure-not-stated': ({ product }) =>
    `Das Datenblatt gibt keine Aushärtezeit an: ${product}. Siehe Anleitung und Etikett.`,
  'service/reading-stale': ({ meter, date, days, staleAfter }, say) =>
    `Der letzte Zählerstand (${writeMeterName(meter)}) ist ${say.count(days, 'Tag', 'Tage')} alt (${say.date(date)}; Grenze ${say.count(staleAfter, 'Tag', 'Tage')}). Zähler erneut ablesen, bevor „${cardWords.dueStates['not due']}“ gilt.`,
  'service/time-sum': ({ steps, minutes, waitMinutes }, say) =>
    `${say.count(steps, 'Schritt', 'Schritte')}: ${say.count(minutes, 'Minute', 'Minuten')} Arbeit und ${say.count(waitMinutes, 'Minute', 'Minuten')} Wartezeit (eigene Schätzung).`,
  'service/time-from-records': ({ count, min, max, estimate }, say) =>
    `Median aus ${say.count(count, 'Einsatz', 'Einsätzen')} mit der gleichen Arbeit, ${say.number(min)} bis ${say.number(max)} min; die eigene Schätzung beträgt ${say.number(estimate)} min.`,
  'service/time-few-visits': ({ count, required }, say) =>
    `${say.count(count, 'Einsatz', 'Einsätze')} mit der gleichen Arbeit eingetragen; ab ${say.number(required)} Einsätzen ersetzt ihr Median die Schätzung.`,
  'service/labour': ({ rate, cost }, say) =>
    `Arbeit: ${say.number(cost.amount)} ${cost.currency} bei ${say.number(rate.amount)} ${rate.currency} je Stunde.`,
  'service/waiting-time-not-known': ({ count }, say) =>
    `${say.count(count, 'Wartezeit', 'Wartezeiten')} unbekannter Länge nicht eingerechnet.`,
  'service/only-if-low': () => 'Nur wenn der Ölstand zu niedrig ist',
  'service/only-on-some-machines': ({ variants, modelYears, serials, market }) => {
    const prefix = serials?.prefix ?? ''
    const facts = [
      variants && join(variants, 'oder'),
      modelYears && `Modelljahre ${writeRange(modelYears.from, modelYears.to)}`,
      serials && `Seriennummern ${writeRange(serials.from, serials.to, prefix)}`,
      market && `Markt ${join(market, 'oder')}`,
    ]
    return `Nur bei ${join(
      facts.filter((fact) => fact !== undefined),
      'und',
    )}`
  },
  'service/supply': ({ supply }) => `${capitalize(nameOf(SUPPLY_NAMES, supply))}.`,
  'service/sample-label': ({ machine, part, date, hours, oil, hoursOnOil }, say) =>
    `Etikett der Probe: ${[
      machine,
      writePart(part),
      date,
      hours && say.quantity(hours),
      oil ?? 'Öl nicht bekannt',
      hoursOnOil === undefined
        ? 'Betriebsstunden des Öls nicht bekannt'
        : `${say.quantity(hoursOnOil)} mit diesem Öl`,
    ]
      .filter(Boolean)
      .join(', ')}; Flaschennummer ____.`,
  'service/hand-tools': ({ tools }, say) =>
    `Handwerkzeug: ${say.list(tools.map((tool) => nameOf(TOOL_NAMES, tool)))}.`,
  'service/used-oil': ({ volume }, say) =>
    `Einen geschlossenen, gekennzeichneten Behälter für bis zu ${say.quantity(volume)} Altöl mitbringen.`,
  'service/drain-limit-from-dry-fill': ({ part, volume }, say) =>
    `Das Datenblatt gibt keine Füllmenge an; es kann bis zur Erstfüllmenge von ${say.quantity(volume)} ablaufen (${writePart(part)}).`,
  'service/used-oil-not-known': ({ part }) => `Die Altölmenge ist nicht bekannt (${writePart(part)}).`,
  'service/manual-first': () =>
    'Die Betriebsanleitung der Maschine und die örtlichen Vorschriften gehen dieser Karte vor.',
  'service/licensed-work': () =>
    'Erlaubnispflichtige Arbeiten nur von Personen mit dieser Erlaubnis ausführen lassen.',
  'service/record-not-counted': ({ date, reason }, say) =>
    `Der Nachweis vom ${say.date(date)} zählt nicht. ${say.reason(reason)}`,
  'service/not-to-be-used': ({ signal, date, fault }, say) =>
    `${SIGNAL_WORDS[signal]}: Diese Maschine nicht benutzen. Seit ${say.date(date)} ist ein Mangel offen. ${say.reason(fault)}`,
  'service/no-oil-added': ({ part, since }, say) =>
    `${capitalize(writePart(part))}: seit ${say.date(since)} kein Öl nachgefüllt.`,
  'service/oil-start-not-known': ({ part }) =>
    `Weder Ölwechsel noch Tag der Erstinbetriebnahme eingetragen (${writePart(part)}): eintragen, um zu sehen, wie schnell Öl verloren geht.`,
  'service/oil-added': ({ part, added, count, since, days, hours, per100Hours, percentOfFill }, say) => {
    const topUpsText = count === 1 ? '' : ` bei ${say.number(count)} Nachfüllungen`
    const durationText = hours
      ? `, ${writeAmount(hours, say)}`
      : days === undefined
        ? ''
        : `, ${say.count(days, 'Tag', 'Tage')}`
    const startText = since === undefined ? '' : ` seit ${say.date(since)}`
    const rateText = per100Hours ? `, ${writeAmount(per100Hours, say, 'etwa ')} je 100 h` : ''
    const shareText = percentOfFill === undefined ? '' : `, ${say.number(percentOfFill, 0)} % der Füllung`
    return `${capitalize(writePart(part))}: ${say.quantity(added)} nachgefüllt${topUpsText}${startText}${durationText}${rateText}${shareText}.`
  },
  'service/top-up-instance-missing': ({ part }) =>
    `Die Nachfüllungen nennen keine Einbaustelle (${writePart(part)}): an jeder nach undichten Stellen suchen.`,
  'service/oil-may-have-settled': () =>
    'Eine kleine Menge kurz nach einem Ölwechsel: Das Öl hat sich vielleicht gesetzt. Ölstand nach 10 h erneut prüfen.',
  'service/look-for-leaks': () =>
    'Ein geschlossenes Getriebe verbraucht kein Öl. Undichte Stellen suchen und den Ölstand nach 10 h erneut prüfen.',
  'service/find-the-leak': () => 'Undichte Stelle suchen, bevor Öl nachgefüllt wird.',
  'service/loses-oil': ({ signal, reasons }, say) =>
    `${SIGNAL_WORDS[signal]}: ${reasons.map((reason) => say.reason(reason)).join(' ')}`,
  'service/used-oil-rules': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Altöl in einem dichten, geschlossenen, als Altöl gekennzeichneten Behälter zu einer Sammelstelle bringen.`,
  'service/wrong-sheet': ({ required, revision, given, givenRevision }) =>
    `Erwartet: Datenblatt ${required} Revision ${revision}; gefunden: ${given} Revision ${givenRevision}.`,
  'service/service-not-on-sheet': ({ service, known }, say) =>
    `Das Datenblatt hat keine Wartung „${service}“; vorhanden: ${say.list(known)}.`,
  'service/procedure-errors': ({ count, signal }, say) =>
    `${SIGNAL_WORDS[signal]}: Die Schritte dieser Karte stammen aus einem verfassten Ablauf mit ${say.count(count, 'Fehler', 'Fehlern')}, aufgeführt unter „${cardWords.labels.findings}“. Nicht danach arbeiten, bis sie berichtigt sind.`,
  'service/procedure-of-other-services': ({ services, asked }, say) =>
    `Der Ablauf gilt für ${say.list(services)}, nicht für ${say.list(asked)}. Dessen Wartungen oder einen anderen Ablauf wählen.`,
  'service/service-not-on-machine': ({ service }) =>
    `„${service}“ gilt nicht für diese Maschine (nach Variante, Seriennummer, Modelljahr und Markt). Eine andere Wartung wählen.`,
}
