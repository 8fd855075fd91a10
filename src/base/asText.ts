/** What a finding quotes of foreign data: a text as it stands, anything else in words that cannot fail. Internal. */
export function asText(value: unknown): string {
  if (typeof value === 'string') return value
  if (Array.isArray(value)) return 'a list'
  return typeof value === 'object' && value !== null ? 'an object' : String(value)
}
