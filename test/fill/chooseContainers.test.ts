import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { MAX_COMBINATIONS, searchContainers } from '../../src/fill/searchContainers.js'
import type { Quantity, VolumeUnit } from '../../src/quantity/unit.js'
import type { OilContainer } from '../../src/spec/stock.js'
import { chooseContainers } from '../../src/v1/fill.js'
import { law } from '../support/law.js'

const container = (
  size: number,
  unit: VolumeUnit,
  count: number,
  opened?: number,
  oil = 'Skarn Gear',
): OilContainer => ({
  name: `${size} ${unit}`,
  oil: { name: oil },
  size: { value: size, unit },
  count,
  ...(opened === undefined ? {} : { opened: { value: opened, unit } }),
})
const codes = (choice: { reasons: readonly { code: string }[] }) => choice.reasons.map(({ code }) => code)
const L = (value: string | number) => ({ value, unit: 'L' }) as Quantity<'L'>

describe('the rule', () => {
  it('least left over before fewest: 1.9 L from two litres, not from a 4 L can', () => {
    const choice = chooseContainers({ can: container(4, 'L', 1), litre: container(1, 'L', 3) }, L('1.9'))
    expect(choice.use).toEqual([{ id: 'litre', full: 2 }])
    // 2 − 1.9 = 0.1 exactly; doubles give another value
    expect(choice.leftOver).toEqual({ value: 0.1, unit: 'L' })
    expect(choice).toMatchObject({ verdict: 'enough', oil: 'Skarn Gear', buy: [] })
    expect(codes(choice)).toEqual(['fill/containers-left-over'])
  })

  it('equal left over: the fewest, so one US gallon for four US quarts', () => {
    const shelf = { quart: container(1, 'qt_us', 9), gallon: container(1, 'gal_us', 1) }
    const choice = chooseContainers(shelf, { value: '4', unit: 'qt_us' })
    expect(choice.use).toEqual([{ id: 'gallon', full: 1 }])
    expect(choice.leftOver.value).toBe(0)
    expect(codes(choice)).toEqual(['fill/containers-exact'])
  })

  it('opened first, the smallest rest first, then full ones', () => {
    const shelf = { old: container(1, 'L', 2, 0.6), older: container(4, 'L', 0, 0.3) }
    const choice = chooseContainers(shelf, L(1.5))
    // 0.3 + 0.6 = 0.9; 0.6 more from one full litre leaves 0.4
    expect(choice.use).toEqual([
      { id: 'old', opened: L(0.6), full: 1 },
      { id: 'older', opened: L(0.3), full: 0 },
    ])
    expect(choice.leftOver).toEqual(L(0.4))
    expect(codes(choice)).toEqual(['fill/opened-first', 'fill/opened-first', 'fill/containers-left-over'])
  })

  it('one opened container can be enough; the rest is left over', () => {
    const choice = chooseContainers({ drum: container(20, 'L', 1, 12) }, L(1.5))
    expect(choice.use).toEqual([{ id: 'drum', opened: L(1.5), full: 0 }])
    expect(choice.leftOver).toEqual(L(10.5))
    const spareShelf = { drum: container(20, 'L', 0, 0.5), can: container(5, 'L', 1, 1) }
    expect(chooseContainers(spareShelf, L(0.5)).use).toEqual([{ id: 'drum', opened: L(0.5), full: 0 }])
  })

  it('short: everything on the shelf is used, and what to buy follows the same rule', () => {
    const shelf = { litre: container(1, 'L', 1, 0.25), quart: container(1, 'qt_us', 0) }
    const choice = chooseContainers(shelf, L(2.1))
    // 2.1 − 1.25 = 0.85 is missing; a US quart (0.946352946) leaves a smaller remainder than a litre
    expect(choice).toMatchObject({ verdict: 'short', short: L(0.85), buy: [{ id: 'quart', count: 1 }] })
    expect(choice.use).toEqual([{ id: 'litre', opened: L(0.25), full: 1 }])
    expect(choice.leftOver).toEqual(L(0.096352946))
    expect(codes(choice)).toContain('fill/containers-short')
  })

  it('an empty shelf: everything is missing, and no container to buy is known', () => {
    expect(chooseContainers({}, { value: '2', unit: 'qt_us' })).toEqual({
      verdict: 'short',
      needed: { value: 2, unit: 'qt_us' },
      use: [],
      leftOver: { value: 0, unit: 'qt_us' },
      short: { value: 2, unit: 'qt_us' },
      buy: [],
      reasons: [{ code: 'fill/no-containers', params: { short: { value: 2, unit: 'qt_us' } } }],
    })
  })

  it('never mixes two oils: the one that is enough, else the one that lacks least', () => {
    const shelf = { a: container(1, 'L', 1, undefined, 'Oil A'), b: container(1, 'L', 2, undefined, 'Oil B') }
    const choice = chooseContainers(shelf, L(1.5))
    expect(choice).toMatchObject({ verdict: 'enough', oil: 'Oil B', use: [{ id: 'b', full: 2 }] })
    expect(codes(choice)).toContain('fill/other-oil-not-mixed')
    expect(chooseContainers(shelf, L(3))).toMatchObject({ verdict: 'short', oil: 'Oil B', short: L(1) })
  })

  it('between oils that are enough: more opened used, then less left over, then fewer, then first named', () => {
    const openedShelf = { a: container(1, 'L', 5, undefined, 'Oil A'), b: container(1, 'L', 5, 0.2, 'Oil B') }
    expect(chooseContainers(openedShelf, L(1)).oil).toBe('Oil B')
    const lessOil = {
      a: container(2, 'L', 5, undefined, 'Oil A'),
      b: container(1, 'L', 5, undefined, 'Oil B'),
    }
    expect(chooseContainers(lessOil, L(1)).oil).toBe('Oil B')
    const fewerPieces = {
      a: container(1, 'L', 5, undefined, 'Oil A'),
      b: container(2, 'L', 5, undefined, 'Oil B'),
    }
    expect(chooseContainers(fewerPieces, L(2)).oil).toBe('Oil B')
    const first = { a: container(1, 'L', 5, undefined, 'Oil A'), b: container(1, 'L', 5, undefined, 'Oil B') }
    expect(chooseContainers(first, L(2)).oil).toBe('Oil A')
  })
})

