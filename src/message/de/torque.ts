import type { Param } from '../../base/index.js'
import type { TorqueWrench } from '../../spec/index.js'
import type { TorqueCodes } from '../../torque/index.js'
import type { Say, Texts } from '../catalogue.js'
import { nameOf, writeFigure, writeUnitName } from '../phrases.js'

type BandEnds = { min: Param; max: Param }

function writeBand({ min, max }: BandEnds, say: Say): string {
  return `${say.quantity(min)} bis ${say.quantity(max)}`
}

const ERROR_BASES: Readonly<Record<'reading' | 'full scale', string>> = {
  reading: 'des Messwerts',
  'full scale': 'des Skalenendwerts',
}

function writeError(percent: number, of: 'reading' | 'full scale', say: Say): string {
  return `±${say.number(percent)} % ${nameOf(ERROR_BASES, of)}`
}

function turnsText(min: string, max: string | undefined, say: Say): string {
  return max === undefined
    ? `mindestens ${writeFigure(min, say)} Umdrehungen`
    : `${writeFigure(min, say)} bis ${writeFigure(max, say)} Umdrehungen`
}

function writeAngle(
  { nominal, min, max }: { nominal?: string; min?: string; max?: string },
  say: Say,
): string {
  const writeDegrees = (value: string) => say.quantity({ value, unit: 'deg' })
  if (nominal !== undefined) return writeDegrees(nominal)
  if (min !== undefined && max !== undefined) return `${writeDegrees(min)} bis ${writeDegrees(max)}`
  if (min !== undefined) return `mindestens ${writeDegrees(min)}`
  return max === undefined ? '–' : `höchstens ${writeDegrees(max)}`
}

function writeNearestMarks(below: Param | undefined, above: Param | undefined, say: Say): string {
  const marks = [below, above].flatMap((mark) => (mark === undefined ? [] : [say.quantity(mark)]))
  return marks.length === 0 ? '' : ` Nächste Teilstriche: ${say.list(marks)}.`
}

const WRENCH_TYPES: Readonly<Record<TorqueWrench['type'], string>> = {
  click: 'auslösend',
  dial: 'mit Zeigeruhr',
  beam: 'mit Biegestab',
  electronic: 'elektronisch',
}

