/** Quotes a value in an error message: short, and safe for any value. */
export function quoteValue(value: unknown): string {
  if (typeof value === 'string') return value.length > 40 ? `'${value.slice(0, 40)}…'` : `'${value}'`
  if (value === null || typeof value === 'number' || typeof value === 'boolean') return String(value)
  return typeof value
}
