import type { Reason } from '../base/index.js'
import { type Quantity, requireQuantity } from '../quantity/index.js'
import { type OilCodes, oilReason } from './codes.js'
import { findViscosityIndexRow, VISCOSITY_INDEX_H, VISCOSITY_INDEX_L } from './viscosityIndexTable.js'

export type ViscosityIndexVerdict =
  | {
      readonly verdict: 'viscosity index'
      /** Not rounded. */
      readonly value: number
      /** As ASTM D2270 reports it: a whole number, half to even. */
      readonly reported: number
      readonly procedure: 'A' | 'B'
      readonly reasons: readonly Reason<keyof OilCodes>[]
    }
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason<keyof OilCodes>[] }

const MIN_KV100 = { value: 2, unit: 'mm2/s' } as const

/**
 * U = ν at 40 °C, Y = ν at 100 °C. Procedure A, if U > H: VI = 100·(L − U)/(L − H). Procedure B, if U ≤ H:
 * VI = (10^N − 1)/0.00715 + 100, N = (log H − log U)/log Y. Source: ASTM D2270 (web copy; table of L and H from the open
 * `chemicals` package, 311 rows, linear between rows; above 70 mm²/s L = 0.8353Y² + 14.67Y − 216 and
 * H = 0.1684Y² + 11.85Y − 97).
 */
export function calculateViscosityIndex(
  kv40: Quantity<'mm2/s'>,
  kv100: Quantity<'mm2/s'>,
): ViscosityIndexVerdict {
  requireQuantity('kv40', kv40, 'kinematicViscosity', { above: 0, max: Number.MAX_VALUE })
  requireQuantity('kv100', kv100, 'kinematicViscosity', { above: 0, max: Number.MAX_VALUE })
  if (kv100.value < MIN_KV100.value) {
    return {
      verdict: 'cannot tell',
      reasons: [oilReason('oil/viscosity-index-undefined', { kv100, min: MIN_KV100 })],
    }
  }
  if (kv40.value <= kv100.value)
    return { verdict: 'cannot tell', reasons: [oilReason('oil/viscosities-reversed', { kv40, kv100 })] }
  const { l, h } = findBasicValues(kv100.value)
  const procedure = kv40.value > h ? 'A' : 'B'
  const value =
    procedure === 'A'
      ? (100 * (l - kv40.value)) / (l - h)
      : (10 ** (Math.log10(h / kv40.value) / Math.log10(kv100.value)) - 1) / 0.00715 + 100
  const reasons = [oilReason('oil/viscosity-index-by-d2270', { procedure, kv40, kv100 })]
  return { verdict: 'viscosity index', value, reported: roundHalfToEven(value), procedure, reasons }
}

/** L and H for a viscosity at 100 °C of 2 mm²/s or more. */
function findBasicValues(y: number): { l: number; h: number } {
  if (y > 70) return { l: 0.8353 * y * y + 14.67 * y - 216, h: 0.1684 * y * y + 11.85 * y - 97 }
  const { row, from, to } = findViscosityIndexRow(y)
  const interpolate = (column: readonly number[]) => {
    const [low = 0, high = 0] = [column[row], column[row + 1]]
    return low + ((high - low) * (y - from)) / (to - from)
  }
  return { l: interpolate(VISCOSITY_INDEX_L), h: interpolate(VISCOSITY_INDEX_H) }
}

function roundHalfToEven(value: number): number {
  const floor = Math.floor(value)
  const fraction = value - floor
  if (fraction !== 0.5) return fraction < 0.5 ? floor : floor + 1
  return floor % 2 === 0 ? floor : floor + 1
}