export const torqueTexts: Texts<TorqueCodes> = {
  'torque/setting-chosen': ({ setting, aim, from }, say) =>
    `${say.quantity(setting)} einstellen: der Teilstrich im Bereich, der ${from === 'nominal' ? 'dem Nennwert' : 'seiner Mitte'} am nächsten liegt, ${say.quantity(aim)}.`,
  'torque/nearest-mark': ({ setting, nominal, percent }, say) => {
    const difference =
      Math.abs(percent) < 0.05 ? `weniger als ${say.number(0.1)}` : say.number(Math.abs(percent), 1)
    return `${say.quantity(setting)} einstellen: der nächste Teilstrich, ${difference} % ${percent < 0 ? 'unter' : 'über'} ${say.quantity(nominal)} laut Anleitung.`
  },
  'torque/actual-torque-in-band': ({ trueBand, band: stated, percent, of }, say) =>
    `Mit ${writeError(percent, of, say)} beträgt das tatsächliche Drehmoment ${writeBand(trueBand, say)}, innerhalb ${writeBand(stated, say)}.`,
  'torque/actual-torque-out-of-band': ({ trueBand, band: stated, percent, of }, say) =>
    `Mit ${writeError(percent, of, say)} kann das tatsächliche Drehmoment ${writeBand(trueBand, say)} betragen, außerhalb ${writeBand(stated, say)}. Genaueren Schlüssel verwenden.`,
  'torque/low-on-scale': ({ setting, highest, sharePercent }, say) =>
    `${say.quantity(setting)} sind nur ${say.number(sharePercent, 1)} % des Skalenendwerts (${say.quantity(highest)}). Wenn möglich, kleineren Schlüssel verwenden.`,
  'torque/below-lowest-mark': ({ required, lowest }, say) =>
    `${say.quantity(required)} liegt unter dem untersten Teilstrich des Schlüssels, ${say.quantity(lowest)}.`,
  'torque/below-fifth-of-scale': ({ required, from, highest }, say) =>
    `${say.quantity(required)} liegt unter ${say.quantity(from)}, 20 % des Skalenendwerts (${say.quantity(highest)}).`,
  'torque/below-declared-range': ({ required, from }, say) =>
    `${say.quantity(required)} liegt unter dem angegebenen Bereich des Schlüssels, der bei ${say.quantity(from)} beginnt.`,
  'torque/above-highest-mark': ({ required, highest }, say) =>
    `${say.quantity(required)} liegt über dem obersten Teilstrich des Schlüssels, ${say.quantity(highest)}.`,
  'torque/above-declared-range': ({ required, to }, say) =>
    `${say.quantity(required)} liegt über dem angegebenen Bereich des Schlüssels, der bei ${say.quantity(to)} endet.`,
  'torque/no-mark-in-band': ({ band: { min, max }, below, above, unit, error: wrenchError }, say) =>
    min.value === max.value
      ? `${
          wrenchError === undefined
            ? `Der Schlüssel hat keinen Teilstrich bei ${say.quantity(min)}.`
            : `Kein Teilstrich der Skala in ${writeUnitName(unit, say)} liegt innerhalb des Fehlers des Schlüssels (${writeError(wrenchError.percent, wrenchError.of, say)}) um ${say.quantity(min)}.`
        }${writeNearestMarks(below, above, say)} Ist ein größerer Fehler zulässig, ihn als Toleranz angeben (tolerancePercent, --tolerance).`
      : `Kein Teilstrich der Skala in ${writeUnitName(unit, say)} liegt innerhalb ${writeBand({ min, max }, say)}.${writeNearestMarks(below, above, say)}`,
  'torque/resolution-too-coarse': ({ required, from, step }, say) =>
    `Bei ${say.quantity(required)} ist der Anzeigeschritt von ${say.quantity(step)} größer als ein Viertel des zulässigen Fehlers. Diesen Schlüssel erst ab ${say.quantity(from)} verwenden.`,
  'torque/error-as-large-as-setting': ({ required, error: size }, say) =>
    `Der Fehler des Schlüssels gilt in Prozent des Skalenendwerts: ${say.quantity(size)}, so groß wie ${say.quantity(required)}. Kleineren Schlüssel verwenden.`,
  'torque/band-not-stated': ({ nominal }, say) =>
    `Die Anleitung nennt ${say.quantity(nominal)} ohne Toleranz.`,
  'torque/tolerance-from-caller': ({ nominal, percent, band: result }, say) =>
    `Die Anleitung nennt ${say.quantity(nominal)} ohne Toleranz; ±${say.number(percent)} % ergibt ${writeBand(result, say)}. Diese Toleranz ist die eigene, nicht die der Anleitung.`,
  'torque/one-limit-only': ({ limit, which }, say) =>
    `Die Anleitung nennt nur ein ${which === 'minimum' ? 'Mindestdrehmoment' : 'Höchstdrehmoment'}, ${say.quantity(limit)}: Ein Einstellwert lässt sich nicht wählen. Siehe Anleitung.`,
  'torque/band-empty': ({ band: { min, max } }, say) =>
    `Mindestwert ${say.quantity(min)} liegt über Höchstwert ${say.quantity(max)}. Datenblatt berichtigen.`,
  'torque/not-stated': () => 'Das Datenblatt gibt kein Drehmoment an. Siehe Anleitung.',
  'torque/by-turns': ({ min, max }, say) =>
    `Nach Umdrehungen anziehen, nicht nach Drehmoment: ${turnsText(min, max, say)} über handfest.`,
  'torque/angle-after-torque': ({ angle: size }, say) =>
    `Nach dem Drehmoment um ${writeAngle(size, say)} weiterdrehen. Ein Drehmomentschlüssel misst den Winkel nicht.`,
  'torque/iso-figure-unknown': ({ type }) =>
    `Der zulässige Fehler nach ISO 6789 ist für diese Bauart nicht bekannt (${nameOf(WRENCH_TYPES, type)}). Genauigkeit des Herstellers in Prozent im Werkzeugkasten eintragen.`,
  'torque/stage': ({ stage, stages, reason }, say) =>
    `Stufe ${say.number(stage)} von ${say.number(stages)}: ${say.reason(reason)}`,
  'torque/adaptor-changes-setting': ({ setting, torque, ratio }, say) =>
    `Mit dem Adapter ${say.quantity(setting)} einstellen, um ${say.quantity(torque)} an der Schraube zu erreichen (Faktor ${say.number(ratio, 4)}).`,
  'torque/extension-missing': () =>
    'Die Länge des Adapters fehlt, der Einstellwert lässt sich nicht korrigieren. Von der Mitte des Vierkants bis zur Mitte der Schraube messen.',
  'torque/lever-length-missing': ({ extension }, say) =>
    `Die Länge des Schlüssels fehlt, der Einstellwert lässt sich für einen Adapter von ${say.quantity(extension)} nicht korrigieren. Von der Mitte des Vierkants bis zur Griffmitte messen.`,
  'torque/drive-does-not-reach': ({ wrench, required }) =>
    `Der Schlüssel hat einen Vierkant ${wrench}, der Steckschlüssel braucht ${required}, und kein Vierkantadapter im Werkzeugkasten verbindet sie.`,
  'torque/usual-for-plug': ({ torque, band: usual, thread }, say) =>
    `${say.quantity(torque)} ist für eine Verschlussschraube ${thread} üblich (${writeBand(usual, say)}).`,
  'torque/unusual-for-plug': ({ torque, band: usual, thread }, say) =>
    `${say.quantity(torque)} ist für eine Verschlussschraube ${thread} ungewöhnlich (${writeBand(usual, say)}).`,
  'torque/unit-slip': ({ torque, factor, becomes, meant }, say) =>
    `${say.quantity(torque)} ${factor.replace('.', ',')} wären ${say.quantity(becomes)}, ein üblicher Wert.${meant === undefined ? '' : ` Gemeint: ${say.quantity({ value: torque.value, unit: meant })}?`} Anleitung prüfen.`,
  'torque/thread-missing': () =>
    'Das Datenblatt gibt kein Gewinde an, das Drehmoment lässt sich nicht mit üblichen Werten vergleichen.',
  'torque/thread-unreadable': ({ thread }) =>
    `Unbekanntes Gewinde „${thread}“, das Drehmoment lässt sich nicht mit üblichen Werten vergleichen.`,
  'torque/swapped-torques-fit-better': ({ fill, drain, fillThread, drainThread }, say) =>
    `Einfüllschraube ${fillThread} ${say.quantity(fill)}, Ablassschraube ${drainThread} ${say.quantity(drain)}: Vertauscht würden sie besser zu den Gewinden passen. Anleitung prüfen.`,
  'torque/plugs-not-swapped': ({ fill, drain }, say) =>
    `Einfüllschraube ${say.quantity(fill)} und Ablassschraube ${say.quantity(drain)}: kein Anzeichen einer Vertauschung.`,
  'torque/same-plug-figures': ({ fillThread, drainThread }) =>
    `Einfüllschraube ${fillThread} und Ablassschraube ${drainThread} haben üblicherweise dasselbe Drehmoment, eine Vertauschung wäre nicht zu sehen.`,
  'torque/class-unknown': ({ propertyClass }) =>
    `Die Prüfspannung der Festigkeitsklasse „${propertyClass}“ ist nicht bekannt.`,
  'torque/class-not-for-size': ({ propertyClass, thread, from, to }) =>
    `Die Prüfspannung der Festigkeitsklasse ${propertyClass} ist von ${from} bis ${to} bekannt; ${thread} ist keine ihrer Größen.`,
  'torque/class-not-for-thread': ({ propertyClass, thread }) =>
    `Die Festigkeitsklasse ${propertyClass} gilt nicht für ${thread}: Das eine ist metrisch, das andere zöllig.`,
  'torque/proof-load': ({ stressMPa, area, load }, say) =>
    `Prüfkraft ${say.quantity(load)}: ${say.number(stressMPa, 0)} MPa auf ${say.number(area, 1)} mm².`,
  'torque/clamp-load': ({ torque, nutFactor, force }, say) =>
    `${say.quantity(torque)} ergibt mit dem Anziehfaktor ${say.number(nutFactor)} eine Klemmkraft von etwa ${say.quantity(force)}.`,
  'torque/above-proof': ({ max, proof }, say) =>
    `Mit Streuung kann die Klemmkraft ${say.quantity(max)} erreichen, mehr als die Prüfkraft von ${say.quantity(proof)}.`,
  'torque/below-proof': ({ max, proof }, say) =>
    `Auch mit Streuung beträgt die Klemmkraft höchstens ${say.quantity(max)}, nicht mehr als die Prüfkraft von ${say.quantity(proof)}.`,
  'torque/cycles-used-up': ({ used, limit }, say) =>
    `${say.number(used)} von ${say.number(limit)} Lastwechseln verbraucht: Schlüssel kalibrieren lassen.`,
  'torque/cycles-left': ({ used, limit }, say) =>
    `${say.number(used)} von ${say.number(limit)} Lastwechseln verbraucht.`,
  'torque/cycles-not-counted': ({ limit }, say) =>
    `Die Lastwechsel dieses Schlüssels werden nicht gezählt (Grenze ${say.number(limit)}); die Kalendergrenze entscheidet.`,
  'torque/calibration-date-missing': () =>
    'Das Datum der letzten Kalibrierung fehlt. Im Werkzeugkasten eintragen.',
  'torque/by-torque': () => 'Das Datenblatt gibt ein Drehmoment an, keine Umdrehungen.',
  'torque/turns': ({ min, max }, say) => `${turnsText(min, max, say)} über handfest anziehen.`,
  'torque/turns-without-maximum': ({ min }, say) =>
    `Mindestens ${writeFigure(min, say)} Umdrehungen über handfest anziehen; die Anleitung nennt keinen Höchstwert.`,
  'torque/turns-correct': ({ turns: done, min, max }, say) =>
    `${say.count(done, 'Umdrehung', 'Umdrehungen')}: richtig (${turnsText(min, max, say)}).`,
  'torque/turns-too-few': ({ turns: done, min }, say) =>
    `${say.count(done, 'Umdrehung', 'Umdrehungen')}: zu wenig; laut Anleitung mindestens ${writeFigure(min, say)}.`,
  'torque/turns-too-many': ({ turns: done, max }, say) =>
    `${say.count(done, 'Umdrehung', 'Umdrehungen')}: zu viel; laut Anleitung höchstens ${writeFigure(max, say)}. Vor erneutem Gebrauch auf einen Riss prüfen.`,
  'torque/setting-not-a-mark': ({ set, below, above }, say) =>
    `Dieser Schlüssel hat keinen Teilstrich bei ${say.quantity(set)}.${writeNearestMarks(below, above, say)}`,
}
