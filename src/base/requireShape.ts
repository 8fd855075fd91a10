import { quoteValue } from './quoteValue.js'

/**
 * What a function walks into: a text or a number; `[shape]`, a list of such, `[]` a list of anything; an object with
 * keys, where `'*'` means every key present and `'key?'` an optional one.
 */
export type Shape = 'string' | 'number' | readonly Shape[] | { readonly [key: string]: Shape }

/**
 * Throws TypeError, naming the place, where a value that a programmer hands over lacks what is about to be read in it.
 * It looks no deeper than the shape says: what a document says in full is for its parser to judge.
 */
export function requireShape(
  place: string,
  value: unknown,
  shape: Shape,
  cure = 'parse the document first',
): void {
  const misfit = findMisfit(value, shape)
  if (misfit === undefined) return
  const got = Array.isArray(misfit.value) ? 'a list' : quoteValue(misfit.value)
  throw new TypeError(`${place}${misfit.within} must be ${misfit.wanted}, got ${got}; ${cure}`)
}

interface Misfit {
  readonly within: string
  readonly wanted: string
  readonly value: unknown
}

/** The place is put together on the way back, so that a value that fits costs no text. */
function findMisfit(value: unknown, shape: Shape): Misfit | undefined {
  if (typeof shape === 'string')
    return typeof value === shape ? undefined : { within: '', wanted: `a ${shape}`, value }
  if (isList(shape)) {
    if (!isList(value)) return { within: '', wanted: 'a list', value }
    const [each] = shape
    if (each !== undefined)
      for (const [at, one] of value.entries()) {
        const misfit = findMisfit(one, each)
        if (misfit !== undefined) return { ...misfit, within: `[${at}]${misfit.within}` }
      }
    return undefined
  }
  if (!isRecord(value)) return { within: '', wanted: 'an object', value }
  for (const key in shape) {
    const inner = shape[key] ?? []
    if (key === '*') {
      for (const id of Object.keys(value)) {
        const misfit = findMisfit(value[id], inner)
        if (misfit !== undefined) return { ...misfit, within: `.${id}${misfit.within}` }
      }
      continue
    }
    const optional = key.endsWith('?')
    const name = optional ? key.slice(0, -1) : key
    if (optional && value[name] === undefined) continue
    const misfit = findMisfit(value[name], inner)
    if (misfit !== undefined) return { ...misfit, within: `.${name}${misfit.within}` }
  }
  return undefined
}

function isList<T>(value: unknown): value is readonly T[] {
  return Array.isArray(value)
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
