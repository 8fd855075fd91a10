import type { MeterQuantity } from './dueVerdict.js'
import { checkRaw, LARGEST_RAW, type MeterSignal, signalRow } from './meterSignal.js'

export type SignalReading =
  | { readonly kind: 'value'; readonly quantity: MeterQuantity }
  | { readonly kind: 'error' }
  | { readonly kind: 'not available' }
  | { readonly kind: 'reserved' }

/**
 * The meter value that a four-byte signal carries, for logs fed from a machine's own network.
 *
 * value = count × resolution: 0.05 h, 0.125 km, 5 m, 1 mm
 *
 * @param signal - which signal
 * @param raw - its count, 0 to 4,294,967,295, already put together from its bytes (least first)
 * @returns the value for counts up to 4,211,081,215; `error` from 0xFE000000, `not available` from 0xFF000000, else `reserved`
 * @throws TypeError, RangeError when the signal is unknown or the count no 32-bit count
 *
 * Source: SAE J1939-71 SPN 247, 244, 245, 917 as public decoders carry them; ISO 11783-7 for wheel-based distance; the
 * meaning of 0xFE and 0xFF from memory.
 *
 * @example
 * ```ts
 * // What does the largest valid count of engine hours say?
 * import { decodeMeterSignal } from 'drivetrain-service/v1/interval/meters'
 * const reading = decodeMeterSignal('engine total hours', 4_211_081_215)
 * reading.kind === 'value' && reading.quantity.value // => 210554060.75
 * ```
 */
export function decodeMeterSignal(signal: MeterSignal, raw: number): SignalReading {
  const row = signalRow(signal)
  checkRaw(raw, 'raw', 0xffff_ffff)
  if (raw > LARGEST_RAW)
    return { kind: raw >= 0xff00_0000 ? 'not available' : raw >= 0xfe00_0000 ? 'error' : 'reserved' }
  return { kind: 'value', quantity: { value: raw / row.perUnit, unit: row.unit } }
}
