import type { Exact, LengthUnit, Quantity } from '../quantity/index.js'
import { add, divide, exactOf, LENGTH_FACTORS, multiply } from '../quantity/index.js'

function toMillimetres({ value, unit }: Quantity<LengthUnit>): Exact {
  return multiply(exactOf(value), exactOf(LENGTH_FACTORS.length[unit]))
}

/**
 * cos θ, exact if it is rational (at 0, 60, 90, 120 and 180°: Niven's theorem), otherwise the exact value of
 * the double.
 */
function calculateExactCosine(degrees: number): Exact {
  const fractions: Readonly<Record<number, string>> = { 0: '1', 60: '0.5', 90: '0', 120: '-0.5', 180: '-1' }
  const fraction = fractions[degrees]
  return exactOf(fraction ?? Math.cos((degrees * Math.PI) / 180))
}

/**
 * L ÷ (L + E·cos θ), exactly: the reading of the wrench for each unit of torque at the fastener. `undefined`
 * if the adaptor reaches back to the hand or past it, so that a pull cannot turn the fastener.
 */
export function calculateAdaptorRatio(
  leverLength: Quantity<LengthUnit>,
  extension: Quantity<LengthUnit>,
  angleDegrees: number,
): Exact | undefined {
  const lever = toMillimetres(leverLength)
  const effectiveLength = add(lever, multiply(toMillimetres(extension), calculateExactCosine(angleDegrees)))
  return effectiveLength.n > 0n ? divide(lever, effectiveLength) : undefined
}
