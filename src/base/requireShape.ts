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
  const [within, expected, found] = findMisfit(value, shape) ?? []
  if (expected === undefined) return
  const got = Array.isArray(found) ? 'a list' : quoteValue(found)
  throw new TypeError(`${place}${within} must be ${expected}, got ${got}; ${help}`)
}

/** Where inside the value, what must be there, and what is. */
type Misfit = readonly [within: string, expected: string, found: unknown]

/** The place is put together on the way back, so that a value that fits costs no text. */
function findMisfit(value: unknown, shape: Shape): Misfit | undefined {
  if (typeof shape === 'string') return typeof value === shape ? undefined : ['', `a ${shape}`, value]
  const isList = Array.isArray(value)
  if (Array.isArray(shape) ? !isList : isList || typeof value !== 'object' || value === null)
    return ['', Array.isArray(shape) ? 'a list' : 'an object', value]
  const held = value as Readonly<Record<string, unknown>>
  const inside: readonly (readonly [string, Shape])[] = Array.isArray(shape)
    ? shape.map((each) => ['*', each] as const)
    : Object.entries(shape)
  for (const [key, inner] of inside) {
    const name = key.replace('?', '')
    for (const at of key === '*' ? Object.keys(held) : [name]) {
      if (name !== key && held[at] === undefined) continue
      const misfit = findMisfit(held[at], inner)
      if (misfit !== undefined) return [(isList ? `[${at}]` : `.${at}`) + misfit[0], misfit[1], misfit[2]]
    }
  }
  return undefined
}
