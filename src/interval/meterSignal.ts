import { refuse } from '../base/index.js'
import type { DistanceUnit } from '../quantity/index.js'
import type { MeterQuantity } from './dueVerdict.js'

/** Meter signals as machines send them: counts of a fixed size in four bytes. */
export type MeterSignal = keyof typeof SIGNALS

interface SignalRow {
  readonly perUnit: number
  readonly unit: 'h' | DistanceUnit
}

/**
 * Counts in one unit (exact), so that value = count / perUnit: 0.05 h, 0.125 km, 5 m, 1 mm. Source: SAE
 * J1939-71 SPN 247, 244, 245, 917 as public decoders use them; ISO 11783-7 for wheel-based distance.
 */
const SIGNALS = {
  'engine total hours': { perUnit: 20, unit: 'h' },
  'trip distance': { perUnit: 8, unit: 'km' },
  'total vehicle distance': { perUnit: 8, unit: 'km' },
  'high resolution total vehicle distance': { perUnit: 200, unit: 'km' },
  'wheel-based machine distance': { perUnit: 1_000_000, unit: 'km' },
} as const

/** Maximum count that is a value; larger counts mean an error or no value. */
const MAX_RAW_COUNT = 0xfaff_ffff

/**
 * The distance or time that a signal counted between two messages; a smaller later count is a rollover. Undefined above
 * `maximum` (in the unit of the signal), since the meter must have been exchanged.
 */
export function countBetweenSignals(
  signal: MeterSignal,
  earlierRawCount: number,
  laterRawCount: number,
  maximum: number,
): MeterQuantity | undefined {
  const { perUnit, unit } = requireSignal(signal)
  requireRawCount('earlierRawCount', earlierRawCount)
  requireRawCount('laterRawCount', laterRawCount)
  if (typeof maximum !== 'number' || !(maximum > 0))
    throw refuse('maximum', maximum, 'a number above 0', 'number')
  const counts = laterRawCount - earlierRawCount + (laterRawCount < earlierRawCount ? MAX_RAW_COUNT + 1 : 0)
  return counts <= maximum * perUnit ? { value: counts / perUnit, unit } : undefined
}

function requireSignal(signal: MeterSignal): SignalRow {
  if (typeof signal !== 'string' || !Object.hasOwn(SIGNALS, signal))
    throw refuse('signal', signal, `one of ${Object.keys(SIGNALS).join(', ')}`, 'string')
  return SIGNALS[signal]
}

function requireRawCount(name: string, rawCount: number): void {
  if (!Number.isInteger(rawCount) || rawCount < 0 || rawCount > MAX_RAW_COUNT)
    throw refuse(name, rawCount, `a whole number from 0 to ${MAX_RAW_COUNT}`, 'number')
}
