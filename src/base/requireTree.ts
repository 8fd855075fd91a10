import { MAX_DEPTH } from './documentLimits.js'

/** Throws TypeError, naming the place, for what is nested deeper than any document, or without end. */
export function requireTree(place: string, value: unknown, above: readonly object[] = []): void {
  if (typeof value !== 'object' || value === null) return
  // Detects a cycle early; otherwise the walk is exponential.
  if (above.length >= MAX_DEPTH || above.includes(value))
    throw new TypeError(`${place} must be nested at most ${MAX_DEPTH} levels deep; parse the document first`)
  for (const inner of Object.values(value)) requireTree(place, inner, [...above, value])
}
