/**
 * Finds the name that a misspelt one most likely means; undefined if none is similar, or two are equally
 * similar. Similar names differ by at most two typing mistakes, and at most one for every three letters.
 */
export function suggestName(writtenName: string, names: readonly string[]): string | undefined {
  if (writtenName.length > 66) return undefined
  // Ignores case, spaces, hyphens and underscores, since people type names from memory.
  const normalize = (name: string) => name.toLowerCase().replace(/[\s_-]+/g, ' ')
  let bestName: string | undefined
  let fewestEdits = Infinity
  for (const name of names) {
    const maxEdits = Math.min(2, Math.floor(Math.max(name.length, writtenName.length) / 3))
    if (Math.abs(name.length - writtenName.length) > maxEdits) continue
    const edits = countEdits(normalize(writtenName), normalize(name), maxEdits)
    if (edits > maxEdits || edits > fewestEdits) continue
    bestName = edits < fewestEdits ? name : undefined
    fewestEdits = edits
  }
  return bestName
}

/**
 * The number of insertions, deletions, replacements and swaps of neighbouring letters between two words.
 * Infinity above `limit`, where the search stops. Source: F. J. Damerau, Communications of the ACM 7(3),
 * 1964, in the form that edits no letter twice; from memory.
 */
export function countEdits(first: string, second: string, limit = Infinity): number {
  if (first === second) return 0
  if (limit < 1) return Infinity
  if (first === '' || second === '') return first.length + second.length
  const [firstTail, secondTail] = [first.slice(1), second.slice(1)]
  if (first[0] === second[0]) return countEdits(firstTail, secondTail, limit)
  const isSwapped = first[0] === second[1] && first[1] === second[0]
  const edits = [
    countEdits(firstTail, second, limit - 1),
    countEdits(first, secondTail, limit - 1),
    countEdits(firstTail, secondTail, limit - 1),
  ]
  if (isSwapped) edits.push(countEdits(firstTail.slice(1), secondTail.slice(1), limit - 1))
  return 1 + Math.min(...edits)
}
