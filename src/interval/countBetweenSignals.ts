import { refuse } from '../base/index.js'
import type { MeterQuantity } from './dueVerdict.js'
import { checkRaw, LARGEST_RAW, type MeterSignal, signalRow } from './meterSignal.js'

/**
 * What a meter signal has counted between two messages, across the point where it starts again from zero, in its own raw
 * counts. A later count that is smaller is a rollover only if that is plausible: `most` says how much can be.
 *
 * counted = later − earlier, or later − earlier + 4,211,081,216
 *
 * @param signal - which signal
 * @param earlierRaw - count of the earlier message, 0 to 4,211,081,215
 * @param laterRaw - count of the later message, same range
 * @param most - the most that can have been counted, in the signal's unit, above 0
 * @returns the quantity, or nothing where it exceeds `most`: an exchanged meter, not a rollover
 * @throws TypeError, RangeError when an argument is out of range
 *
 * Source: ISO 11783-7, wheel-based machine distance (starts again past 4,211,081.215 m).
 *
 * @example
 * ```ts
 * // One count before the limit, then one after zero: how far did the machine go?
 * import { countBetweenSignals } from 'drivetrain-service/v1/interval/meters'
 * countBetweenSignals('wheel-based machine distance', 4_211_081_215, 1, 1)?.value // => 0.000002
 * ```
 */
export function countBetweenSignals(
  signal: MeterSignal,
  earlierRaw: number,
  laterRaw: number,
  most: number,
): MeterQuantity | undefined {
  const row = signalRow(signal)
  checkRaw(earlierRaw, 'earlierRaw', LARGEST_RAW)
  checkRaw(laterRaw, 'laterRaw', LARGEST_RAW)
  if (typeof most !== 'number' || !(most > 0)) throw refuse('most', most, 'a number above 0', 'number')
  const counts = laterRaw - earlierRaw + (laterRaw < earlierRaw ? LARGEST_RAW + 1 : 0)
  return counts <= most * row.perUnit ? { value: counts / row.perUnit, unit: row.unit } : undefined
}
