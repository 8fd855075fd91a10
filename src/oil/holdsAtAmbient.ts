import type { Reason } from '../base/index.js'
import {
  compareQuantities,
  exactOf,
  type Quantity,
  requireBand,
  type TemperatureUnit,
} from '../quantity/index.js'
import type { StatedValue } from '../spec/index.js'
import { type OilCodes, oilReason } from './codes.js'
import { requireQuantity } from './requireQuantity.js'

export interface AmbientVerdict {
  readonly verdict: 'yes' | 'no' | 'ask' | 'cannot tell'
  readonly reasons: readonly Reason<keyof OilCodes>[]
}

/**
 * Whether an oil's ambient band includes a day's temperature, both read by their shortest decimal; limits belong to the band
 * (common practice, no source). Without a band the manual sets no limit; a bare temperature is no band.
 */
export function holdsAtAmbient(
  band: StatedValue<TemperatureUnit> | undefined,
  ambient: Quantity<TemperatureUnit> | undefined,
): AmbientVerdict {
  if (ambient !== undefined) requireQuantity('ambient', ambient, 'temperature')
  if (band === undefined) return { verdict: 'yes', reasons: [oilReason('oil/ambient-not-limited', {})] }
  requireBand('band', band)
  const { unit } = band
  if (band.kind === 'nominal') {
    const printed = { value: band.value, unit }
    return { verdict: 'ask', reasons: [oilReason('oil/ambient-not-a-band', { printed })] }
  }
  const limits = band.kind === 'limits' ? band : span(band)
  const shown = {
    ...(limits.min === undefined ? {} : { min: { value: limits.min, unit } }),
    ...(limits.max === undefined ? {} : { max: { value: limits.max, unit } }),
  }
  if (ambient === undefined)
    return { verdict: 'cannot tell', reasons: [oilReason('oil/ambient-not-given', shown)] }
  const tooCold = shown.min !== undefined && compareQuantities(ambient, shown.min) < 0
  const tooWarm = shown.max !== undefined && compareQuantities(ambient, shown.max) > 0
  return tooCold || tooWarm
    ? { verdict: 'no', reasons: [oilReason('oil/ambient-outside', { ambient, ...shown })] }
    : { verdict: 'yes', reasons: [oilReason('oil/ambient-inside', { ambient, ...shown })] }
}

/** Limits of a nominal with tolerance, exact: printed digits are lined up before they are added. */
function span(band: { value: string; minus: string; plus: string }): { min?: string; max?: string } {
  return { min: addFigures(band.value, band.minus, -1n), max: addFigures(band.value, band.plus, 1n) }
}

function addFigures(first: string, second: string, sign: 1n | -1n): string {
  const decimals = Math.max(...[first, second].map((figure) => (figure.split('.')[1] ?? '').length))
  const scale = 10n ** BigInt(decimals)
  const [left, right] = [first, second].map((value) => exactOf(value))
  if (left === undefined || right === undefined) return first
  const sum = (left.n * scale) / left.d + sign * ((right.n * scale) / right.d)
  const digits = String(sum < 0n ? -sum : sum).padStart(decimals + 1, '0')
  const whole = digits.slice(0, digits.length - decimals)
  return `${sum < 0n ? '-' : ''}${whole}${decimals === 0 ? '' : `.${digits.slice(-decimals)}`}`
}