describe('zeros that a document may hold', () => {
  it('a container of 0 L holds nothing and is not bought; a refill of 0 L needs nothing', () => {
    const shelf = { none: container(0, 'L', 5), litre: container(1, 'L', 1) }
    expect(chooseContainers(shelf, L(2))).toMatchObject({
      verdict: 'short',
      use: [{ id: 'litre', full: 1 }],
      buy: [{ id: 'litre', count: 1 }],
    })
    expect(chooseContainers({ none: container(0, 'L', 5) }, L(2))).toMatchObject({
      verdict: 'short',
      use: [],
      buy: [],
    })
    expect(chooseContainers(shelf, L('0'))).toMatchObject({
      verdict: 'enough',
      use: [],
      leftOver: { value: 0 },
    })
  })
})

describe('exact sums', () => {
  it('ten times 0.1 L is 1 L, and 11 US quarts are 11 US quarts, though 0.946352946 L is not short', () => {
    expect(chooseContainers({ tenth: container(0.1, 'L', 10) }, L('1')).leftOver.value).toBe(0)
    const quarts = chooseContainers({ quart: container(1, 'qt_us', 11) }, { value: 10.409882406, unit: 'L' })
    expect(quarts).toMatchObject({ verdict: 'enough', leftOver: { value: 0 } })
    const ounces = chooseContainers({ small: container(1, 'fl_oz_us', 32) }, { value: '1', unit: 'qt_us' })
    expect(ounces).toMatchObject({ verdict: 'enough', leftOver: { value: 0 }, use: [{ full: 32 }] })
  })

  it('one microlitre decides', () => {
    const shelf = { quart: container(1, 'qt_us', 1) }
    expect(chooseContainers(shelf, { value: '0.946352', unit: 'L' }).verdict).toBe('enough')
    expect(chooseContainers(shelf, { value: '0.946353', unit: 'L' }).verdict).toBe('short')
  })

  it('a number with an exponent is read as written', () => {
    expect(chooseContainers({ drop: container(1e-7, 'L', 3) }, { value: 2e-7, unit: 'L' })).toMatchObject({
      use: [{ id: 'drop', full: 2 }],
      leftOver: { value: 0 },
    })
  })
})

