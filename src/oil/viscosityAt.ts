import { type Reason, requireObject } from '../base/index.js'
import type { Quantity, TemperatureUnit } from '../quantity/index.js'
import { compareQuantities, convert, requireQuantity } from '../quantity/index.js'
import type { OfferedOil } from '../spec/index.js'
import { type OilCodes, oilReason } from './codes.js'
import { calculateOnLine, fitViscosityLine } from './fitViscosityLine.js'

export type ViscosityVerdict =
  | {
      readonly verdict: 'viscosity'
      readonly viscosity: Quantity<'mm2/s'>
      readonly reasons: readonly Reason<keyof OilCodes>[]
    }
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason<keyof OilCodes>[] }

/** The charts of ASTM D341 are based on data from −30 °F to 450 °F; these are whole degrees Celsius inside that range. */
const MIN_TEMPERATURE = { value: -30, unit: 'degC' } as const
const MAX_TEMPERATURE = { value: 230, unit: 'degC' } as const
const MIN_VISCOSITY = { value: 0.21, unit: 'mm2/s' } as const
const MAX_VISCOSITY = { value: 2e7, unit: 'mm2/s' } as const

/**
 * Calculates the viscosity of an oil at a temperature, for planning how long it takes to pour. If the label gives no
 * viscosities, the answer is `cannot tell`.
 *
 * log10 log10 (ν + 0.7 + …) = A − B·log10 T, A and B from ν at 40 °C and 100 °C, T = t + 273.15.
 *
 * @param oil - `kv40` and `kv100` as on the label or data sheet, and `pourPoint` if known
 * @param temperature - of the oil, −30 °C to 230 °C, both ends included
 * @returns the kinematic viscosity, not rounded, or `cannot tell` with the reason: a viscosity is missing, the two
 *   contradict each other, or the temperature is below the pour point or outside the range
 * @throws TypeError or RangeError if an argument is not a quantity, or a viscosity is negative
 *
 * Source: ASTM D341 as quoted. Range −30 °F to 450 °F from the abstract of a 1957 ASTM paper on the charts. The upper
 * end of the charts, 2 × 10⁷ mm²/s, is from memory.
 *
 * @example
 * ```ts
 * import { viscosityAt } from 'drivetrain-service/v1/oil'
 * // What is the viscosity at 80 °C of an oil of 32 mm²/s at 40 °C and 5.4 mm²/s at 100 °C?
 * const oil = { kv40: { value: 32, unit: 'mm2/s' }, kv100: { value: 5.4, unit: 'mm2/s' } } as const
 * const answer = viscosityAt(oil, { value: 80, unit: 'degC' })
 * answer.verdict === 'viscosity' && answer.viscosity.value.toFixed(1) // => '8.5'
 * ```
 */
export function viscosityAt(
  oil: Pick<OfferedOil, 'kv40' | 'kv100' | 'pourPoint'>,
  temperature: Quantity<TemperatureUnit>,
): ViscosityVerdict {
  requireObject('oil', oil)
  requireQuantity('temperature', temperature, 'temperature')
  const { kv40, kv100, pourPoint } = oil
  if (kv40 !== undefined)
    requireQuantity('oil.kv40', kv40, 'kinematicViscosity', { min: 0, max: Number.MAX_VALUE })
  if (kv100 !== undefined)
    requireQuantity('oil.kv100', kv100, 'kinematicViscosity', { min: 0, max: Number.MAX_VALUE })
  if (pourPoint !== undefined) requireQuantity('oil.pourPoint', pourPoint, 'temperature')
  if (kv40 === undefined || kv100 === undefined) {
    const missing = [kv40 === undefined ? 'kv40' : '', kv100 === undefined ? 'kv100' : ''].filter(Boolean)
    return cannotTell(oilReason('oil/viscosities-missing', { missing }))
  }
  if (kv100.value >= kv40.value) return cannotTell(oilReason('oil/viscosities-reversed', { kv40, kv100 }))
  for (const viscosity of [kv40, kv100]) {
    if (viscosity.value < MIN_VISCOSITY.value || viscosity.value > MAX_VISCOSITY.value)
      return makeOutsideVerdict({ viscosity })
  }
  if (
    compareQuantities(temperature, MIN_TEMPERATURE) < 0 ||
    compareQuantities(temperature, MAX_TEMPERATURE) > 0
  ) {
    const range = { min: MIN_TEMPERATURE, max: MAX_TEMPERATURE }
    return cannotTell(oilReason('oil/temperature-outside-range', { temperature, ...range }))
  }
  if (pourPoint !== undefined && compareQuantities(temperature, pourPoint) < 0) {
    return cannotTell(oilReason('oil/below-pour-point', { temperature, pourPoint }))
  }
  const line = fitViscosityLine(
    { temperature: { value: 40, unit: 'degC' }, viscosity: kv40 },
    { temperature: { value: 100, unit: 'degC' }, viscosity: kv100 },
    273.15,
  )
  const value = calculateOnLine(line, convert(temperature, 'degC').value)
  if (!(value >= MIN_VISCOSITY.value && value <= MAX_VISCOSITY.value))
    return makeOutsideVerdict({ temperature })
  const reasons = [oilReason('oil/viscosity-by-d341', { kv40, kv100, temperature })]
  return {
    verdict: 'viscosity',
    viscosity: { value, unit: 'mm2/s' },
    reasons: pourPoint === undefined ? [...reasons, oilReason('oil/pour-point-not-stated', {})] : reasons,
  }
}

function makeOutsideVerdict(
  outsideFigure: { viscosity: Quantity<'mm2/s'> } | { temperature: Quantity },
): ViscosityVerdict {
  return cannotTell(
    oilReason('oil/viscosity-outside-range', { ...outsideFigure, min: MIN_VISCOSITY, max: MAX_VISCOSITY }),
  )
}

function cannotTell(reason: Reason<keyof OilCodes>): ViscosityVerdict {
  return { verdict: 'cannot tell', reasons: [reason] }
}
