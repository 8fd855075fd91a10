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
  readonly verdict: 'yes' | 'no' | 'ask'
  readonly reasons: readonly Reason<keyof OilCodes>[]
}

/**
 * Whether the manual's temperature band for an oil holds on a given day. To sort all oils of a sheet use
 * {@link chooseOilChoice}.
 *
 * @param band - the oil's `ambient` as the sheet states it; absent: the manual sets no limit. Limits belong to the
 *   band; `nominal with tolerance` spans nominal − minus to nominal + plus
 * @param ambient - the day's temperature, read by its shortest decimal; absent: nobody said
 * @returns `yes`, `no`, or `ask` where the ambient is missing or the sheet prints a bare temperature instead of a band
 * @throws TypeError or RangeError when `ambient` is no temperature
 *
 * Source: common practice, no source, for the limits belonging to the band.
 *
 * @example
 * ```ts
 * import { holdsAtAmbient } from 'drivetrain-service/v1/oil'
 * // Is an oil for −10 °C and above right at 14 °F, which is −10 °C?
 * const band = { kind: 'limits', min: '-10', unit: 'degC' } as const
 * holdsAtAmbient(band, { value: 14, unit: 'degF' }).verdict // => 'yes'
 * ```
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
  if (ambient === undefined) return { verdict: 'ask', reasons: [oilReason('oil/ambient-not-given', shown)] }
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
