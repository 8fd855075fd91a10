import { refuse } from '../base/index.js'
import type { DistanceUnit } from '../quantity/index.js'
import type { MeterQuantity } from './dueVerdict.js'

/** Meter signals as machines send them: counts of a fixed size in four bytes. */
export type MeterSignal = keyof typeof SIGNALS

export type SignalReading =
  | { readonly kind: 'value'; readonly quantity: MeterQuantity }
  | { readonly kind: 'error' | 'not available' | 'reserved' }

interface SignalRow {
  readonly perUnit: number
  readonly unit: 'h' | DistanceUnit
}

/**
 * Counts in one unit (exact), so that value = count / perUnit: 0.05 h, 0.125 km, 5 m, 1 mm. Source: SAE J1939-71 SPN 247,
 * 244, 245, 917 as public decoders carry them; ISO 11783-7 for wheel-based distance.
 */
const SIGNALS = {
  'engine total hours': { perUnit: 20, unit: 'h' },
  'trip distance': { perUnit: 8, unit: 'km' },
  'total vehicle distance': { perUnit: 8, unit: 'km' },
  'high resolution total vehicle distance': { perUnit: 200, unit: 'km' },
  'wheel-based machine distance': { perUnit: 1_000_000, unit: 'km' },
} as const

/** The largest count that is a value; above it the bytes mean an error or that there is no value. */
const LARGEST_RAW = 0xfaff_ffff

/** The meter value of a signal's count; 0xFE000000 and up are an error, 0xFF000000 and up not available (from memory). */
export function decodeMeterSignal(signal: MeterSignal, raw: number): SignalReading {
  const { perUnit, unit } = requireSignal(signal)
  requireRaw('raw', raw, 0xffff_ffff)
  if (raw > LARGEST_RAW)
    return { kind: raw >= 0xff00_0000 ? 'not available' : raw >= 0xfe00_0000 ? 'error' : 'reserved' }
  return { kind: 'value', quantity: { value: raw / perUnit, unit } }
}

/**
 * What a signal has counted between two messages; a smaller later count has started again from zero. Nothing where that
 * exceeds the maximum that is plausible, in the signal's unit: an exchanged meter, not a rollover.
 */
export function countBetweenSignals(
  signal: MeterSignal,
  earlierRaw: number,
  laterRaw: number,
  maximum: number,
): MeterQuantity | undefined {
  const { perUnit, unit } = requireSignal(signal)
  requireRaw('earlierRaw', earlierRaw, LARGEST_RAW)
  requireRaw('laterRaw', laterRaw, LARGEST_RAW)
  if (typeof maximum !== 'number' || !(maximum > 0))
    throw refuse('maximum', maximum, 'a number above 0', 'number')
  const counts = laterRaw - earlierRaw + (laterRaw < earlierRaw ? LARGEST_RAW + 1 : 0)
  return counts <= maximum * perUnit ? { value: counts / perUnit, unit } : undefined
}

function requireSignal(signal: MeterSignal): SignalRow {
  if (typeof signal !== 'string' || !Object.hasOwn(SIGNALS, signal))
    throw refuse('signal', signal, `one of ${Object.keys(SIGNALS).join(', ')}`, 'string')
  return SIGNALS[signal]
}

function requireRaw(name: string, raw: number, maximum: number): void {
  if (!Number.isInteger(raw) || raw < 0 || raw > maximum)
    throw refuse(name, raw, `a whole number from 0 to ${maximum}`, 'number')
}
