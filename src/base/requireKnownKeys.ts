import { quoteValue } from './quoteValue.js'
import { requireObject } from './requireObject.js'
import { suggestName } from './suggestName.js'

/**
 * Throws TypeError for anything that is not an object, and for a key that a function does not know, with the near one: a misspelt
 * option would otherwise be passed over in silence.
 */
export function requireKnownKeys(name: string, value: object, known: readonly string[]): void {
  requireObject(name, value)
  // Hot path: no list of the keys.
  for (const key in value) {
    if (known.includes(key) || !Object.hasOwn(value, key)) continue
    const near = suggestName(key, known)
    const help = near === undefined ? `its keys are ${known.join(', ')}` : `did you mean ${near}?`
    throw new TypeError(`${name} must not have the key ${quoteValue(key)}; ${help}`)
  }
}
