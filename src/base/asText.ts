/** Foreign data as a finding quotes it: a text as it is, anything else in words; never throws. */
export function asText(value: unknown): string {
  if (typeof value === 'string') return value
  if (Array.isArray(value)) return 'a list'
  return typeof value === 'object' && value !== null ? 'an object' : String(value)
}
