import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { compareSeals } from '../../src/seal/compareSeals.js'
import { listSealTasks, type OpenedPart, type SealTask } from '../../src/seal/listSealTasks.js'
import { matchStockSeals } from '../../src/seal/matchStockSeals.js'
import type {
  BondedSeal,
  CrushWasher,
  CutGasket,
  LiquidGasket,
  ORing,
  Seal,
  ThreadSealant,
} from '../../src/spec/seal.js'
import type { StockSeal } from '../../src/spec/stock.js'
import { law } from '../support/law.js'

const washer: CrushWasher = {
  kind: 'crush washer',
  form: 'flat',
  material: 'copper',
  size: { inside: '18', outside: '22', thickness: '1.5', unit: 'mm' },
  replace: 'every opening',
}
const ring: ORing = {
  kind: 'o-ring',
  material: 'NBR',
  designation: '-214',
  size: { inside: '24.99', section: '3.53', unit: 'mm' },
  replace: 'on condition',
}
const bondedSeal: BondedSeal = { kind: 'bonded seal', material: 'NBR', replace: 'on condition' }
const gasket: CutGasket = { kind: 'gasket', material: 'paper', replace: 'every opening', partNumber: 'SK 1' }
const sealant: ThreadSealant = { kind: 'thread sealant', product: 'Skarn Seal', replace: 'every opening' }
const liquid: LiquidGasket = {
  kind: 'liquid gasket',
  product: 'Skarn Bead',
  bead: { kind: 'nominal', value: '3', unit: 'mm' },
  cureBeforeOil: { kind: 'nominal', value: '1', unit: 'h' },
  replace: 'on condition',
}
const drain = '/gearcases/front/openings/drain'
const fill = '/gearcases/front/openings/fill'
const codes = (task: { reasons: readonly { code: string }[] } | undefined) =>
  task?.reasons.map(({ code }) => code)
const partWith = (seal: Seal, more: Partial<OpenedPart> = {}) =>
  listSealTasks([{ path: drain, seals: [seal], ...more }])[0]

