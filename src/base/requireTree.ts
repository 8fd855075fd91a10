import { MAX_DEPTH } from './documentLimits.js'

/** Throws TypeError if a value contains itself or is nested deeper than any document. */
export function requireTree(name: string, value: unknown, parents: readonly object[] = []): void {
  if (typeof value !== 'object' || value === null) return
  // Detects a cycle early; otherwise the walk is exponential.
  if (parents.length >= MAX_DEPTH || parents.includes(value))
    throw new TypeError(`${name} must be nested at most ${MAX_DEPTH} levels deep; parse the document first`)
  for (const child of Object.values(value)) requireTree(name, child, [...parents, value])
}
