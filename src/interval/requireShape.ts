import { refuse } from './refuse.js'
import { requireObject } from './requireObject.js'

/** The objects and lists that are walked into: `[shape]` is a list of such, `'key?'` a key that may be absent. */
export type Shape = readonly [Shape] | { readonly [key: string]: Shape }

/**
 * Throws where a value is not what is read in it, naming the place. It is asked once the reading has failed: looking through
 * whole logs before would cost every good one.
 */
export function requireShape(value: unknown, name: string, shape: Shape): void {
  if (Array.isArray(shape)) {
    if (!Array.isArray(value)) throw refuse(name, value, 'a list')
    for (const [index, item] of value.entries()) requireShape(item, `${name}[${index}]`, shape[0])
  } else {
    requireObject(value, name)
    for (const [key, inner] of Object.entries(shape)) {
      const own = key.replace('?', '')
      const held = (value as Readonly<Record<string, unknown>>)[own]
      if (own === key || held !== undefined) requireShape(held, `${name}.${own}`, inner)
    }
  }
}
