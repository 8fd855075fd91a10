import { compareExact, type Exact, exactlyIn, exactOf, type Figure, type Unit } from '../quantity/index.js'

/**
 * A quantity as an exact fraction in another unit. A number is read by its shortest decimal, as it stands in the
 * JSON file, so that an ambient of 0.1 °C equals a printed limit of `0.1`. Internal.
 */
export function exactAmount(quantity: { value: number | Figure; unit: Unit }, to: Unit): Exact {
  const [mantissa = '', power = '0'] = String(quantity.value).split('e')
  const exponent = Number(power)
  const scale = `1${'0'.repeat(Math.abs(exponent))}`
  const digits = exactOf(mantissa)
  const factor = BigInt(scale)
  const value = exponent < 0 ? { n: digits.n, d: digits.d * factor } : { n: digits.n * factor, d: digits.d }
  return exactlyIn(value, quantity.unit, to)
}

/** −1, 0 or 1 as the first quantity is below, equal to or above the second, exactly. */
export function compareAmounts(
  first: { value: number | Figure; unit: Unit },
  second: { value: number | Figure; unit: Unit },
): -1 | 0 | 1 {
  return compareExact(exactAmount(first, second.unit), exactAmount(second, second.unit))
}
