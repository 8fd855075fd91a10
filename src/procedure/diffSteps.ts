import { type Fix, isSameJson, joinPointer } from '../base/index.js'
import type { Step } from '../spec/index.js'

/** The fewest operations that turn the first list into the second; steps match by id. */
export function diffSteps(first: readonly Step[], second: readonly Step[]): readonly Fix[] {
  const kept = countKeptSteps(first, second)
  const changes: Fix[] = []
  let [from, to] = [0, 0]
  while (from < first.length || to < second.length) {
    const [before, after] = [first[from], second[to]]
    const path = joinPointer(['steps', to])
    if (before !== undefined && before.id === after?.id) {
      if (!isSameJson(before, after)) changes.push({ op: 'replace', path, value: after })
      from += 1
      to += 1
    } else if (after === undefined || getKeptCount(kept, from + 1, to) > getKeptCount(kept, from, to + 1)) {
      changes.push({ op: 'remove', path })
      from += 1
    } else {
      changes.push({ op: 'add', path, value: after })
      to += 1
    }
  }
  return changes
}

/** For each pair of indexes, the number of steps that can stay from there on. */
function countKeptSteps(first: readonly Step[], second: readonly Step[]): readonly Uint16Array[] {
  const rows = Array.from({ length: first.length + 1 }, () => new Uint16Array(second.length + 1))
  for (let from = first.length - 1; from >= 0; from -= 1)
    for (let to = second.length - 1; to >= 0; to -= 1) {
      const row = rows[from]
      if (row === undefined) continue
      row[to] =
        first[from]?.id === second[to]?.id
          ? getKeptCount(rows, from + 1, to + 1) + 1
          : Math.max(getKeptCount(rows, from + 1, to), getKeptCount(rows, from, to + 1))
    }
  return rows
}

function getKeptCount(rows: readonly Uint16Array[], from: number, to: number): number {
  return rows[from]?.[to] ?? 0
}
