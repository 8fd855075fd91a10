import type { Period } from './parsePeriod.js'

const UNITS = 'YMWD'

/** The parts of a period text, or nothing where it is not one; for the grammar see `parsePeriod`. */
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
