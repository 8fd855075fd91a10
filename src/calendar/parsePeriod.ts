import { type Result, refuse } from '../base/index.js'
import type { CalendarCodes } from './codes.js'
import type { Period } from './dateText.js'

/**
 * A calendar period such as `P6M`: `P`, then years `Y`, months `M`, weeks `W`, days `D` in this order, each at most once and
 * at least one; whole numbers of one to seven digits. Source: ISO 8601-1:2019 durations, with weeks next to other parts as
 * ECMAScript reads them (test262 `Temporal/Duration/from/argument-string*`); no time part, no fraction.
 */
export function parsePeriod(text: string): Result<Period, CalendarCodes> {
  if (typeof text !== 'string') throw refuse('text', text, 'a string')
  const period = scanPeriod(text)
  if (period !== undefined) return { ok: true, value: period, findings: [] }
  const params = { text: text.slice(0, 40) }
  const document = { kind: 'text' } as const
  const finding = { code: 'calendar/not-a-period', severity: 'error', document, path: '', params } as const
  return { ok: false, findings: [finding] }
}

const UNITS = 'YMWD'

/** The parts of a period text, or nothing where it is not one; by hand, since it runs for every limit of a fleet. */
export function scanPeriod(text: string): Period | undefined {
  if (text.charCodeAt(0) !== 80 || text.length < 3) return undefined
  const period = { years: 0, months: 0, weeks: 0, days: 0 }
  let unit = -1
  let digits = 0
  let value = 0
  for (let at = 1; at < text.length; at++) {
    const digit = text.charCodeAt(at) - 48
    if (digit >= 0 && digit <= 9) {
      value = value * 10 + digit
      if (++digits > 7) return undefined
    } else {
      const next = UNITS.indexOf(text.charAt(at))
      if (next <= unit || digits === 0) return undefined
      if (next === 0) period.years = value
      else if (next === 1) period.months = value
      else if (next === 2) period.weeks = value
      else period.days = value
      unit = next
      digits = 0
      value = 0
    }
  }
  return digits === 0 ? period : undefined
}
