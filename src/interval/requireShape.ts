import { refuse } from '../base/index.js'
import { requireObject } from './requireObject.js'

/** The objects and lists that are walked into: `[shape]` is a list of such, `'key?'` a key that may be absent. */
export type Shape = readonly [Shape] | { readonly [key: string]: Shape }

/**
 * Throws where a value is not what is read in it, naming the place. It is asked once the reading has failed: looking through
 * whole logs before would cost every good one. The one of `spec/` can do more, and this room takes only types from there.
 */
export function requireShape(name: string, value: unknown, shape: Shape): void {
  if (Array.isArray(shape)) {
    if (!Array.isArray(value)) throw refuse(name, value, 'a list')
    for (const [index, item] of value.entries()) requireShape(`${name}[${index}]`, item, shape[0])
  } else {
    requireObject(name, value)
    for (const [key, inner] of Object.entries(shape)) {
      const own = key.replace('?', '')
      const held = (value as Readonly<Record<string, unknown>>)[own]
      if (own === key || held !== undefined) requireShape(`${name}.${own}`, held, inner)
    }
  }
}
