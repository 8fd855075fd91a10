import { shown } from './quoteValue.js'

/** Throws TypeError where an argument that must be an object is none. Internal. */
export function requireObject(name: string, value: unknown): void {
  if (typeof value !== 'object' || value === null) {
    throw new TypeError(`${name} must be an object, got ${shown(value)}`)
  }
}
