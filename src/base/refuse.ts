/**
 * Makes the error for a wrong argument, or a wrong value inside one: a RangeError if the value has the right
 * type (`kind`, a `typeof`), else a TypeError.
 */
export function refuse(name: string, value: unknown, expected: string, kind = ''): Error {
  const ErrorType = typeof value === kind ? RangeError : TypeError
  return new ErrorType(`${name} must be ${expected}, got ${quoteValue(value)}`)
}

/** Quotes a value in an error message: short, and safe for any value. */
export function quoteValue(value: unknown): string {
  if (typeof value === 'string') return `'${value.length > 40 ? `${value.slice(0, 40)}…` : value}'`
  if (Array.isArray(value)) return 'a list'
  if (value === null || typeof value === 'number' || typeof value === 'boolean') return String(value)
  return typeof value === 'object' ? 'an object' : typeof value
}

/** Quotes foreign data for a finding: text unchanged, anything else in words. Never throws. */
export function asText(value: unknown): string {
  return typeof value === 'string' ? value : quoteValue(value)
}

/** Throws TypeError if the value is not an object, or is a list. */
export function requireObject(name: string, value: unknown): void {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new TypeError(`${name} must be an object, got ${quoteValue(value)}`)
}

/** Throws TypeError if the value is not one of the allowed values. */
export function requireOneOf(name: string, value: unknown, allowedValues: readonly unknown[]): void {
  if (!allowedValues.includes(value))
    throw new TypeError(`${name} must be one of ${allowedValues.join(', ')}, got ${quoteValue(value)}`)
}
