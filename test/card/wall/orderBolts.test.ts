import { expect, it } from 'vitest'
import { orderCrosswise, orderFromMiddle } from '../../../src/card/wall/orderBolts.js'

/** The places in the order of tightening. */
const sequenceOf = (numbers: readonly number[]) =>
  numbers
    .map((number, place) => ({ number, place }))
    .toSorted((first, second) => first.number - second.number)
    .map(({ place }) => place)

it('has the usual crosswise orders (common practice, no source)', () => {
  // Clockwise from the top: for four bolts 1 3 2 4, for eight 1 5 3 7 2 6 4 8.
  expect(orderCrosswise(4)).toEqual([1, 3, 2, 4])
  expect(orderCrosswise(5)).toEqual([1, 4, 2, 5, 3])
  expect(orderCrosswise(8)).toEqual([1, 5, 3, 7, 2, 6, 4, 8])
  // Two rows of three: the middle column first, then both ends.
  expect(orderFromMiddle(6)).toEqual([3, 1, 5, 4, 2, 6])
})

it('tightens every bolt once; crosswise, each pair of an even circle is opposite', () => {
  for (let count = 3; count <= 20; count++) {
    const sequence = sequenceOf(orderCrosswise(count))
    expect(sequence.toSorted((first, second) => first - second)).toEqual(
      Array.from({ length: count }, (_, at) => at),
    )
    for (const [at, place] of sequence.entries()) {
      const next = sequence[at + 1]
      if (next === undefined || (count % 2 === 0 && at % 2 === 1)) continue
      const apart = Math.min(Math.abs(next - place), count - Math.abs(next - place))
      expect(apart).toBe(Math.floor(count / 2))
    }
  }
})

it('goes from the middle outwards: no bolt is nearer to the middle than those before it', () => {
  for (let count = 4; count <= 20; count += 2) {
    const columns = count / 2
    const distances = sequenceOf(orderFromMiddle(count)).map((place) =>
      Math.abs((place % columns) - (columns - 1) / 2),
    )
    expect(distances).toHaveLength(count)
    expect(distances).toEqual(distances.toSorted((first, second) => first - second))
  }
})
