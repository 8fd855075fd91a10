import type { Reason } from '../../src/v1/index.js'
import { type DueVerdict, judgeInterval } from '../../src/v1/interval.js'
import {
  formatQuantity,
  type NumberMarks,
  type PrintedBand,
  type Quantity,
  type TorqueUnit,
} from '../../src/v1/quantity.js'
import { checkWrench } from '../../src/v1/torque.js'
import type { QuestionLabels } from './labels/labels.js'

/** The fields of a form as typed; an empty text is an empty field. */
export type Values = { readonly [field: string]: string }

export interface FormAnswer {
  readonly text: string
  readonly result?: { readonly reasons: readonly Reason[] }
}

/** A figure as the library reads one: digits and at most six decimals. */
const FIGURE = /^(0|[1-9]\d{0,8})(\.\d{1,6})?$/

const isPositive = (text: string | undefined): text is string =>
  text !== undefined && FIGURE.test(text) && Number(text) > 0

/** The setting of a wrench for a torque, and the actual torque at that setting. */
export function answerTorqueForm(values: Values, marks: NumberMarks, labels: QuestionLabels): FormAnswer {
  const { ask } = labels
  const { value, tolerance = '', unit, lowest = '', highest, step, scale, error } = values
  if (!isPositive(value)) return { text: ask.torque }
  if (tolerance !== '' && !FIGURE.test(tolerance)) return { text: ask.tolerance }
  if (!isPositive(lowest)) return { text: ask.lowest }
  if (!isPositive(highest) || Number(highest) <= Number(lowest)) return { text: ask.highest }
  if (!isPositive(step)) return { text: ask.step }
  if (!isPositive(error) || Number(error) >= 100) return { text: ask.error }
  const torque: PrintedBand<TorqueUnit> =
    tolerance === '' || Number(tolerance) === 0
      ? { kind: 'nominal', value, unit: unit as TorqueUnit }
      : { kind: 'nominal with tolerance', value, minus: tolerance, plus: tolerance, unit: unit as TorqueUnit }
  const verdict = checkWrench(
    {
      name: labels.wrench,
      type: 'click',
      drive: 'not stated',
      scales: [
        {
          unit: scale as TorqueUnit,
          lowest: Number(lowest),
          highest: Number(highest),
          graduation: Number(step),
        },
      ],
      accuracy: { kind: 'of reading', percent: Number(error) },
    },
    { kind: 'torque', torque, threadCondition: 'not stated' },
    { iso6789: '2017' },
  )
  const { setting } = verdict
  if (setting === undefined)
    return {
      text: labels.wrenchVerdicts[verdict.verdict === 'does not fit' ? 'does not fit' : 'cannot tell'],
      result: verdict,
    }
  const write = (quantity: Quantity): string => formatQuantity(quantity, marks, { atMost: 2 })
  const { min, max } = setting.trueBand.sheetUnit
  const set = labels.setting(write(setting.setting), verdict.verdict !== 'fits')
  return { text: `${set} ${labels.actual(write(min), write(max))}`, result: verdict }
}

/** Whether a text is a day of the calendar. */
function isDay(text: string): boolean {
  const time = Date.parse(`${text}T00:00:00Z`)
  return /^(?!0000)\d{4}-/.test(text) && !Number.isNaN(time) && new Date(time).toISOString().startsWith(text)
}

/** Whether a service is due, from the interval and the meters on two days. */
export function answerDueForm(values: Values, marks: NumberMarks, labels: QuestionLabels): FormAnswer {
  const { askDue } = labels
  const { hours = '', km = '', months = '', lastDate = '', nowDate = '' } = values
  const limits = [hours, km, months].filter((text) => text !== '')
  if (limits.length === 0) return { text: askDue.limit }
  if (!limits.every((text) => /^[1-9]\d{0,5}$/.test(text))) return { text: askDue.wholeLimit }
  const days = [lastDate, nowDate]
  if (!days.every(isDay)) return { text: askDue.day }
  if (lastDate > nowDate) return { text: askDue.order }
  const readings = ['lastHours', 'lastKm', 'nowHours', 'nowKm'].map((name) => values[name] ?? '')
  if (!readings.every((text) => text === '' || FIGURE.test(text))) return { text: askDue.reading }
  const [lastHours = '', lastKm = '', nowHours = '', nowKm = ''] = readings
  const verdict = judgeInterval(
    {
      every: {
        kind: 'interval',
        ...(hours !== '' && { hours }),
        ...(km !== '' && { distance: { value: km, unit: 'km' as const } }),
        ...(months !== '' && { period: `P${months}M` as const }),
      },
      last: makeDay(lastDate, lastHours, lastKm),
      now: makeDay(nowDate, nowHours, nowKm),
    },
    { soon: { hours: 10, distance: { value: 100, unit: 'km' }, days: 14 } },
  )
  return { text: describeDue(verdict, marks, labels), result: verdict }
}

const makeDay = (date: string, hours: string, km: string) => ({
  date,
  ...(hours !== '' && { hours: Number(hours) }),
  ...(km !== '' && { distance: { value: Number(km), unit: 'km' as const } }),
})

function describeDue(
  { verdict, lines, dueBy }: DueVerdict,
  marks: NumberMarks,
  { dueVerdicts, days, left: writeLeft }: QuestionLabels,
): string {
  const { left, duePoint } = lines.find(({ by }) => by === dueBy) ?? {}
  if (verdict === 'cannot tell' || left === undefined) return `${dueVerdicts[verdict]}.`
  const write = (quantity: Quantity): string => formatQuantity(quantity, marks, { atMost: 1 })
  const size = Math.abs(left.value)
  const amount = left.unit === 'd' ? days(size) : write({ ...left, value: size })
  const point = duePoint?.meter
    ? { at: write(duePoint.meter) }
    : duePoint?.date
      ? { on: duePoint.date }
      : undefined
  return writeLeft(dueVerdicts[verdict], amount, left.value < 0, point)
}
