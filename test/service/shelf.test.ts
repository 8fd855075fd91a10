import { describe, expect, it } from 'vitest'
import { groupKits } from '../../src/service/groupKits.js'
import { remainingStock } from '../../src/service/remainingStock.js'
import { kitContents, orderList } from '../../src/v1/service.js'
import type { Stock } from '../../src/v1/spec.js'
import { patched, replace } from '../support/patched.js'
import { planExample, planRequest, requestExample } from '../support/planExample.js'

describe('kits of several machines', () => {
  const plan = planExample('tind-4')
  const kit = kitContents(plan)

  it('that are equal are one packing list, and their orders add up', () => {
    const otherKit = { ...kit, machine: { id: 'station-3', name: 'Station 3' } }
    expect(groupKits([kit, otherKit])).toEqual([{ machines: [kit.machine, otherKit.machine], kit }])
    const [oil] = orderList([kit, otherKit]).oil
    const [oilToBuy] = kit.buy.oil
    expect(oil?.volume.value).toBeCloseTo(2 * (oilToBuy?.volume.value ?? 0), 9)
  })

  it('that differ in one washer are two', () => {
    const [first, ...rest] = kit.seals
    if (first === undefined) throw new Error('no seals')
    const otherKit = { ...kit, seals: [{ ...first, count: first.count + 1 }, ...rest] }
    expect(groupKits([kit, otherKit])).toHaveLength(2)
  })

  it('none is nothing', () => {
    expect(groupKits([])).toEqual([])
    expect(orderList([])).toEqual({ oil: [], seals: [] })
  })
})

describe('what a visit leaves on the shelf', () => {
  it('the rest of an opened container stays opened', () => {
    const { stock } = requestExample('tind-4')
    if (stock === undefined) throw new Error('no stock')
    const left = remainingStock(stock, planExample('tind-4')).containers['quart-80w-90']
    // 300 mL opened and one quart of 946.352946 mL, but 1,400 mL are needed: nothing is left.
    expect(left).toMatchObject({ count: 0 })
    expect(left?.opened).toBeUndefined()
  })

  it('one package of sealant is used for all places, and washers of two shelf places go from both', () => {
    const { stock, ...request } = requestExample('tind-4')
    const washer = stock?.seals['washer-14']
    if (stock === undefined || washer === undefined) throw new Error('no washer')
    const double = patched(
      replace('/gearcases/rear/openings/drain/seals', [washer.seal]),
      replace('/gearcases/rear/openings/fill/seals', [washer.seal]),
    )
    const seals = { one: { ...washer, count: 1 }, other: { ...washer, count: 5 } }
    const planned = planRequest({ ...request, sheet: double(request.sheet), stock: { ...stock, seals } })
    if (!planned.ok) throw new Error('no plan')
    const used = planned.value.seals
      .filter(({ seal }) => 'partNumber' in seal && seal.partNumber === 'HB-1418')
      .reduce((sum, { count }) => sum + count, 0)
    const left = remainingStock({ ...stock, seals }, planned.value).seals
    expect((left['one']?.count ?? 0) + (left['other']?.count ?? 0)).toBe(6 - used)

    const van = requestExample('bud-3')
    if (van.stock === undefined) throw new Error('no stock')
    const tube = {
      name: 'tube',
      seal: { kind: 'thread sealant', product: 'pipe sealant with PTFE', replace: 'every opening' },
      count: 2,
    } as const
    const shelf = { ...van.stock, seals: { tube } }
    const taper = planRequest({ ...van, stock: shelf })
    if (!taper.ok) throw new Error('no plan')
    expect(remainingStock(shelf, taper.value).seals['tube']?.count).toBe(1)
  })

  it('a plan that names what the shelf has not changes nothing', () => {
    const { stock } = requestExample('tind-4')
    if (stock === undefined) throw new Error('no stock')
    const emptyStock: Stock = { ...stock, containers: {}, seals: {} }
    expect(remainingStock(emptyStock, planExample('tind-4'))).toEqual(emptyStock)
  })
})

describe('several oils on the shelf that meet the sheet', () => {
  const reasonsWith = (names: readonly string[]) => {
    const plan = planExample('tind-4', {
      stock: (stock) => {
        const [, container] =
          Object.entries(stock.containers).find(([, { oil }]) => oil.categories?.includes('GL-5')) ?? []
        if (container === undefined) throw new Error('no oil')
        const shelf = names.map((name) => [name, { ...container, oil: { ...container.oil, name } }])
        return { ...stock, containers: Object.fromEntries(shelf) }
      },
    })
    return plan.oil.flatMap(({ reasons }) =>
      reasons.filter(({ code }) => code === 'service/several-suitable-oils'),
    )
  }

  it('one leaves no choice', () => {
    expect(reasonsWith(['fjord-oil'])).toEqual([])
  })

  it('are all named, with the one that the plan takes', () => {
    const [front] = reasonsWith(['fjord-oil', 'skog-oil'])
    expect(front?.params['oils']).toEqual(expect.arrayContaining(['fjord-oil', 'skog-oil']))
    expect(['fjord-oil', 'skog-oil']).toContain(front?.params['chosen'])
  })
})
