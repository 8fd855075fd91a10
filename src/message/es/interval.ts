import type { Param } from '../../base/index.js'
import type { DueLine, IntervalCodes, MeterQuantity } from '../../interval/index.js'
import type { SpecCodes } from '../../spec/index.js'
import type { Say, Texts } from '../catalogue.js'
import { capitalize, nameOf } from '../phrases.js'
import { cardWords } from './card.js'
import { paperWords } from './papers.js'
import { METER_NAMES, quote, withDe, writeDigits, writeFacts, writeMeter } from './words.js'

export const intervalTexts: Texts<Omit<IntervalCodes, keyof SpecCodes>> = {
  'interval/by-meter': ({ verdict, printed, since, from, duePoint, now, left }, say) => {
    const start = `${writeStart(since)}${from?.date === undefined ? '' : `, el ${say.date(from.date)}`}, con ${say.quantity(copyMeter(from))}`
    return `${writeState(verdict)}: ${say.quantity(printed)} desde ${start}; vence a ${say.quantity(copyMeter(duePoint))}; ${say.quantity(copyMeter(now))} el ${say.date(now?.date ?? '')}, ${writeRemaining(left, say)}.`
  },
  'interval/by-date': ({ verdict, limit, since, from, duePoint, left }, say) => {
    const period = limit !== undefined && 'period' in limit ? writePeriod(limit.period, say) : ''
    return `${writeState(verdict)}: ${period} desde ${writeStart(since)}, el ${say.date(from?.date ?? '')}; vence el ${say.date(duePoint?.date ?? '')}; ${writeRemaining(left, say)}.`
  },
  'interval/by-event': ({ event, date }, say) =>
    `${writeState('due')}: ${nameOf(paperWords.events, event)} el ${say.date(date)}. Hacer el servicio antes del próximo uso.`,
  'interval/window-left': ({ until }, say) =>
    `El plazo del servicio acaba ${writePoint(until, say)}; después está vencido.`,
  'interval/not-tracked': ({ meter }) =>
    `No se cuenta: esta máquina no tiene contador de ${writeLimit(meter)}.`,
  'interval/governing-limit': ({ by, decidedBy, dueOn }, say) =>
    `Límite decisivo: ${writeLimit(by)}${dueOn === undefined ? '' : `, hacia el ${say.date(dueOn)}`} (${decidedBy === 'days' ? 'su fecha llega primero' : 'es el más consumido; no se conoce el uso por día'}).`,

  'interval/severe-interval-applied': ({ criteria }) => `Se aplica el intervalo de uso severo (${criteria}).`,
  'interval/severe-factor-applied': ({ factor, criteria }) =>
    `Intervalo multiplicado por ${writeDigits(factor)} por uso severo (${criteria}).`,
  'interval/severe-not-given': () => 'El manual no da intervalo de uso severo; se aplica el normal.',
  'interval/early-service-counts': ({ by, date, point: at }, say) =>
    `Hecho antes de tiempo, el ${say.date(date)}; cuenta como el servicio que vencía ${writePoint(at, say)} (${writeLimit(by)}).`,
  'interval/early-service-does-not-count': ({ by, date, point: at }, say) =>
    `Hecho el ${say.date(date)}, demasiado pronto para contar como el servicio que vence ${writePoint(at, say)} (${writeLimit(by)}), que sigue pendiente.`,
  'interval/count-restarted': ({ by, date, point: at }, say) =>
    `Hecho el ${say.date(date)}, fuera del plazo del servicio que vencía ${writePoint(at, say)} (${writeLimit(by)}); la cuenta empieza de nuevo ese día.`,
  'interval/done-by-other-service': ({ date, service }, say) =>
    `${quote(service)} del ${say.date(date)} cuenta como este servicio.`,
  'interval/record-for-all-instances': ({ date, instance }, say) =>
    `El registro del ${say.date(date)} no nombra ninguna unidad; se supone que vale también para ${quote(instance)}.`,
  'interval/display-changed': ({ meter, less: { value, unit } }, say) => {
    const amount = say.quantity({ value: Math.abs(Number(value)), unit })
    return `Desde que empezó la cuenta, ${writeMeter(meter)} se cambió, se puso a cero o dio la vuelta: muestra ${amount} ${Number(value) < 0 ? 'más' : 'menos'} de lo que mostraría.`
  },
  'interval/date-in-the-future': ({ what, date }, say) =>
    `${capitalize(writeSource(what))} tiene fecha ${say.date(date)}, posterior a hoy, así que no se cuenta.`,

  'interval/reading-missing': ({ meter }) =>
    `No hay lectura ${withDe(writeMeter(meter))}. Leer el contador y anotarla.`,
  'interval/reading-stale': ({ meter, date, days, staleAfter }, say) =>
    `La última lectura ${withDe(writeMeter(meter))}, del ${say.date(date)}, tiene ${say.count(days, 'día', 'días')} de uso (límite ${say.number(staleAfter)}). Volver a leer el contador.`,
  'interval/reading-at-start-missing': ({ meter, of, date }, say) =>
    `No hay lectura ${withDe(writeMeter(meter))} en ${writeStart(of)}, el ${say.date(date)}. Anotar la lectura de ese día.`,
  'interval/meter-broken': ({ meter, from, to }, say) =>
    `Las lecturas ${withDe(writeMeter(meter))} del ${say.date(from)} al ${say.date(to)} no concuerdan. Corregir una de ellas, o anotar el cambio, la puesta a cero o la vuelta del contador.`,
  'interval/first-use-missing': () => 'En el historial falta la fecha del primer uso. Anotarla.',
  'interval/interval-not-stated': ({ which }) =>
    `El manual no indica ${nameOf(INTERVAL_NAMES, which)}: ver el manual.`,
  'interval/interval-depends': ({ which, facts }, say) =>
    `${capitalize(nameOf(INTERVAL_NAMES, which))} depende ${say.list(writeFacts(facts).map(withDe))}. Anotarlo en el historial.`,
  'interval/fractional-period': ({ period, factor }, say) =>
    `${writePeriod(period, say)} × ${writeDigits(factor)} no es un número entero de meses o días; límite desconocido.`,
  'interval/due-date-out-of-calendar': ({ period, from }, say) =>
    `${writePeriod(period, say)} después del ${say.date(from)} está más allá del año 9999. Corregir la hoja de datos.`,
  'interval/no-limit-tracked': () => 'Esta máquina no tiene contador para ningún límite de este intervalo.',

  'interval/meter-falls': ({ before, after, from, to }, say) =>
    `El contador baja de ${say.quantity(before)} el ${say.date(from)} a ${say.quantity(after)} el ${say.date(to)}, sin cambio, puesta a cero ni vuelta.`,
  'interval/meter-jumps': ({ before, after, from, to, largest }, say) =>
    `El contador sube de ${say.quantity(before)} el ${say.date(from)} a ${say.quantity(after)} el ${say.date(to)}; como máximo son posibles ${say.quantity(largest)}.`,
  'interval/readings-out-of-order': ({ date, after }, say) =>
    `La lectura del ${say.date(date)} va detrás de la del ${say.date(after)}; se ordenan por fecha.`,
  'interval/reading-repeated': ({ date }, say) => `Lectura repetida el ${say.date(date)}; se cuenta una vez.`,
  'interval/reading-out-of-bounds': ({ value, largest }, say) =>
    `${typeof value === 'number' ? say.number(value) : value} no es una lectura posible (0 a ${say.quantity(largest)}); no se cuenta.`,
  'interval/rollover-limit-missing': ({ date }, say) =>
    `El contador dio la vuelta el ${say.date(date)}, pero el historial no indica en qué valor. Anotarlo.`,
  'interval/rollover-assumed': ({ before, after, limit }, say) =>
    `De ${say.quantity(before)} a ${say.quantity(after)}: se supone que dio la vuelta en ${say.quantity(limit)}. Anotar la vuelta para confirmarlo.`,

  'interval/forecast-needs-readings': ({ meter, readings }, say) =>
    `No se conoce el uso por día: ${say.count(readings, 'lectura', 'lecturas')} ${withDe(writeMeter(meter))}. Anotar lecturas de al menos dos días.`,
  'interval/forecast-without-band': ({ readings }, say) =>
    `Solo ${say.count(readings, 'lectura', 'lecturas')}: muy pocas para una fecha más temprana y otra más tardía. Hacen falta cuatro.`,
  'interval/forecast-without-end': () => 'El uso es demasiado irregular para una fecha más tardía.',
  'interval/forecast-contradicted': ({ date }, say) =>
    `La tendencia predice una fecha anterior, pero la lectura del ${say.date(date)} la contradice.`,
  'interval/forecast-beyond-calendar': ({ meter }) =>
    `A este ritmo de uso, ${writeMeter(meter)} no llega al límite antes del año 9999.`,

  'interval/import-no-machines': () =>
    'No se encontró ningún equipo. Se esperaba el JSON de una flota, una lista de equipos o una máquina.',
  'interval/import-ambiguous-key': ({ one, other }) =>
    `Las claves “${one}” y “${other}” significan lo mismo, pero tienen valores distintos; no se usa ninguna.`,
  'interval/import-unit-unknown': ({ unit }) =>
    `Unidad de odómetro desconocida “${unit}”. OdometerUnits debe ser “kilometre” o “mile”; la lectura se omite.`,
  'interval/import-mixed-units': ({ units }, say) =>
    `Lecturas del odómetro en ${say.list(units)}. Una máquina debe usar una sola unidad; sus distancias se omiten.`,
  'interval/import-date-unreadable': ({ text }) => `“${text}” no empieza con una fecha; la lectura se omite.`,

  'interval/first-longer-than-repeat': ({ by }, say) =>
    `El primer intervalo es más largo que el repetido (${say.list(by.map(writeLimit))}). La mayoría de los manuales adelantan el primer cambio: comprobar el manual.`,
  'interval/severe-longer-than-repeat': ({ by }) =>
    by === 'factor'
      ? 'El factor de uso severo es mayor que 1 y alargaría el intervalo. El uso severo lo acorta: comprobar el manual.'
      : `El intervalo de uso severo es más largo que el normal (${writeLimit(by)}). El uso severo lo acorta: comprobar el manual.`,
  'interval/window-not-below-repeat': ({ by }) =>
    `El plazo (${writeLimit(by)}) no es más corto que el intervalo, así que el servicio nunca vencería. Comprobar el manual.`,
  'interval/implied-speed': ({ speed, slowest, fastest }, say) =>
    `Las horas y la distancia dan una media de ${say.quantity({ value: Math.round(speed * 10) / 10, unit: 'km/h' })}; lo verosímil es ${say.number(slowest)} a ${say.number(fastest)}. Buscar un cero de más, o millas por kilómetros.`,
  'interval/log-speed': ({ speed, fastest, from, to }, say) =>
    `Del ${say.date(from)} al ${say.date(to)}, las horas y la distancia dan una media de ${say.quantity({ value: Math.round(speed), unit: 'km/h' })}; como máximo es verosímil ${say.number(fastest)}. Volver a leer los dos contadores.`,
  'interval/months-as-days': ({ days, months }, say) =>
    `${say.count(days, 'día', 'días')} parecen ${say.count(months, 'mes', 'meses')} pasados a días. Escribir meses: los días ignoran los fines de mes y los años bisiestos.`,
}

