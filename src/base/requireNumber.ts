import { quoteValue } from './refuse.js'

/** The range of an argument; without `max` and `below`, up to 1e9. */
export interface NumberRange {
  readonly above?: number
  readonly min?: number
  readonly max?: number
  readonly below?: number
}

/** Throws TypeError if the value is not a number, RangeError if it is outside the range. */
export function requireNumber(name: string, value: unknown, range: NumberRange): void {
  const { above, min, below, max = below ?? 1e9 } = range
  const isNumber = typeof value === 'number'
  if (
    isNumber &&
    value > (above ?? -Infinity) &&
    value >= (min ?? -Infinity) &&
    value <= max &&
    value !== below
  )
    return
  const limits = [
    above === undefined ? '' : `, above ${above}`,
    min === undefined ? '' : `, ${min} or more`,
    below === undefined ? `, ${max} or less` : `, below ${below}`,
  ]
  const ErrorType = isNumber ? RangeError : TypeError
  throw new ErrorType(`${name} must be a number${limits.join('')}, got ${quoteValue(value)}`)
}
