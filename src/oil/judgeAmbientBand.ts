import type { Reason } from '../base/index.js'
import type { Band, Quantity, TemperatureUnit } from '../quantity/index.js'
import {
  chooseSide,
  countDecimals,
  exactIn,
  formatExact,
  readBand,
  requireBand,
  requireQuantity,
} from '../quantity/index.js'
import type { StatedValue } from '../spec/index.js'
import { type OilCodes, oilReason } from './codes.js'

export interface AmbientVerdict {
  readonly verdict: 'yes' | 'no' | 'ask' | 'cannot tell'
  readonly reasons: readonly Reason<keyof OilCodes>[]
}

/**
 * Checks whether an oil's ambient band includes the day's temperature. The limits are inside the band (common
 * practice, no source). Without a band there is no limit; a single temperature does not make a band.
 */
export function judgeAmbientBand(
  band: StatedValue<TemperatureUnit> | undefined,
  ambient: Quantity<TemperatureUnit> | undefined,
): AmbientVerdict {
  if (ambient !== undefined) requireQuantity('ambient', ambient, 'temperature')
  if (band === undefined) return { verdict: 'yes', reasons: [oilReason('oil/ambient-not-limited', {})] }
  requireBand('band', band)
  const { unit } = band
  if (band.kind === 'nominal') {
    const printed = { value: band.value, unit }
    return { verdict: 'ask', reasons: [oilReason('oil/ambient-not-a-range', { printed })] }
  }
  const exactBand = readBand(band, unit)
  const { min, max } = band.kind === 'limits' ? band : writeToleranceLimits(band, exactBand)
  const limits = { ...(min && { min: { value: min, unit } }), ...(max && { max: { value: max, unit } }) }
  if (ambient === undefined)
    return { verdict: 'cannot tell', reasons: [oilReason('oil/ambient-not-given', limits)] }
  return chooseSide(exactIn(ambient, unit), exactBand) === 0
    ? { verdict: 'yes', reasons: [oilReason('oil/ambient-in-range', { ambient, ...limits })] }
    : { verdict: 'no', reasons: [oilReason('oil/ambient-out-of-range', { ambient, ...limits })] }
}

/** The limits of a nominal with tolerance, with as many decimals as the nominal or the tolerance has. */
function writeToleranceLimits(
  { value, minus, plus }: { value: string; minus: string; plus: string },
  { low, high }: Band,
): { min?: string; max?: string } {
  const countPlaces = (part: string) => Math.max(countDecimals(value), countDecimals(part))
  return {
    ...(low && { min: formatExact(low, countPlaces(minus)) }),
    ...(high && { max: formatExact(high, countPlaces(plus)) }),
  }
}
