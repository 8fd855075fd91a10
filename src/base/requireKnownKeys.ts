import { quoteValue, requireObject } from './refuse.js'

/**
 * Throws TypeError if a value is not an object or has an unknown key, and suggests a similar key. Without
 * this check a misspelt option would be ignored.
 */
export function requireKnownKeys(name: string, value: object, knownKeys: readonly string[]): void {
  requireObject(name, value)
  // Hot path: no list of the keys.
  for (const key in value) {
    if (knownKeys.includes(key) || !Object.hasOwn(value, key)) continue
    const similarKey = knownKeys.find((name) => differByOneCharacter(name, key))
    const hint = similarKey ? `did you mean ${similarKey}?` : `its keys are ${knownKeys.join(', ')}`
    throw new TypeError(`${name} must not have the key ${quoteValue(key)}; ${hint}`)
  }
}

/**
 * Whether two names differ in one place, by at most two letters; `suggestName` would make the bundles of the
 * calculations too large.
 */
function differByOneCharacter(first: string, second: string): boolean {
  let sameLetters = 0
  while (first[sameLetters] === second[sameLetters]) sameLetters++
  for (let end = 1; first.at(-end) === second.at(-end); end++) sameLetters++
  const longest = Math.max(first.length, second.length)
  return sameLetters > 1 && longest - Math.min(sameLetters, first.length, second.length) < 3
}
