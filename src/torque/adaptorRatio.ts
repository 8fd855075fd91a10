import type { Exact, LengthUnit, Quantity } from '../quantity/index.js'
import { exactOf, LENGTH, over, plus, times } from '../quantity/index.js'

function millimetres({ value, unit }: Quantity<LengthUnit>): Exact {
  return times(exactOf(value), exactOf(LENGTH.length[unit]))
}

/** cos θ, exact if it is a fraction (at 0, 60, 90, 120 and 180°: Niven's theorem), else the exact value of the double. */
function cosine(degrees: number): Exact {
  const fractions: Readonly<Record<number, string>> = { 0: '1', 60: '0.5', 90: '0', 120: '-0.5', 180: '-1' }
  const fraction = fractions[degrees]
  return exactOf(fraction ?? Math.cos((degrees * Math.PI) / 180))
}

/**
 * L ÷ (L + E·cos θ), exactly: the reading of the wrench for each unit of torque at the fastener. `undefined` if the
 * adaptor reaches back to the hand or past it, so that no pull turns the fastener.
 */
export function adaptorRatio(
  leverLength: Quantity<LengthUnit>,
  extension: Quantity<LengthUnit>,
  angleDegrees: number,
): Exact | undefined {
  const lever = millimetres(leverLength)
  const reach = plus(lever, times(millimetres(extension), cosine(angleDegrees)))
  return reach.n > 0n ? over(lever, reach) : undefined
}
