/**
 * The one name of a list that a mistyped name most likely means; undefined where none is near or two are equally near.
 *
 * Near means at most two typing mistakes, and at most one for every three letters.
 */
export function suggestName(written: string, names: readonly string[]): string | undefined {
  if (written.length > 66) return undefined
  // Case, spaces, hyphens and low lines are the same to someone who types from memory.
  const fold = (name: string) => name.toLowerCase().replace(/[\s_-]+/g, ' ')
  let best: string | undefined
  let fewest = Infinity
  for (const name of names) {
    const limit = Math.min(2, Math.floor(Math.max(name.length, written.length) / 3))
    if (Math.abs(name.length - written.length) > limit) continue
    const edits = countEdits(fold(written), fold(name), limit)
    if (edits > limit || edits > fewest) continue
    best = edits < fewest ? name : undefined
    fewest = edits
  }
  return best
}

/**
 * Insertions, deletions, replacements and swaps of neighbours that turn one word into the other; Infinity beyond
 * `most`, which bounds the search.
 * Source: F. J. Damerau, Communications of the ACM 7(3), 1964, with each letter used once; from memory.
 */
export function countEdits(first: string, second: string, limit = Infinity): number {
  if (first === second) return 0
  if (limit < 1) return Infinity
  if (first === '' || second === '') return first.length + second.length
  const [a, b] = [first.slice(1), second.slice(1)]
  if (first[0] === second[0]) return countEdits(a, b, limit)
  const swapped = first[0] === second[1] && first[1] === second[0]
  const after = [
    countEdits(a, second, limit - 1),
    countEdits(first, b, limit - 1),
    countEdits(a, b, limit - 1),
  ]
  if (swapped) after.push(countEdits(a.slice(1), b.slice(1), limit - 1))
  return 1 + Math.min(...after)
}
