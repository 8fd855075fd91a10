import { quoteValue } from './refuse.js'

/**
 * The required shape of an argument. `[shape]` is a list of items of that shape, `[]` any list. In an object,
 * `'*'` means every key and `'key?'` an optional key.
 */
export type Shape = 'string' | 'number' | 'function' | readonly Shape[] | { readonly [key: string]: Shape }

/**
 * Throws TypeError, naming the field, if an argument does not have the shape. It checks no deeper than the
 * shape: the parser checks a document in full.
 */
export function requireShape(
  name: string,
  value: unknown,
  shape: Shape,
  hint = 'parse the document first',
): void {
  const isList = Array.isArray(shape)
  const type = typeof shape === 'string' ? shape : 'object'
  if (typeof value !== type || value === null || Array.isArray(value) !== isList) {
    const expected = isList ? 'a list' : type === 'object' ? 'an object' : `a ${type}`
    throw new TypeError(`${name} must be ${expected}, got ${quoteValue(value)}; ${hint}`)
  }
  if (typeof shape === 'string') return
  const fields = value as { readonly [key: string]: unknown }
  for (const [key, innerShape] of Object.entries(shape)) {
    const fieldName = key.replace('?', '')
    for (const at of isList || key === '*' ? Object.keys(fields) : [fieldName])
      if (fieldName === key || fields[at] !== undefined)
        requireShape(isList ? `${name}[${at}]` : `${name}.${at}`, fields[at], innerShape, hint)
  }
}
