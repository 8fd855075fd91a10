import { quoteValue } from './quoteValue.js'
import { requireObject } from './requireObject.js'

/**
 * Throws TypeError for anything that is not an object, and for a key that a function does not know, with the near one: a misspelt
 * option would otherwise be ignored.
 */
export function requireKnownKeys(name: string, value: object, known: readonly string[]): void {
  requireObject(name, value)
  // Hot path: no list of the keys.
  for (const key in value) {
    if (known.includes(key) || !Object.hasOwn(value, key)) continue
    const near = known.find((one) => differInOnePlace(one, key))
    const help = near === undefined ? `its keys are ${known.join(', ')}` : `did you mean ${near}?`
    throw new TypeError(`${name} must not have the key ${quoteValue(key)}; ${help}`)
  }
}

/** Whether two names differ in one place, by at most two letters; `suggestName` would make the calculations' bundles too large. */
function differInOnePlace(name: string, written: string): boolean {
  let alike = 0
  while (name[alike] === written[alike]) alike++
  for (let end = 1; name.at(-end) === written.at(-end); end++) alike++
  return (
    Math.max(name.length, written.length) - alike < 3 &&
    alike > 1 &&
    Math.abs(name.length - written.length) < 3
  )
}
