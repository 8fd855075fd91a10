import { refuse } from '../base/index.js'
import type { DistanceUnit } from '../quantity/index.js'

/** Meter signals as machines send them: counts of a fixed size in four bytes. */
export type MeterSignal =
  | 'engine total hours'
  | 'trip distance'
  | 'total vehicle distance'
  | 'high resolution total vehicle distance'
  | 'wheel-based machine distance'

interface SignalRow {
  readonly perUnit: number
  readonly unit: 'h' | DistanceUnit
}

/** Counts in one unit (exact), so that value = count / perUnit. */
const SIGNALS: Readonly<Record<MeterSignal, SignalRow>> = {
  'engine total hours': { perUnit: 20, unit: 'h' },
  'trip distance': { perUnit: 8, unit: 'km' },
  'total vehicle distance': { perUnit: 8, unit: 'km' },
  'high resolution total vehicle distance': { perUnit: 200, unit: 'km' },
  'wheel-based machine distance': { perUnit: 1_000_000, unit: 'km' },
}

/** The largest count that is a value; above it the bytes mean an error or that there is no value. */
export const LARGEST_RAW = 0xfaff_ffff

/** How a signal counts; throws for one that is not known. */
export function signalRow(signal: MeterSignal): SignalRow {
  if (typeof signal !== 'string' || !Object.hasOwn(SIGNALS, signal))
    throw refuse('signal', signal, `one of ${Object.keys(SIGNALS).join(', ')}`, 'string')
  return SIGNALS[signal]
}

/** Throws where a raw count is none. */
export function checkRaw(raw: number, name: string, most: number): void {
  if (!Number.isInteger(raw) || raw < 0 || raw > most)
    throw refuse(name, raw, `a whole number from 0 to ${most}`, 'number')
}
