import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { convertExactly } from '../../src/quantity/convertExactly.js'
import { groupKits, type Kit, kitContents, orderList, pickList } from '../../src/service/index.js'
import type { Seal } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { planExample } from '../support/planExample.js'

const OIL = 'SAE 80W-90, API GL-5'
const SEAL: Seal = { kind: 'crush washer', replace: 'every opening' } as Seal
const bottle = (value: number, unit: 'L' | 'mL' | 'qt_us' = 'mL', oil = 'invented 80W-90') => ({
  name: `bottle of ${value} ${unit}`,
  oil,
  size: { value, unit },
})

function makeKit(id: string, volume: number, sold: NonNullable<Kit['oil'][number]['sold']> = []): Kit {
  const oil = [{ oil: OIL, volume: { value: volume, unit: 'mL' as const }, ...(sold.length > 0 && { sold }) }]
  return { machine: { id, name: id }, oil, seals: [], tools: [], buy: { oil, seals: [] } }
}

describe('orderList', () => {
  it('orders containers for the sum of all machines, not for each', () => {
    const kits = Array.from({ length: 10 }, (_nothing, index) => makeKit(`m-${index}`, 450, [bottle(1000)]))
    expect(orderList(kits).oil).toEqual([
      {
        oil: OIL,
        volume: { value: 4500, unit: 'mL' },
        sold: [bottle(1000)],
        containers: [{ ...bottle(1000), count: 5 }],
        leftOver: { value: 500, unit: 'mL' },
      },
    ])
  })

  it('takes the sizes that leave the least, of one oil only', () => {
    const sold = [bottle(946, 'mL'), bottle(4, 'L'), bottle(500, 'mL', 'another 80W-90')]
    const [oil] = orderList([makeKit('m', 4946, sold)]).oil
    expect(oil?.containers?.map(({ name, count }) => [count, name])).toEqual([
      [1, 'bottle of 946 mL'],
      [1, 'bottle of 4 L'],
    ])
    expect(oil?.leftOver).toEqual({ value: 0, unit: 'mL' })
  })

  it('without a known container gives the volume alone', () => {
    expect(orderList([makeKit('m', 154)]).oil).toEqual([{ oil: OIL, volume: { value: 154, unit: 'mL' } }])
  })

  it('buys enough, and what is left over is the difference', () => {
    const size = fc.constantFrom(
      bottle(250),
      bottle(1, 'qt_us'),
      bottle(1, 'L'),
      bottle(20, 'L'),
      bottle(208, 'L'),
    )
    const sizes = fc.uniqueArray(size, { minLength: 1, maxLength: 3, selector: ({ name }) => name })
    law(
      40,
      fc.array(fc.integer({ min: 1, max: 9000 }), { minLength: 1, maxLength: 4 }),
      sizes,
      (volumes, sold) => {
        const needed = volumes.reduce((sum, volume) => sum + volume, 0)
        const [oil] = orderList(volumes.map((volume, index) => makeKit(`m-${index}`, volume, sold))).oil
        const total = (oil?.containers ?? []).reduce(
          (sum, { size: { value, unit }, count }) => sum + count * convertExactly(value, unit, 'mL'),
          0,
        )
        expect(total).toBeGreaterThanOrEqual(needed - 1e-6)
        expect(oil?.leftOver?.value).toBeCloseTo(total - needed, 4)
        // One container fewer of any size would not be enough.
        const smallest = Math.min(
          ...(oil?.containers ?? []).map(({ size }) => convertExactly(size.value, size.unit, 'mL')),
        )
        expect(oil?.leftOver?.value).toBeLessThan(smallest + 1e-6)
      },
    )
  })
})

describe('seals that are inspected', () => {
  const plan = planExample('tind-4', { stock: (stock) => ({ ...stock, seals: {} }) })
  const kit = kitContents(plan)

  it('are spares in the kit, and not ordered', () => {
    const spares = plan.seals.filter(({ replace }) => replace !== 'every opening')
    expect(spares.map(({ count, buy }) => ({ count, buy }))).toEqual([{ count: 1, buy: 0 }])
    expect(kit.spares?.map(({ name, count }) => [name, count])).toEqual([
      ['HB-1801 o-ring 15.6 × 1.78 mm', 1],
    ])
    expect(JSON.stringify([kit.seals, kit.buy, orderList([kit])])).not.toContain('HB-1801')
    expect(orderList([kit]).seals).toHaveLength(3)
  })

  it('are picked from the shelf with the others', () => {
    expect(pickList([kit, kit]).seals.find(({ name }) => name.startsWith('HB-1801'))?.count).toBe(2)
  })

  it('make another kit', () => {
    const { spares: _spares, ...withoutSpares } = kit
    expect(groupKits([kit, withoutSpares, kit]).map(({ machines }) => machines.length)).toEqual([2, 1])
  })
})

describe('a fleet', () => {
  it('of 20,000 machines with as many oils and seals is added up and grouped', () => {
    const kits = Array.from({ length: 20_000 }, (_nothing, index): Kit => {
      const kit = makeKit(`m-${index}`, 450)
      const oil = [{ oil: `oil ${index}`, volume: { value: 450, unit: 'mL' as const } }]
      const seals = [{ seal: SEAL, name: `seal ${index}`, count: 1 }]
      return { ...kit, oil, seals, buy: { oil, seals } }
    })
    expect(orderList(kits).oil).toHaveLength(20_000)
    expect(pickList(kits).seals).toHaveLength(20_000)
    expect(groupKits(kits)).toHaveLength(20_000)
    expect(
      groupKits(Array.from({ length: 20_000 }, (_nothing, index) => makeKit(`m-${index}`, 1))),
    ).toHaveLength(1)
  })
})
