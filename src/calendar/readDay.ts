import { dayNumberOf } from './dayNumberOf.js'

/** The day number of an argument that must be a date; throws naming the argument, its value and the range. */
export function readDay(date: unknown, argument: string): number {
  if (typeof date !== 'string')
    throw new TypeError(`${argument} must be a date text such as 2031-01-12, not ${typeof date}`)
  const day = dayNumberOf(date)
  if (Number.isNaN(day)) {
    throw new RangeError(
      `${argument} is ${JSON.stringify(date.slice(0, 40))}; it must be a date YYYY-MM-DD from 0001-01-01 to 9999-12-31`,
    )
  }
  return day
}
