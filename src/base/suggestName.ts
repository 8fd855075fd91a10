/**
 * The one name of a list that a mistyped name most likely means; undefined where none is near or two are equally near.
 *
 * Near means at most two slips of the pen, and at most one for every three letters.
 */
export function suggestName(written: string, names: readonly string[]): string | undefined {
  if (written.length > 66) return undefined
  let best: string | undefined
  let fewest = Number.POSITIVE_INFINITY
  let tied = false
  for (const name of names) {
    const most = Math.min(2, Math.floor(Math.max(name.length, written.length) / 3))
    if (Math.abs(name.length - written.length) > most) continue
    const edits = countEdits(foldName(written), foldName(name))
    if (edits > most || edits > fewest) continue
    tied = edits === fewest
    best = name
    fewest = edits
  }
  return tied ? undefined : best
}

/** Case, spaces, hyphens and low lines are the same to someone who types from memory. */
function foldName(name: string): string {
  return name.toLowerCase().replace(/[\s_-]+/g, ' ')
}

/**
 * Insertions, deletions, replacements and swaps of neighbours that turn one word into the other.
 * Source: F. J. Damerau, Communications of the ACM 7(3), 1964, as the usual table with each letter used once; from memory.
 */
export function countEdits(first: string, second: string): number {
  let beforeLast: number[] = []
  let last = Array.from({ length: second.length + 1 }, (_, place) => place)
  for (let row = 1; row <= first.length; row++) {
    const current = [row]
    for (let column = 1; column <= second.length; column++) {
      const same = first[row - 1] === second[column - 1]
      const swapped =
        row > 1 &&
        column > 1 &&
        first[row - 1] === second[column - 2] &&
        first[row - 2] === second[column - 1]
      current[column] = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
        swapped ? (beforeLast[column - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY,
      )
    }
    beforeLast = last
    last = current
  }
  return last[second.length] ?? 0
}
