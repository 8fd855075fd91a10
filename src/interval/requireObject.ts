import { refuse } from './refuse.js'

/** Throws where an argument or an option that nothing stands in for is left out. */
export function requireObject(value: unknown, name: string): void {
  if (typeof value !== 'object' || value === null) throw refuse(name, value, 'an object')
}
