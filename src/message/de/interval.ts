import type { Param } from '../../base/index.js'
import type { DueLine, IntervalCodes, MeterQuantity } from '../../interval/index.js'
import type { SpecCodes } from '../../spec/index.js'
import type { Say, Texts } from '../catalogue.js'
import { nameOf, writeFigure } from '../phrases.js'
import { cardWords } from './card.js'
import { paperWords } from './papers.js'
import { writeFactNames, writeMeterName } from './words.js'

export const intervalTexts: Texts<Omit<IntervalCodes, keyof SpecCodes>> = {
  'interval/by-meter': ({ verdict, printed, since, from, duePoint, now, left }, say) => {
    const start = `${nameOf(START_NAMES, since ?? '')}${from?.date === undefined ? '' : ` am ${say.date(from.date)}`} bei ${say.quantity(copyMeter(from))}`
    return `${nameOf(cardWords.dueStates, verdict)}: ${say.quantity(printed)} seit ${start}, fällig bei ${say.quantity(copyMeter(duePoint))}; ${say.quantity(copyMeter(now))} am ${say.date(now?.date ?? '')}, ${writeRemaining(left, say)}.`
  },
  'interval/by-date': ({ verdict, limit, since, from, duePoint, left }, say) => {
    const period = limit !== undefined && 'period' in limit ? writePeriod(limit.period, say) : ''
    return `${nameOf(cardWords.dueStates, verdict)}: ${period} seit ${nameOf(START_NAMES, since ?? '')} am ${say.date(from?.date ?? '')}, fällig am ${say.date(duePoint?.date ?? '')}; ${writeRemaining(left, say)}.`
  },
  'interval/by-event': ({ event, date }, say) =>
    `fällig: ${nameOf(paperWords.events, event)} am ${say.date(date)}. Wartung vor dem nächsten Einsatz ausführen.`,
  'interval/window-left': ({ until }, say) =>
    `Das Wartungsfenster endet ${writePoint(until, say)}; danach ist die Wartung überfällig.`,
  'interval/not-tracked': ({ meter }) =>
    `Nicht erfasst: Diese Maschine hat keinen Zähler dafür (${nameOf(cardWords.dueBy, meter)}).`,
  'interval/governing-limit': ({ by, decidedBy, dueOn }, say) =>
    `Maßgebende Grenze: ${nameOf(cardWords.dueBy, by)}${dueOn === undefined ? '' : `, etwa ${say.date(dueOn)}`} (${decidedBy === 'days' ? 'ihr Datum kommt zuerst' : 'größter genutzter Anteil; Nutzung pro Tag nicht bekannt'}).`,

  'interval/severe-interval-applied': ({ criteria }) =>
    `Intervall für erschwerten Einsatz angewendet (${criteria}).`,
  'interval/severe-factor-applied': ({ factor, criteria }, say) =>
    `Intervall für erschwerten Einsatz mit ${writeFigure(factor, say)} multipliziert (${criteria}).`,
  'interval/severe-not-given': () =>
    'Die Anleitung gibt kein Intervall für erschwerten Einsatz an; das normale wird angewendet.',
  'interval/early-service-counts': ({ by, date, point: at }, say) =>
    `Vorzeitig ausgeführt am ${say.date(date)}; zählt als die Wartung, die ${writePoint(at, say)} fällig war (${nameOf(cardWords.dueBy, by)}).`,
  'interval/early-service-does-not-count': ({ by, date, point: at }, say) =>
    `Am ${say.date(date)} zu früh ausgeführt, um als die Wartung zu zählen, die ${writePoint(at, say)} fällig ist (${nameOf(cardWords.dueBy, by)}); sie bleibt fällig.`,
  'interval/count-restarted': ({ by, date, point: at }, say) =>
    `Am ${say.date(date)} ausgeführt, außerhalb des Fensters der Wartung, die ${writePoint(at, say)} fällig war (${nameOf(cardWords.dueBy, by)}); die Zählung beginnt an diesem Tag neu.`,
  'interval/done-by-other-service': ({ date, service }, say) =>
    `„${service}“ am ${say.date(date)} zählt als diese Wartung.`,
  'interval/record-for-all-instances': ({ date, instance }, say) =>
    `Der Nachweis vom ${say.date(date)} nennt keine Einbaustelle; angenommen wird, dass er auch für „${instance}“ gilt.`,
  'interval/display-changed': ({ meter, less: { value, unit } }, say) => {
    const amount = say.quantity({ value: Math.abs(Number(value)), unit })
    return `Seit Beginn der Zählung wurde der Zähler (${writeMeterName(meter)}) getauscht oder zurückgestellt oder ist übergelaufen: Er zeigt ${amount} ${Number(value) < 0 ? 'mehr' : 'weniger'} als ohne diese Änderung.`
  },
  'interval/date-in-the-future': ({ what, date }, say) =>
    `Stand vom ${say.date(date)} (${writeMeterName(what)}): Das Datum liegt in der Zukunft, der Stand zählt nicht.`,

  'interval/reading-missing': ({ meter }) =>
    `Kein Zählerstand (${writeMeterName(meter)}). Zähler ablesen und Stand eintragen.`,
  'interval/reading-stale': ({ meter, date, days, staleAfter }, say) =>
    `Der letzte Zählerstand (${writeMeterName(meter)}) vom ${say.date(date)} ist ${say.count(days, 'Einsatztag', 'Einsatztage')} alt (Grenze ${say.number(staleAfter)}). Zähler erneut ablesen.`,
  'interval/reading-at-start-missing': ({ meter, of, date }, say) =>
    `Kein Zählerstand (${writeMeterName(meter)}) bei ${nameOf(START_NAMES, of)} am ${say.date(date)}. Stand dieses Tages eintragen.`,
  'interval/meter-broken': ({ meter, from, to }, say) =>
    `Die Zählerstände (${writeMeterName(meter)}) vom ${say.date(from)} bis ${say.date(to)} widersprechen sich. Einen berichtigen oder Tausch, Rückstellung oder Überlauf eintragen.`,
  'interval/first-use-missing': () =>
    'Das Datum der Erstinbetriebnahme fehlt im Betriebsbuch. Datum eintragen.',
  'interval/interval-not-stated': ({ which }) =>
    `Die Anleitung gibt kein ${nameOf(INTERVAL_NAMES, which)} an: siehe Anleitung.`,
  'interval/interval-depends': ({ which, facts }, say) =>
    `Das ${nameOf(INTERVAL_NAMES, which)} hängt ab von: ${say.list(writeFactNames(facts))}. Im Betriebsbuch eintragen.`,
  'interval/fractional-period': ({ period, factor }, say) =>
    `${writePeriod(period, say)} × ${writeFigure(factor, say)} ergibt keine ganze Zahl von Monaten oder Tagen; Grenze nicht bekannt.`,
  'interval/due-date-out-of-calendar': ({ period, from }, say) =>
    `${writePeriod(period, say)} nach dem ${say.date(from)} liegt nach dem Jahr 9999. Datenblatt berichtigen.`,
  'interval/no-limit-tracked': () => 'Diese Maschine hat für keine Grenze dieses Intervalls einen Zähler.',

  'interval/meter-falls': ({ before, after, from, to }, say) =>
    `Der Zähler fällt von ${say.quantity(before)} am ${say.date(from)} auf ${say.quantity(after)} am ${say.date(to)}, ohne Tausch, Rückstellung oder Überlauf.`,
  'interval/meter-jumps': ({ before, after, from, to, largest }, say) =>
    `Der Zähler steigt von ${say.quantity(before)} am ${say.date(from)} auf ${say.quantity(after)} am ${say.date(to)}; möglich sind höchstens ${say.quantity(largest)}.`,
  'interval/readings-out-of-order': ({ date, after }, say) =>
    `Der Zählerstand vom ${say.date(date)} steht nach dem vom ${say.date(after)}; nach Datum sortiert.`,
  'interval/reading-repeated': ({ date }, say) =>
    `Doppelter Zählerstand am ${say.date(date)}; einmal gezählt.`,
  'interval/reading-out-of-bounds': ({ value, largest }, say) =>
    `${typeof value === 'number' ? say.number(value) : value} ist kein möglicher Zählerstand (0 bis ${say.quantity(largest)}); nicht gezählt.`,
  'interval/rollover-limit-missing': ({ date }, say) =>
    `Der Zähler ist am ${say.date(date)} übergelaufen, aber das Betriebsbuch nennt den Wert nicht. Eintragen.`,
  'interval/rollover-assumed': ({ before, after, limit }, say) =>
    `Von ${say.quantity(before)} auf ${say.quantity(after)}: als Überlauf bei ${say.quantity(limit)} angenommen. Zur Bestätigung den Überlauf eintragen.`,

  'interval/forecast-needs-readings': ({ meter, readings }, say) =>
    `Nutzung pro Tag nicht bekannt: ${say.count(readings, 'Zählerstand', 'Zählerstände')} (${writeMeterName(meter)}). Stände von mindestens zwei Tagen eintragen.`,
  'interval/forecast-without-band': ({ readings }, say) =>
    `Nur ${say.count(readings, 'Zählerstand', 'Zählerstände')}: zu wenige für ein frühestes und ein spätestes Datum. Vier sind nötig.`,
  'interval/forecast-without-end': () => 'Die Nutzung ist für ein spätestes Datum zu ungleichmäßig.',
  'interval/forecast-contradicted': ({ date }, say) =>
    `Der Verlauf sagt ein früheres Datum voraus, aber der Zählerstand vom ${say.date(date)} widerspricht dem.`,
  'interval/forecast-beyond-calendar': ({ meter }) =>
    `Bei dieser Nutzung erreicht der Zähler (${writeMeterName(meter)}) die Grenze nicht vor dem Jahr 9999.`,

  'interval/import-no-machines': () =>
    'Keine Geräte gefunden. Erwartet: das JSON einer Flotte, einer Liste von Geräten oder einer Maschine.',
  'interval/import-ambiguous-key': ({ one, other }) =>
    `Die Schlüssel „${one}“ und „${other}“ bedeuten dasselbe, haben aber verschiedene Werte; keiner wird verwendet.`,
  'interval/import-unit-unknown': ({ unit }) =>
    `Unbekannte Einheit der Wegstrecke „${unit}“. „OdometerUnits“ muss „kilometre“ oder „mile“ sein; der Stand wird übergangen.`,
  'interval/import-mixed-units': ({ units }, say) =>
    `Wegstrecken in ${say.list(units)}. Eine Maschine muss eine Einheit verwenden; ihre Strecken werden übergangen.`,
  'interval/import-date-unreadable': ({ text }) =>
    `„${text}“ beginnt nicht mit einem Datum; der Stand wird übergangen.`,

  'interval/first-longer-than-repeat': ({ by }, say) =>
    `Das Erstintervall ist länger als das folgende (${say.list(by.map((limit) => nameOf(cardWords.dueBy, limit)))}). Die meisten Anleitungen sehen den ersten Wechsel früh vor: Anleitung prüfen.`,
  'interval/severe-longer-than-repeat': ({ by }) =>
    by === 'factor'
      ? 'Der Faktor für erschwerten Einsatz liegt über 1 und würde das Intervall verlängern. Erschwerter Einsatz verkürzt es: Anleitung prüfen.'
      : `Das Intervall für erschwerten Einsatz ist länger als das normale (${nameOf(cardWords.dueBy, by)}). Erschwerter Einsatz verkürzt es: Anleitung prüfen.`,
  'interval/window-not-below-repeat': ({ by }) =>
    `Das Wartungsfenster (${nameOf(cardWords.dueBy, by)}) ist nicht kürzer als das Intervall, die Wartung wäre nie überfällig. Anleitung prüfen.`,
  'interval/implied-speed': ({ speed, slowest, fastest }, say) =>
    `Stunden und Strecke zusammen ergeben im Mittel ${say.quantity({ value: Math.round(speed * 10) / 10, unit: 'km/h' })}; plausibel sind ${say.number(slowest)} bis ${say.number(fastest)}. Auf eine Null zu viel oder Meilen statt Kilometer prüfen.`,
  'interval/log-speed': ({ speed, fastest, from, to }, say) =>
    `Vom ${say.date(from)} bis ${say.date(to)} ergeben Stunden und Strecke zusammen im Mittel ${say.quantity({ value: Math.round(speed), unit: 'km/h' })}; plausibel sind höchstens ${say.number(fastest)}. Beide Zähler erneut ablesen.`,
  'interval/months-as-days': ({ days, months }, say) =>
    `${say.count(days, 'Tag', 'Tage')} sehen aus wie ${say.count(months, 'Monat', 'Monate')}, in Tage umgerechnet. Monate schreiben: Tage übergehen Monatsenden und Schaltjahre.`,
}