describe('listSealTasks', () => {
  it.each(['taken out', 'cracked loose', 'level check'] as const)(
    'a crush washer is new where the plug was %s',
    (how) => {
      const task = partWith(washer, { how })
      expect(task).toMatchObject({ action: 'new', path: `${drain}/seals/0`, inspection: [] })
      expect(task?.reasons).toEqual([{ code: 'seal/crush-washer-every-opening', params: { how } }])
    },
  )

  it('without a word about how, the plug came out', () => {
    expect(partWith(washer)?.reasons[0]?.params).toEqual({ how: 'taken out' })
  })

  it.each([
    [
      'a washer that the manual lets be used again',
      { ...washer, replace: 'on condition' },
      'inspect',
      'seal/reuse-stated',
      2,
    ],
    ['a bonded seal on condition', bondedSeal, 'inspect', 'seal/sheet-says-on-condition', 2],
    [
      'a bonded seal at every opening',
      { ...bondedSeal, replace: 'every opening' },
      'new',
      'seal/sheet-says-every-opening',
      0,
    ],
    ['an o-ring on condition', ring, 'inspect', 'seal/sheet-says-on-condition', 4],
    [
      'an o-ring at every opening',
      { ...ring, replace: 'every opening' },
      'new',
      'seal/sheet-says-every-opening',
      0,
    ],
    ['a gasket at every opening', gasket, 'new', 'seal/sheet-says-every-opening', 0],
    [
      'a gasket on condition',
      { ...gasket, replace: 'on condition' },
      'inspect',
      'seal/sheet-says-on-condition',
      2,
    ],
    ['a sealant', sealant, 'apply', 'seal/apply-new-sealant', 0],
    ['a liquid gasket, whatever the sheet says', liquid, 'apply', 'seal/apply-new-liquid-gasket', 0],
    ['nothing stated', { kind: 'not stated' }, 'look up', 'seal/not-stated', 0],
  ] as [string, Seal, string, string, number][])('%s', (_, seal, action, code, lookText) => {
    const task = partWith(seal)
    expect(task?.action).toBe(action)
    expect(codes(task)).toEqual([code])
    expect(task?.inspection).toHaveLength(lookText)
  })

  it('points to each seal of an opening and to the one of a cover; none gives none', () => {
    const tasks = listSealTasks([
      { path: drain, seals: [sealant, { kind: 'none' }, ring] },
      { path: '/gearcases/rear/covers/back', part: 'cover', seals: [liquid] },
    ])
    expect(tasks.map(({ path }) => path)).toEqual([
      `${drain}/seals/0`,
      `${drain}/seals/2`,
      '/gearcases/rear/covers/back/seal',
    ])
  })

  it('a plug cracked loose and later removed is one opening; left and right are two', () => {
    const openedTwice: OpenedPart[] = [
      { path: fill, seals: [washer], how: 'cracked loose', instance: 'left' },
      { path: fill, seals: [washer], instance: 'left' },
      { path: fill, seals: [washer], instance: 'right' },
      { path: fill, seals: [washer] },
    ]
    expect(listSealTasks(openedTwice).map(({ instance }) => instance)).toEqual(['left', 'right', undefined])
    expect(listSealTasks([])).toEqual([])
  })

  it('one task a seal and instance, whatever the order (law)', () => {
    const parts = fc.array(
      fc.record({
        path: fc.constantFrom(drain, fill),
        instance: fc.constantFrom('left', 'right'),
        seals: fc.subarray([washer, ring, sealant] as Seal[]),
      }),
    )
    law(50, parts, (list) => {
      const keys = listSealTasks(list).map(({ path, instance }) => `${path} ${instance}`)
      expect(new Set(keys).size).toBe(keys.length)
      const expectedPaths = new Set(
        list.flatMap(({ path, instance, seals }) =>
          seals.map((_, place) => `${path}/seals/${place} ${instance}`),
        ),
      )
      expect(new Set(keys)).toEqual(expectedPaths)
    })
  })

  it.each([
    // @ts-expect-error
    [() => listSealTasks('all'), /opened must be a list/],
    // @ts-expect-error
    [() => listSealTasks([null]), /opened\[0\] must be an object/],
    // @ts-expect-error
    [() => listSealTasks([{ path: 5, seals: [] }]), /opened\[0\].path/],
    // @ts-expect-error
    [() => listSealTasks([{ path: drain }]), /opened\[0\].seals/],
    // @ts-expect-error
    [() => listSealTasks([{ path: drain, seals: [{ kind: 'toString' }] }]), /opened\[0\].seals\[0\].kind/],
    // @ts-expect-error
    [() => listSealTasks([{ path: drain, seals: [7] }]), /opened\[0\].seals\[0\] must be an object/],
  ])('misuse %#', (call, message) => {
    expect(call).toThrow(message)
  })
})

