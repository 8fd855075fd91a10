import { refuse } from '../base/index.js'
import { dayNumberOf } from './dayNumberOf.js'

/** The day number of a date argument; throws if it is not a date. */
export function readDay(date: unknown, argument: string): number {
  const day = typeof date === 'string' ? dayNumberOf(date) : NaN
  if (Number.isNaN(day)) throw refuse(argument, date, 'a date from 0001-01-01 to 9999-12-31', 'string')
  return day
}
