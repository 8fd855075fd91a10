import { quoteValue } from './quoteValue.js'
import { requireObject } from './requireObject.js'

/**
 * Throws TypeError if a value is not an object or has an unknown key, and suggests a similar key. Otherwise a misspelt option
 * would be ignored.
 */
export function requireKnownKeys(name: string, value: object, known: readonly string[]): void {
  requireObject(name, value)
  // Hot path: no list of the keys.
  for (const key in value) {
    if (known.includes(key) || !Object.hasOwn(value, key)) continue
    const similarKey = known.find((name) => differInOnePlace(name, key))
    const help = similarKey === undefined ? `its keys are ${known.join(', ')}` : `did you mean ${similarKey}?`
    throw new TypeError(`${name} must not have the key ${quoteValue(key)}; ${help}`)
  }
}

/** Whether two names differ in one place, by at most two letters; `suggestName` would make the calculations' bundles too large. */
function differInOnePlace(name: string, written: string): boolean {
  let sameLetters = 0
  while (name[sameLetters] === written[sameLetters]) sameLetters++
  for (let end = 1; name.at(-end) === written.at(-end); end++) sameLetters++
  return (
    Math.max(name.length, written.length) - sameLetters < 3 &&
    sameLetters > 1 &&
    Math.abs(name.length - written.length) < 3
  )
}
