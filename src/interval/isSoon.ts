import type { DueOptions } from './dueQuestion.js'
import type { LimitScale } from './limitScale.js'
import { meterCount } from './meterCount.js'
import type { Limits } from './readLimits.js'

/** Whether a limit is so little before its due point, or so far on its way, that it counts as soon. */
export function isSoon(
  { hours, distance, days, fraction }: DueOptions['soon'],
  by: keyof Limits,
  { start, now }: LimitScale,
  due: number,
): boolean {
  // What is not asked for is NaN, and nothing is at or past NaN.
  let before = days
  if (by === 'hours') before = hours && meterCount(hours, 'h')
  if (by === 'distance') before = distance && meterCount(distance.value, distance.unit)
  // The last factor takes back the last bit of the product, so that 0.07 of 100 is 7 and not 8.
  const way = Math.ceil((due - start) * (fraction ?? Number.NaN) * 0.999_999_999_999_999)
  return now >= due - (before ?? Number.NaN) || now >= start + way
}
