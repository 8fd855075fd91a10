/**
 * The number of each bolt of a circle in a crosswise order, clockwise from the top: opposite bolts follow each other, and
 * each pair is as far as possible from those before it. With an odd number, each next bolt is almost opposite.
 *
 * Common practice, no source.
 */
export function orderCrosswise(count: number): readonly number[] {
  const sequence: number[] = []
  if (count % 2 === 1)
    for (let at = 0; sequence.length < count; at = (at + (count - 1) / 2) % count) sequence.push(at)
  else
    while (sequence.length < count) {
      const next = findFarthest(sequence, count / 2)
      sequence.push(next, next + count / 2)
    }
  return numberPlaces(sequence)
}

/**
 * The number of each bolt of two rows, from left to right, upper row first: from the middle to both ends, with the
 * bolts across from each other one after the other.
 *
 * Common practice, no source.
 */
export function orderFromMiddle(count: number): readonly number[] {
  const columns = count / 2
  const middle = (columns - 1) / 2
  const byDistance = Array.from({ length: columns }, (_column, at) => at).toSorted(
    (one, other) => Math.abs(one - middle) - Math.abs(other - middle),
  )
  return numberPlaces(byDistance.flatMap((column) => [column, column + columns]))
}

/** The first place of the half circle that is farthest from all places before; the other half mirrors it. */
function findFarthest(taken: readonly number[], half: number): number {
  const distance = (place: number) =>
    Math.min(
      ...taken.map((one) => Math.min(Math.abs(one - place) % half, half - (Math.abs(one - place) % half))),
    )
  const free = Array.from({ length: half }, (_place, at) => at).filter((at) => !taken.includes(at))
  return free.reduce((best, at) => (distance(at) > distance(best) ? at : best), free[0] ?? 0)
}

/** From the places in order, the number of each place. */
function numberPlaces(sequence: readonly number[]): readonly number[] {
  const numbers = sequence.map(() => 0)
  for (const [at, place] of sequence.entries()) numbers[place] = at + 1
  return numbers
}
