import type { DateText } from './dateText.js'
import { readDay } from './readDay.js'

/**
 * Days from one date to another. To see whether a number of months has passed, add them to the start and
 * compare.
 */
export function daysBetween(from: DateText, to: DateText): number {
  return readDay(to, 'to') - readDay(from, 'from')
}