/** A meter, a kind of event, or the id of a record. */
function writeSource(what: string): string {
  if (Object.hasOwn(METER_NAMES, what)) return writeMeter(what)
  return Object.hasOwn(paperWords.events, what) ? nameOf(paperWords.events, what) : quote(what)
}

type Start = NonNullable<DueLine['since']> | 'schedule'
const START_NAMES: Readonly<Record<Start, string>> = {
  'last service': 'el último servicio',
  'first use': 'el primer uso',
  rebuild: 'la reconstrucción',
  schedule: 'un servicio programado',
}
const writeStart = (start: string | undefined): string =>
  start === undefined ? '' : nameOf(START_NAMES, start)
const writeState = (state: DueLine['verdict']): string => capitalize(nameOf(cardWords.dueStates, state))
const writeLimit = (limit: string): string => nameOf(cardWords.dueBy, limit)

/** With the article, after which a sentence can go on. */
const INTERVAL_NAMES: Readonly<Record<'first' | 'repeat' | 'severe' | 'window', string>> = {
  first: 'el primer intervalo',
  repeat: 'el intervalo',
  severe: 'el intervalo de uso severo',
  window: 'el plazo',
}

/** A due point: a date as text, or a meter value. */
function writePoint(at: Param, say: Say): string {
  return typeof at === 'string' ? `el ${say.date(at)}` : `a ${say.quantity(at)}`
}

/** The meter value as a plain param: the interface has no index signature. */
function copyMeter(point: { readonly meter?: MeterQuantity } | undefined): Param | undefined {
  return point?.meter && { ...point.meter }
}

function writeRemaining(left: DueLine['left'], say: Say): string {
  const { value, unit } = left ?? { value: 0, unit: 'd' }
  const size = Math.abs(value)
  const amount = unit === 'd' ? say.count(size, 'día', 'días') : say.quantity({ value: size, unit })
  return value < 0 ? `${amount} de más` : `quedan ${amount}`
}

/** `P1Y6M` as `1 año y 6 meses`. */
function writePeriod(period: string, say: Say): string {
  const parts: string[] = []
  for (const [, digits = '0', unit = 'D'] of period.matchAll(/([0-9]+)([YMWD])/g)) {
    const [singular, plural] = PERIOD_UNIT_NAMES[unit] ?? ['día', 'días']
    parts.push(say.count(Number(digits), singular, plural))
  }
  return say.list(parts)
}

const PERIOD_UNIT_NAMES: Readonly<Record<string, readonly [string, string]>> = {
  Y: ['año', 'años'],
  M: ['mes', 'meses'],
  W: ['semana', 'semanas'],
  D: ['día', 'días'],
}
