import { quoteValue } from './quoteValue.js'

/**
 * What a function walks into: a text, a number or a function; `[shape]`, a list of such, `[]` a list of anything; an object with
 * keys, where `'*'` means every key present and `'key?'` an optional one.
 */
export type Shape = 'string' | 'number' | 'function' | readonly Shape[] | { readonly [key: string]: Shape }

/**
 * Throws TypeError, naming the place, where a value from a programmer does not have what is about to be read from it.
 * It looks no deeper than the shape says: the parser checks a document in full.
 */
export function requireShape(
  place: string,
  value: unknown,
  shape: Shape,
  help = 'parse the document first',
): void {
  const isList = Array.isArray(shape)
  const fits =
    typeof shape === 'string'
      ? typeof value === shape
      : typeof value === 'object' && value !== null && Array.isArray(value) === isList
  if (!fits) {
    const expected = typeof shape === 'string' ? `a ${shape}` : isList ? 'a list' : 'an object'
    const got = Array.isArray(value) ? 'a list' : quoteValue(value)
    throw new TypeError(`${place} must be ${expected}, got ${got}; ${help}`)
  }
  if (typeof shape === 'string') return
  const held = value as { readonly [key: string]: unknown }
  for (const [key, inner] of Object.entries(shape)) {
    const name = key.replace('?', '')
    for (const at of isList || key === '*' ? Object.keys(held) : [name])
      if (name === key || held[at] !== undefined)
        requireShape(isList ? `${place}[${at}]` : `${place}.${at}`, held[at], inner, help)
  }
}
