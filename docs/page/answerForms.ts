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
export function answerTorqueForm(values: Values, marks: NumberMarks): FormAnswer {
  const { value, tolerance = '', unit, lowest = '', highest, step, scale, error } = values
  if (!isPositive(value)) return { text: 'Type the torque that the manual states.' }
  if (tolerance !== '' && !FIGURE.test(tolerance)) return { text: 'Type the tolerance, or leave it empty.' }
  if (!isPositive(lowest)) return { text: 'Type the lowest mark of the wrench.' }
  if (!isPositive(highest) || Number(highest) <= Number(lowest))
    return { text: 'Type the highest mark of the wrench; it is above the lowest.' }
  if (!isPositive(step)) return { text: 'Type the step between two marks.' }
  if (!isPositive(error) || Number(error) >= 100)
    return { text: 'Type the error of the wrench; 4 % is usual, its own paper comes first.' }
  const torque: PrintedBand<TorqueUnit> =
    tolerance === '' || Number(tolerance) === 0
      ? { kind: 'nominal', value, unit: unit as TorqueUnit }
      : { kind: 'nominal with tolerance', value, minus: tolerance, plus: tolerance, unit: unit as TorqueUnit }
  const verdict = checkWrench(
    {
      name: 'this wrench',
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
  if (setting === undefined) return { text: `${capitalize(verdict.verdict)}.`, result: verdict }
  const write = (quantity: Quantity): string => formatQuantity(quantity, marks, { atMost: 2 })
  const { min, max } = setting.trueBand.sheetUnit
  const care = verdict.verdict === 'fits' ? '' : ', with care'
  return {
    text: `Set ${write(setting.setting)}${care}. Actual torque: ${write(min)} to ${write(max)}.`,
    result: verdict,
  }
}

/** Whether a text is a day of the calendar. */
function isDay(text: string): boolean {
  const time = Date.parse(`${text}T00:00:00Z`)
  return /^(?!0000)\d{4}-/.test(text) && !Number.isNaN(time) && new Date(time).toISOString().startsWith(text)
}

/** Whether a service is due, from the interval and the meters on two days. */
export function answerDueForm(values: Values, marks: NumberMarks): FormAnswer {
  const { hours = '', km = '', months = '', lastDate = '', nowDate = '' } = values
  const limits = [hours, km, months].filter((text) => text !== '')
  if (limits.length === 0) return { text: 'Type at least one limit of the manual: hours, km or months.' }
  if (!limits.every((text) => /^[1-9]\d{0,5}$/.test(text)))
    return { text: 'A limit is a whole number above 0.' }
  const days = [lastDate, nowDate]
  if (!days.every(isDay)) return { text: 'Choose the day of the last service, and today.' }
  if (lastDate > nowDate) return { text: 'The last service is after today: correct one of the days.' }
  const readings = ['lastHours', 'lastKm', 'nowHours', 'nowKm'].map((name) => values[name] ?? '')
  if (!readings.every((text) => text === '' || FIGURE.test(text)))
    return { text: 'A reading is a number with at most six decimals, or empty.' }
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
  return { text: describeDue(verdict, marks), result: verdict }
}

const makeDay = (date: string, hours: string, km: string) => ({
  date,
  ...(hours !== '' && { hours: Number(hours) }),
  ...(km !== '' && { distance: { value: Number(km), unit: 'km' as const } }),
})

function describeDue({ verdict, lines, dueBy }: DueVerdict, marks: NumberMarks): string {
  const { left, duePoint } = lines.find(({ by }) => by === dueBy) ?? {}
  if (verdict === 'cannot tell' || left === undefined) return `${capitalize(verdict)}.`
  const write = (quantity: Quantity): string => formatQuantity(quantity, marks, { atMost: 1 })
  const size = Math.abs(left.value)
  const amount =
    left.unit === 'd' ? `${size} ${size === 1 ? 'day' : 'days'}` : write({ ...left, value: size })
  const point = duePoint?.meter
    ? ` at ${write(duePoint.meter)}`
    : duePoint?.date
      ? ` on ${duePoint.date}`
      : ''
  return `${capitalize(verdict)}: ${amount} ${left.value < 0 ? 'over' : 'left'}, due${point}.`
}

const capitalize = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
