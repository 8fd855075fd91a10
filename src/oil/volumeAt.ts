import { type Reason, requireObject } from '../base/index.js'
import type { Quantity, TemperatureUnit, VolumeUnit } from '../quantity/index.js'
import { compareQuantities, convert, requireQuantity } from '../quantity/index.js'
import type { OfferedOil } from '../spec/index.js'
import { type OilCodes, oilReason } from './codes.js'

type VolumeVerdict<U extends VolumeUnit> =
  | {
      readonly verdict: 'volume'
      readonly volume: Quantity<U>
      readonly reasons: readonly Reason<keyof OilCodes>[]
    }
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason<keyof OilCodes>[] }

/** V2 = V1·ρ(t1)/ρ(t2), densities by {@link densityAt}: compares hot drained oil with cold refill. Wall films are not included. */
export function volumeAt<U extends VolumeUnit>(
  oil: Pick<OfferedOil, 'density15'>,
  volume: Quantity<U>,
  from: Quantity<TemperatureUnit>,
  to: Quantity<TemperatureUnit>,
): VolumeVerdict<U> {
  requireObject('oil', oil)
  requireQuantity('volume', volume, 'volume')
  if (volume.value < 0) throw new RangeError(`volume.value must be 0 or more, got ${volume.value}`)
  requireQuantity('from', from, 'temperature')
  requireQuantity('to', to, 'temperature')
  if (oil.density15 === undefined)
    return { verdict: 'cannot tell', reasons: [oilReason('oil/density-missing', {})] }
  const before = densityAt(oil.density15, from)
  if (before.verdict === 'cannot tell') return before
  const after = densityAt(oil.density15, to)
  if (after.verdict === 'cannot tell') return after
  return {
    verdict: 'volume',
    volume: { value: (volume.value * before.factor) / after.factor, unit: volume.unit },
    reasons: [...before.reasons, ...after.reasons],
  }
}

type DensityVerdict =
  | {
      readonly verdict: 'density'
      readonly density: Quantity<'kg/m3'>
      /** Density at the temperature divided by density at 15 °C. */
      readonly factor: number
      readonly reasons: readonly Reason<keyof OilCodes>[]
    }
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason<keyof OilCodes>[] }

const MIN_DENSITY = { value: 800, unit: 'kg/m3' } as const
const MAX_DENSITY = { value: 1164, unit: 'kg/m3' } as const
const MIN_TEMPERATURE = { value: -50, unit: 'degC' } as const
const MAX_TEMPERATURE = { value: 150, unit: 'degC' } as const
const K1 = 0.6278

/**
 * ρ(t) = ρ15·exp(−α·ΔT·(1 + 0.8·α·ΔT)), α = 0.6278/ρ15 per °C, ΔT = t − 15 °C, not rounded; the ranges
 * include both ends. Source: API MPMS 11.1 / ASTM D1250, lubricating-oil group (constants "54D") from an
 * open-source implementation; the temperature range from memory. Do not use it for fuels or crude: their
 * groups have other constants.
 */
export function densityAt(
  density15: Quantity<'kg/m3'>,
  temperature: Quantity<TemperatureUnit>,
): DensityVerdict {
  requireQuantity('density15', density15, 'density', { above: 0, max: Number.MAX_VALUE })
  requireQuantity('temperature', temperature, 'temperature')
  if (density15.value < MIN_DENSITY.value || density15.value > MAX_DENSITY.value) {
    const params = { density: density15, min: MIN_DENSITY, max: MAX_DENSITY }
    return { verdict: 'cannot tell', reasons: [oilReason('oil/density-outside-range', params)] }
  }
  if (
    compareQuantities(temperature, MIN_TEMPERATURE) < 0 ||
    compareQuantities(temperature, MAX_TEMPERATURE) > 0
  ) {
    const params = { temperature, min: MIN_TEMPERATURE, max: MAX_TEMPERATURE }
    return { verdict: 'cannot tell', reasons: [oilReason('oil/temperature-outside-range', params)] }
  }
  const expansion = (K1 / density15.value) * (convert(temperature, 'degC').value - 15)
  const factor = Math.exp(-expansion * (1 + 0.8 * expansion))
  return {
    verdict: 'density',
    density: { value: density15.value * factor, unit: 'kg/m3' },
    factor,
    reasons: [oilReason('oil/density-by-d1250', { density15, temperature })],
  }
}
