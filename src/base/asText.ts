/** Quotes foreign data for a finding: text unchanged, anything else in words. Never throws. */
export function asText(value: unknown): string {
  if (typeof value === 'string') return value
  if (Array.isArray(value)) return 'a list'
  return typeof value === 'object' && value !== null ? 'an object' : String(value)
}