describe('matchStockSeals', () => {
  const shelf = (count: number, seal: Seal = washer): StockSeal => ({ name: 'Piece', seal, count })
  const need = (...seals: Seal[]) =>
    listSealTasks(seals.map((seal, place) => ({ path: `/openings/${place}`, seals: [seal] })))
  const line = (tasks: readonly SealTask[], stock: Record<string, StockSeal>) =>
    matchStockSeals(tasks, stock)[0]

  it('counts the needed seals, takes those in stock, buys the rest', () => {
    const tasks = need(washer, washer, { ...washer, source: { ref: 'manual', confidence: 'read' } })
    const sealLine = line(tasks, { box: shelf(2) })
    expect(sealLine).toMatchObject({
      needed: 3,
      toInspect: 0,
      take: [{ id: 'box', count: 2 }],
      buy: 1,
      possibleMatches: [],
    })
    expect(sealLine?.paths).toEqual(['/openings/0/seals/0', '/openings/1/seals/0', '/openings/2/seals/0'])
    expect(codes(sealLine)).toEqual(['seal/in-stock', 'seal/buy'])
    expect(line(tasks, { box: shelf(3) })).toMatchObject({ buy: 0 })
    expect(line(tasks, { box: shelf(4) })).toMatchObject({ buy: 0, take: [{ count: 3 }] })
    expect(line(tasks, { one: shelf(1), two: shelf(1) })).toMatchObject({
      buy: 1,
      take: [{ id: 'one' }, { id: 'two' }],
    })
  })

  it('promises no piece twice to two lines', () => {
    const numbered = { ...washer, partNumber: 'W 18' }
    const plainShelf = {
      ...washer,
      size: { ...(washer.size ?? { inside: '', outside: '', thickness: '' }), unit: 'mm' as const },
    }
    const tasks = need(numbered, { ...plainShelf, partNumber: 'W 18b' })
    const lines = matchStockSeals(tasks, { box: shelf(1) })
    expect(lines).toHaveLength(2)
    expect(lines.map(({ buy }) => buy)).toEqual([0, 1])
  })

  it('a seal that may be the same is named, not taken', () => {
    const { size: _, ...sealWithoutSize } = washer
    const sealLine = line(need(sealWithoutSize), { box: shelf(5), empty: shelf(0) })
    expect(sealLine).toMatchObject({ buy: 1, take: [], possibleMatches: ['box'] })
    expect(codes(sealLine)).toEqual(['seal/buy', 'seal/stock-may-match'])
  })

  it('a seal to be inspected is kept ready, and not bought', () => {
    const sealLine = line(need(ring, ring), {})
    expect(sealLine).toMatchObject({ needed: 0, toInspect: 2, buy: 0 })
    expect(sealLine?.reasons).toEqual([{ code: 'seal/keep-spare', params: { count: 2 } }])
    expect(line(need(ring, ring), { box: shelf(2, ring) })?.reasons).toEqual([])
    expect(line(need(ring), { box: shelf(1, { ...ring, material: 'not stated' }) })).toMatchObject({
      possibleMatches: ['box'],
    })
  })

  it('one package of sealant serves all threads, and what is not stated has no line', () => {
    const tasks = need(sealant, sealant, { kind: 'not stated' })
    expect(matchStockSeals(tasks, {})).toMatchObject([{ needed: 1, buy: 1 }])
    expect(matchStockSeals(tasks, { tube: shelf(1, { ...sealant, product: 'SKARN  seal' }) })).toMatchObject([
      { needed: 1, buy: 0, take: [{ id: 'tube', count: 1 }] },
    ])
  })

  it('taken and bought are what is needed, for any shelf (law)', () => {
    law(50, fc.array(fc.nat(5), { maxLength: 4 }), fc.integer({ min: 1, max: 9 }), (counts, needed) => {
      const stock = Object.fromEntries(counts.map((count, place) => [`s${place}`, shelf(count)]))
      const sealLine = line(need(...Array.from({ length: needed }, () => washer)), stock)
      const takenCount = sealLine?.take.reduce((sum, { count }) => sum + count, 0) ?? 0
      expect(takenCount + (sealLine?.buy ?? 0)).toBe(needed)
      expect(takenCount).toBe(
        Math.min(
          needed,
          counts.reduce((sum, count) => sum + count, 0),
        ),
      )
    })
  })

  it.each([
    // @ts-expect-error
    [() => matchStockSeals('x', {}), /tasks must be a list/],
    // @ts-expect-error
    [() => matchStockSeals([], null), /stock must be an object/],
    [() => matchStockSeals([], { a: shelf(1.5) }), /stock.a.count/],
    [() => matchStockSeals([], { a: shelf(-1) }), /stock.a.count/],
    // @ts-expect-error
    [() => matchStockSeals([], { a: { name: 'x', count: 1 } }), /stock.a.seal must be an object/],
    // @ts-expect-error
    [() => matchStockSeals([], { a: null }), /^stock.a must be an object, got null$/],
    // @ts-expect-error
    [() => matchStockSeals([], { a: { ...shelf(1), seal: { kind: ['none'] } } }), /^stock.a.seal.kind must/],
    // @ts-expect-error
    [() => matchStockSeals([null], {}), /tasks\[0\] must be an object/],
    // @ts-expect-error
    [() => matchStockSeals([{ action: 'new' }], {}), /tasks\[0\].seal/],
  ])('misuse %#', (call, message) => {
    expect(call).toThrow(message)
  })
})

