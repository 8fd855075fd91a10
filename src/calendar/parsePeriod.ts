import type { Result } from '../base/index.js'
import { scanPeriod } from './scanPeriod.js'

/** A calendar period in whole parts. Months and days are never turned into one another. */
export interface Period {
  readonly years: number
  readonly months: number
  readonly weeks: number
  readonly days: number
}

/**
 * Reads a calendar period such as `P6M` or `P1Y`, for service intervals. Periods of hours (`PT500H`) are not of the
 * calendar: an interval's hours are a figure of their own.
 *
 * `P` then years `Y`, months `M`, weeks `W`, days `D`, in this order, each at most once and at least one of them; whole
 * numbers of one to seven digits; capitals; no sign, no fraction, no time part.
 *
 * @param text - foreign text
 * @returns the parts, or the finding `calendar/not-a-period`
 * @throws TypeError when `text` is not a string
 *
 * Source: ISO 8601-1:2019 durations, with weeks next to other parts as ECMAScript reads them (test262
 * `Temporal/Duration/from/argument-string*`); whole parts only, since no one can say how long half a month is.
 *
 * @example
 * ```ts
 * // How many months is half a year?
 * import { parsePeriod } from 'drivetrain-service/v1/calendar'
 * const period = parsePeriod('P6M')
 * period.ok && period.value.months // => 6
 * ```
 */
export function parsePeriod(text: string): Result<Period> {
  if (typeof text !== 'string') throw new TypeError(`text must be a string, not ${typeof text}`)
  const period = scanPeriod(text)
  if (period === undefined) {
    return {
      ok: false,
      findings: [
        {
          code: 'calendar/not-a-period',
          severity: 'error',
          document: { kind: 'text' },
          path: '',
          params: { text: text.slice(0, 40) },
        },
      ],
    }
  }
  return { ok: true, value: period, findings: [] }
}