/** After `seit` and `bei`. */
const START_NAMES: Readonly<Record<NonNullable<DueLine['since']> | 'schedule', string>> = {
  'last service': 'der letzten Wartung',
  'first use': 'der Erstinbetriebnahme',
  rebuild: 'der Überholung',
  schedule: 'einer planmäßigen Wartung',
}
/** All are neuter: `kein Intervall`. */
const INTERVAL_NAMES: Readonly<Record<'first' | 'repeat' | 'severe' | 'window', string>> = {
  first: 'Erstintervall',
  repeat: 'Intervall',
  severe: 'Intervall für erschwerten Einsatz',
  window: 'Wartungsfenster',
}

/** A due point: a date as text, or a meter value. */
function writePoint(at: Param, say: Say): string {
  return typeof at === 'string' ? `am ${say.date(at)}` : `bei ${say.quantity(at)}`
}

/** The meter value as a plain param: the interface has no index signature. */
function copyMeter(point: { readonly meter?: MeterQuantity } | undefined): Param | undefined {
  return point?.meter && { ...point.meter }
}

function writeRemaining(left: DueLine['left'], say: Say): string {
  const { value, unit } = left ?? { value: 0, unit: 'd' }
  const size = Math.abs(value)
  const amount = unit === 'd' ? say.count(size, 'Tag', 'Tage') : say.quantity({ value: size, unit })
  return value < 0 ? `${amount} darüber` : `noch ${amount}`
}

/** `P1Y6M` as `1 Jahr und 6 Monate`. */
function writePeriod(period: string, say: Say): string {
  const parts: string[] = []
  for (const [, digits = '0', unit = 'D'] of period.matchAll(/([0-9]+)([YMWD])/g)) {
    const [singular, plural] = PERIOD_UNIT_NAMES[unit] ?? ['Tag', 'Tage']
    parts.push(say.count(Number(digits), singular, plural))
  }
  return say.list(parts)
}

const PERIOD_UNIT_NAMES: Readonly<Record<string, readonly [string, string]>> = {
  Y: ['Jahr', 'Jahre'],
  M: ['Monat', 'Monate'],
  W: ['Woche', 'Wochen'],
  D: ['Tag', 'Tage'],
}