describe('compareSeals', () => {
  const { size: _w, ...noSize } = washer
  const { size: _r, ...dashOnly } = ring
  const { designation: _d, ...sizeOnly } = ring
  const cases: [string, Seal, Seal, string][] = [
    [
      'written 18.0 and 18',
      washer,
      { ...washer, size: { inside: '18.0', outside: '22.00', thickness: '1.50', unit: 'mm' } },
      'yes',
    ],
    [
      'another size',
      washer,
      { ...washer, size: { inside: '16', outside: '20', thickness: '1.5', unit: 'mm' } },
      'no',
    ],
    ['another material', washer, { ...washer, material: 'aluminium' }, 'no'],
    ['another form', washer, { ...washer, form: 'folded' }, 'no'],
    ['material not stated', washer, { ...washer, material: 'not stated' }, 'perhaps'],
    ['no size', noSize, washer, 'perhaps'],
    ['no size, another material', noSize, { ...washer, material: 'fibre' }, 'no'],
    ['equal numbers', { ...noSize, partNumber: 'A1' }, { ...washer, partNumber: 'a1' }, 'yes'],
    ['other numbers', { ...washer, partNumber: 'A1' }, { ...washer, partNumber: 'A2' }, 'no'],
    ['a number on one side', { ...washer, partNumber: 'A1' }, washer, 'yes'],
    ['a bonded seal for a washer', washer, bondedSeal, 'no'],
    ['bonded seals without size', bondedSeal, bondedSeal, 'perhaps'],
    ['captive for flat', washer, { ...washer, form: 'captive' }, 'no'],
    ['a profile ring for a bonded washer', bondedSeal, { ...bondedSeal, form: 'profile ring' }, 'no'],
    [
      'inches for millimetres',
      washer,
      { ...washer, size: { inside: '0.71', outside: '0.87', thickness: '0.06', unit: 'in' } },
      'perhaps',
    ],
    ['JIS P150 for -150', { ...dashOnly, designation: 'P150' }, { ...dashOnly, designation: '-150' }, 'no'],
    [
      'JIS by two spellings',
      { ...dashOnly, designation: 'P22A' },
      { ...dashOnly, designation: 'JIS P22A' },
      'yes',
    ],
    ['rings alike', ring, ring, 'yes'],
    ['a ring by dash and size, and by dash', ring, dashOnly, 'yes'],
    ['a ring by size alone', ring, sizeOnly, 'yes'],
    ['by dash here, by size there', dashOnly, sizeOnly, 'perhaps'],
    ['another dash', dashOnly, { ...dashOnly, designation: '-210' }, 'no'],
    [
      'same dash, other size',
      ring,
      { ...ring, size: { inside: '25.50', section: '3.53', unit: 'mm' } },
      'no',
    ],
    ['another rubber', ring, { ...ring, material: 'FKM' }, 'no'],
    ['gaskets with a number', gasket, gasket, 'yes'],
    ['gaskets without', { kind: 'gasket', material: 'paper', replace: 'every opening' }, gasket, 'perhaps'],
    ['sealants', sealant, { ...sealant, product: 'Other' }, 'no'],
    ['liquid gaskets', liquid, { ...liquid, product: 'skarn bead' }, 'yes'],
    ['none', { kind: 'none' }, { kind: 'none' }, 'no'],
    ['not stated', { kind: 'not stated' }, { kind: 'not stated' }, 'no'],
  ]
  it.each(cases)('%s', (_, needed, offered, areSame) => {
    expect(compareSeals(needed, offered)).toBe(areSame)
    expect(compareSeals(offered, needed)).toBe(areSame)
  })
})
