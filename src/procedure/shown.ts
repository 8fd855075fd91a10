/** A value of a step as a finding quotes it: a text as it stands, anything that is no text in words that cannot fail. */
export function shown(value: unknown): string {
  if (typeof value === 'string') return value
  if (Array.isArray(value)) return 'a list'
  return typeof value === 'object' && value !== null ? 'an object' : String(value)
}