describe('laws', () => {
  const kinds = fc.array(
    fc.record({ size: fc.integer({ min: 1, max: 30 }), count: fc.integer({ min: 0, max: 4 }) }),
    { minLength: 1, maxLength: 4 },
  )

  it('equals brute force over every combination (law)', () => {
    law(200, kinds, fc.integer({ min: 1, max: 120 }), (shelf, need) => {
      let best: [number, number] | undefined
      const visit = (at: number, sum: number, number: number): void => {
        const kind = shelf[at]
        if (kind === undefined) {
          const isBetter =
            best === undefined || sum - need < best[0] || (sum - need === best[0] && number < best[1])
          if (sum >= need && isBetter) best = [sum - need, number]
          return
        }
        for (let count = 0; count <= kind.count; count += 1)
          visit(at + 1, sum + count * kind.size, number + count)
      }
      visit(0, 0, 0)
      const found = searchContainers(
        BigInt(need),
        shelf.map(({ size, count }) => ({ size: BigInt(size), count })),
      )
      const excessAndCount = found && [
        Number(found.total) - need,
        found.counts.reduce((sum, count) => sum + count, 0),
      ]
      expect(excessAndCount).toEqual(best)
      if (found) {
        const total = found.counts.reduce((sum, count, place) => sum + count * (shelf[place]?.size ?? 0), 0)
        expect(total).toBe(Number(found.total))
      }
    })
  })

  it('used oil and remaining oil add up to the opened containers, within the stock (law)', () => {
    const shelf = fc.dictionary(
      fc.constantFrom('a', 'b', 'c', 'd'),
      fc.record({
        size: fc.integer({ min: 1, max: 50 }),
        count: fc.integer({ min: 0, max: 5 }),
        opened: fc.integer({ min: 0, max: 40 }),
      }),
    )
    law(50, shelf, fc.integer({ min: 1, max: 400 }), (pieces, need) => {
      const stock = Object.fromEntries(
        Object.entries(pieces).map(([id, { size, count, opened }]) => [
          id,
          container(size, 'mL', count, opened),
        ]),
      )
      const choice = chooseContainers(stock, { value: need, unit: 'mL' })
      let takenMl = 0
      for (const { id, opened, full } of choice.use) {
        expect(full).toBeLessThanOrEqual(pieces[id]?.count ?? 0)
        expect(opened?.value ?? 0).toBeLessThanOrEqual(pieces[id]?.opened ?? 0)
        takenMl += (opened?.value ?? 0) + full * (pieces[id]?.size ?? 0)
      }
      const boughtMl = choice.buy.reduce((sum, { id, count }) => sum + count * (pieces[id]?.size ?? 0), 0)
      if (choice.verdict === 'short') expect(takenMl).toBe(need - (choice.short?.value ?? 0))
      const openedLeft = choice.use.every(({ full }) => full === 0) && choice.verdict === 'enough'
      if (!openedLeft && Object.keys(pieces).length > 0)
        expect(takenMl + boughtMl - need).toBe(choice.leftOver.value)
      expect(choice.verdict === 'short').toBe(choice.short !== undefined)
    })
  })

  it('is the same for a need in any unit (law)', () => {
    const shelf = { quart: container(1, 'qt_us', 9), litre: container(1, 'L', 9) }
    law(50, fc.integer({ min: 1, max: 9000 }), (need) => {
      const [inMl, inL] = [
        chooseContainers(shelf, { value: String(need), unit: 'mL' }),
        chooseContainers(shelf, { value: need / 1000, unit: 'L' }),
      ]
      expect(inL.use).toEqual(inMl.use)
    })
  })

  it('too many combinations: a good choice, reported as possibly not the best', () => {
    const kinds = Array.from({ length: 12 }, (_, place) => ({
      size: BigInt(1_000_003 + place * 7919),
      count: 60,
    }))
    const found = searchContainers(123_456_789n, kinds)
    expect(found?.isComplete).toBe(false)
    expect(found?.tried).toBeGreaterThanOrEqual(MAX_COMBINATIONS)
    expect((found?.total ?? 0n) >= 123_456_789n).toBe(true)
    const manyKinds = Object.fromEntries(
      kinds.map(({ size }, place) => [`k${place}`, container(Number(size), 'mL', 60)]),
    )
    const choice = chooseContainers(manyKinds, { value: 123_456_789, unit: 'mL' })
    expect(codes(choice)).toContain('fill/containers-not-searched-fully')
  })
})

