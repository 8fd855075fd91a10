import { refuse } from '../base/index.js'

/** Throws where an argument or an option that nothing stands in for is left out. */
export function requireObject(name: string, value: unknown): void {
  if (typeof value !== 'object' || value === null) throw refuse(name, value, 'an object')
}