describe('misuse', () => {
  it.each([
    [
      () => chooseContainers({ a: container(Number.NaN, 'L', 1) }, L(1)),
      /containers.a.size.value must be a number, .*got NaN/,
    ],
    [
      () => chooseContainers({ a: container(1, 'L', 1.5) }, L(1)),
      /containers.a.count must be a whole number/,
    ],
    [
      () => chooseContainers({ a: container(1, 'L', 1, -1) }, L(1)),
      /containers.a.opened.value must be a number, 0 or more/,
    ],
    [() => chooseContainers({}, L('1,5')), /volume.value must be a number or a printed figure/],
    [() => chooseContainers({}, L(-1)), /volume.value must be a number, 0 or more/],
    // @ts-expect-error
    [() => chooseContainers(null, L(1)), /containers must be an object/],
    // @ts-expect-error
    [() => chooseContainers({ a: null }, L(1)), /containers.a must be an object/],
    // @ts-expect-error
    [() => chooseContainers({ a: { ...container(1, 'L', 1), oil: undefined } }, L(1)), /containers.a.oil/],
  ])('%#', (call, message) => {
    expect(call).toThrow(message)
  })

  it('an id called __proto__ is an id', () => {
    const stock = JSON.parse(
      '{"__proto__":{"name":"x","oil":{"name":"Oil"},"size":{"value":1,"unit":"L"},"count":2}}',
    )
    expect(chooseContainers(stock, L(2)).use).toEqual([{ id: '__proto__', full: 2 }])
  })
})

describe('amounts that no shelf has', () => {
  it('more than any document can hold is refused', () => {
    const oneBottle = { a: container(1, 'mL', 1) }
    expect(() => chooseContainers(oneBottle, { value: 1e308, unit: 'mL' })).toThrow(
      /volume\.value must be a number, 0 or more, 1000000000000000 or less/,
    )
    expect(() => chooseContainers({ a: container(1e16, 'L', 1) }, { value: 1, unit: 'L' })).toThrow(
      /containers\.a\.size\.value must be/,
    )
    expect(chooseContainers(oneBottle, { value: 1e9, unit: 'L' }).verdict).toBe('short')
  })

  it('containers too small to count are not bought, and no remainder is given', () => {
    for (const size of [1e-300, 5e-324, 1e-9, 0]) {
      const choice = chooseContainers({ drop: container(size, 'mL', 3) }, { value: '350', unit: 'mL' })
      expect([choice.verdict, choice.buy, choice.short?.value]).toEqual([
        'short',
        [],
        size === 1e-9 ? 349.999999997 : 350,
      ])
      expect(choice.reasons.map(({ code }) => code)).toEqual(['fill/containers-short'])
    }
  })

  it('ten thousand of many near sizes are searched up to a limit, which is reported', () => {
    const manyKinds = Object.fromEntries(
      Array.from({ length: 40 }, (_none, place) => [
        `size-${place}`,
        container(1 + place / 1e6, 'mL', 10_000),
      ]),
    )
    const choice = chooseContainers(manyKinds, { value: '123456.789123', unit: 'mL' })
    expect([choice.verdict, choice.reasons.map(({ code }) => code)]).toEqual([
      'enough',
      ['fill/containers-not-searched-fully', 'fill/containers-left-over'],
    ])
  })
})
