import { describe, expect, it } from 'vitest'
import { groupKits, kitContents, leaveStock, listDue, orderList, planVisit } from '../../src/service/index.js'
import type {
  FunnelAndHose,
  Gearcase,
  MachineLog,
  OwnOilSpace,
  SpecSheet,
  Stock,
  Toolbox,
} from '../../src/spec/index.js'
import { applyPatch, type PatchOperation } from '../../src/spec/index.js'
import { planExample, requestExample, TODAY } from '../support/planExample.js'

const patched =
  (...operations: readonly PatchOperation[]) =>
  (sheet: SpecSheet): SpecSheet =>
    applyPatch(sheet, operations) as SpecSheet

const replace = (path: string, value: unknown): PatchOperation => ({ op: 'replace', path, value })
const add = (path: string, value: unknown): PatchOperation => ({ op: 'add', path, value })

const codes = (found: readonly { readonly code: string }[]) => found.map(({ code }) => code)

describe('oil spaces that are shared', () => {
  const shared = (owner: string) => ({ kind: 'shared', with: owner })

  it('in a circle: nobody owns the oil, nothing is due, and nothing hangs', () => {
    const plan = planExample('tind-4', {
      sheet: patched(
        replace('/gearcases/front/oilSpace', shared('rear')),
        replace('/gearcases/rear/oilSpace', shared('front')),
      ),
    })
    expect(plan.due).toEqual([])
    expect(plan.work).toEqual([])
  })

  it('with a gearcase that is not there: the rest is planned', () => {
    const plan = planExample('tind-4', {
      sheet: patched(replace('/gearcases/rear/oilSpace', shared('nowhere'))),
    })
    expect(plan.work.map(({ part }) => part.path)).toEqual(['/gearcases/front'])
    expect(plan.oil.map(({ needed }) => needed)).toEqual([{ value: 450, unit: 'mL' }])
  })
})

describe('services and gearcases', () => {
  it('a gearcase that no service names is not listed', () => {
    const plan = planExample('tind-4', {
      sheet: patched(
        replace('/services/gear-oil-change/gearcases', ['front']),
        replace('/services/gear-oil-check/gearcases', ['front']),
      ),
    })
    expect(plan.due.map(({ part }) => part.path)).toEqual(['/gearcases/front', '/gearcases/front'])
  })

  it('an unknown gearcase is passed over, and one named twice is listed once', () => {
    const {
      sheet,
      log,
      due: options,
    } = requestExample('tind-4', {
      sheet: patched(
        replace('/services/gear-oil-change/gearcases', ['nowhere', 'front', 'constructor', 'front']),
        replace('/services/gear-oil-check/gearcases', []),
      ),
    })
    const listed = listDue({ sheet, log, today: TODAY, options })
    expect(listed.map(({ gearcase }) => gearcase)).toEqual(['front'])
  })

  it('a check beside the change of the same gearcase is left out, and says what covers it', () => {
    const plan = planExample('tind-4')
    const check = plan.due.filter(({ service }) => service === 'gear-oil-check')
    expect(check.map(({ taken }) => taken)).toEqual([false, false])
    expect(check.map(({ coveredBy }) => coveredBy)).toEqual(['gear oil change', 'gear oil change'])
  })

  it('of two that each count as the other, the first is done, never none', () => {
    const plan = planExample('tind-4', {
      sheet: patched(add('/services/gear-oil-check/satisfies', ['gear-oil-change'])),
      services: ['gear-oil-check', 'gear-oil-change'],
    })
    expect(plan.work.map(({ service, part }) => [service, part.path])).toEqual([
      ['gear-oil-change', '/gearcases/front'],
      ['gear-oil-change', '/gearcases/rear'],
    ])
  })

  it('a check named alone is planned as a check: no oil drained, none needed', () => {
    const plan = planExample('tind-4', { services: ['gear-oil-check'] })
    expect(plan.work.map(({ task }) => task)).toEqual(['check', 'check'])
    expect(plan.oil).toEqual([])
    expect(plan.pan).toEqual({ verdict: 'cannot tell', reasons: [] })
    expect(plan.cautions.map(({ code }) => code)).not.toContain('service/used-oil-rules')
  })

  it('an event after the last service makes it due before next use', () => {
    const plan = planExample('tind-4', {
      sheet: patched(add('/services/gear-oil-change/events', ['submersion'])),
      log: (log) => ({ ...log, events: [{ kind: 'submersion', date: '2023-10-01', gearcases: ['rear'] }] }),
    })
    const rear = plan.due.find(
      ({ service, part }) => service === 'gear-oil-change' && part.path === '/gearcases/rear',
    )
    expect(rear?.lines.find(({ by }) => by === 'event')).toMatchObject({ state: 'due', dueOn: '2023-10-01' })
    const front = plan.due.find(({ part }) => part.path === '/gearcases/front')
    expect(front?.lines.some(({ by }) => by === 'event')).toBe(false)
  })

  it('a part that this machine may or may not have is cannot tell, with the fact that decides', () => {
    const {
      sheet,
      log,
      due: options,
    } = requestExample('tind-4', {
      sheet: patched(add('/gearcases/rear/appliesTo', { market: ['north'] })),
    })
    const rear = listDue({ sheet, log, today: TODAY, options }).filter(({ gearcase }) => gearcase === 'rear')
    expect(rear.map(({ state }) => state)).toEqual(['cannot tell', 'cannot tell'])
    expect(rear[0]?.missing).toMatchObject([{ code: 'service/part-open', params: { facts: ['market'] } }])
    const elsewhere = { ...log, identity: { ...log.identity, market: 'south' } }
    const there = listDue({ sheet, log: elsewhere, today: TODAY, options })
    expect(there.map(({ gearcase }) => gearcase)).toEqual(['front', 'front'])
  })
})

describe('who the machine is', () => {
  it('facts of which one contradicts the stated variant', () => {
    const plan = planExample('tind-4', {
      log: (log) => ({ ...log, identity: { variant: 'short', serial: 'TL00418' } }),
    })
    expect(codes(plan.findings)).toContain('service/variant-contradicted')
    expect(plan.machine.variant.kind).toBe('cannot tell')
  })

  it('a stated variant that the sheet does not know', () => {
    const plan = planExample('tind-4', { log: (log) => ({ ...log, identity: { variant: 'wide' } }) })
    expect(plan.machine.variant.kind).toBe('cannot tell')
    expect(codes(plan.findings)).toContain('service/variant-contradicted')
  })

  it('no facts at all: both variants are candidates', () => {
    const plan = planExample('tind-4', { log: (log) => ({ ...log, identity: {} }) })
    expect(plan.machine.variant).toMatchObject({ candidates: [{ id: 'short' }, { id: 'long' }] })
    expect(codes(plan.missing.map(({ reason }) => reason))).toContain('service/variant-open')
  })
})

/** The hubs of the tractor: 0.45 L each, left and right. */
const hubs = (
  per: 'instance' | 'all instances',
  value: string,
  logFile?: string,
  log?: (log: MachineLog) => MachineLog,
) =>
  planExample('acre-26', {
    sheet: patched(
      replace('/gearcases/hub/oilSpace/fill/per', per),
      replace('/gearcases/hub/oilSpace/fill/drainAndRefill', { kind: 'nominal', value, unit: 'L' }),
    ),
    services: ['front-axle-oil-change'],
    ...(logFile === undefined ? {} : { logFile }),
    ...(log === undefined ? {} : { log }),
  }).oil.find(({ part }) => part.path === '/gearcases/hub')

describe('quantities for an instance and for all', () => {
  it('a figure for each is taken as often as there are', () => {
    expect(hubs('instance', '0.1')).toMatchObject({
      instances: 2,
      perInstance: { value: 0.1, unit: 'L' },
      needed: { value: 0.2, unit: 'L' },
    })
  })

  it('a figure for all is shared out', () => {
    expect(hubs('all instances', '0.9')).toMatchObject({
      perInstance: { value: 0.45, unit: 'L' },
      needed: { value: 0.9, unit: 'L' },
    })
  })

  it('a figure for all is shared out over all, also where one was done before', () => {
    const oil = planExample('acre-26', {
      sheet: patched(
        replace('/gearcases/hub/oilSpace/fill/per', 'all instances'),
        replace('/gearcases/hub/oilSpace/fill/drainAndRefill', { kind: 'nominal', value: '0.9', unit: 'L' }),
        replace('/services/front-axle-oil-change/intervals', {
          repeat: { kind: 'interval', period: 'P1Y' },
          countFrom: 'completion',
        }),
      ),
      log: (log) => ({
        ...log,
        records: [
          ...log.records,
          {
            kind: 'service-record',
            version: '1.0',
            id: 'left-hub-alone',
            machine: log.id,
            sheet: log.sheet,
            detail: 'date and meters only',
            date: '2023-10-03',
            readings: {},
            entries: [
              {
                service: 'front-axle-oil-change',
                gearcase: 'hub',
                instance: 'left',
                opened: [],
                tightened: [],
                seals: [],
              },
            ],
          },
        ],
      }),
    }).oil.find(({ part }) => part.path === '/gearcases/hub')
    expect(oil).toMatchObject({
      instances: 1,
      perInstance: { value: 0.45, unit: 'L' },
      needed: { value: 0.45, unit: 'L' },
    })
  })
})

describe('refills and oils', () => {
  const REFILL = '/gearcases/front/oilSpace/fill/drainAndRefill'
  const frontOil = (sheet: (sheet: SpecSheet) => SpecSheet, stock?: (stock: Stock) => Stock) =>
    planExample('tind-4', { sheet, ...(stock === undefined ? {} : { stock }) }).oil[0]

  it.each([
    ['limits', { kind: 'limits', min: '900', max: '1000', unit: 'mL' }, 1000],
    ['a lower limit alone', { kind: 'limits', min: '900', unit: 'mL' }, 900],
  ])('%s: enough for the most that may go in', (_what, value, needed) => {
    expect(frontOil(patched(replace(REFILL, value)))?.needed).toEqual({ value: needed, unit: 'mL' })
  })

  const CHOICE = {
    kind: 'grade',
    grade: '80W-90',
    system: 'SAE J306',
    category: 'GL-5',
    limitedSlip: 'not permitted',
  }
  const withAdditive = (includedInRefill: boolean, volume: unknown) =>
    frontOil(
      patched(
        replace('/gearcases/front/oilSpace/oils', {
          kind: 'oils',
          choices: [{ ...CHOICE, additive: { name: 'additive', volume, includedInRefill } }],
        }),
      ),
    )

  it.each([
    // 450 mL with 50 mL of it additive leaves 400 mL of oil; beside it all 450 mL are oil.
    [true, { kind: 'nominal', value: '50', unit: 'mL' }, 400, 50],
    [false, { kind: 'nominal', value: '50', unit: 'mL' }, 450, 50],
    [true, { kind: 'limits', max: '60', unit: 'mL' }, 390, 60],
    [false, { kind: 'not stated' }, 450, undefined],
  ])('additive included: %s, %j', (included, volume, oil, additive) => {
    const found = withAdditive(included, volume)
    expect(found?.needed).toEqual({ value: oil, unit: 'mL' })
    expect(found?.additive?.includedInRefill).toBe(included)
    expect(found?.additive?.needed?.value).toBe(additive)
  })

  it('a maker fluid that the shelf has not: told, its pour time cannot be told, and the plan goes on', () => {
    const plan = planExample('tind-4', {
      sheet: patched(
        replace('/gearcases/front/oilSpace/oils', {
          kind: 'oils',
          choices: [{ kind: 'maker fluid', name: 'Hallbrekka AX fluid', limitedSlip: 'not stated' }],
        }),
      ),
    })
    expect(plan.oil[0]).toMatchObject({
      choice: 'Hallbrekka AX fluid',
      take: [],
      buy: { volume: { value: 450, unit: 'mL' } },
    })
    expect(codes(plan.findings)).toContain('service/no-suitable-oil')
    const pour = plan.waits.find(({ kind, part }) => kind === 'pour' && part.path === '/gearcases/front')
    expect(pour?.seconds).toBeUndefined()
    expect(pour?.reasons.length).toBeGreaterThan(0)
    expect(plan.tightenings.filter(({ setting }) => setting !== undefined).length).toBeGreaterThan(3)
  })

  it('opened containers go first, and an empty shelf place gives nothing', () => {
    const plan = planExample('tind-4', {
      stock: (stock) => {
        const quart = stock.containers['quart-80w-90']
        if (quart === undefined) throw new Error('no quart')
        return { ...stock, containers: { 'quart-80w-90': { ...quart, count: 0 } } }
      },
    })
    // 300 mL opened; 450 and 950 mL wanted.
    expect(plan.oil.map(({ take }) => take.map(({ volume, opened }) => [volume.value, opened]))).toEqual([
      [[300, true]],
      [],
    ])
    expect(plan.oil.map(({ buy }) => buy?.volume.value)).toEqual([150, 950])
  })

  it('three times 0.1 L is what a container of 0.3 L holds', () => {
    const third = { name: 'small can', size: { value: 0.3, unit: 'L' }, count: 1 } as const
    const plan = planExample('acre-26', {
      sheet: patched(
        add('/gearcases/hub/instances/middle', { name: 'middle' }),
        replace('/gearcases/hub/oilSpace/fill/drainAndRefill', { kind: 'nominal', value: '0.1', unit: 'L' }),
        replace('/services/front-axle-oil-change/gearcases', ['hub']),
      ),
      stock: (stock) => {
        const [oil] = Object.values(stock.containers)
        if (oil === undefined) throw new Error('no oil')
        return { ...stock, containers: { can: { ...third, oil: oil.oil } } }
      },
      services: ['front-axle-oil-change'],
    })
    expect(plan.oil).toMatchObject([{ needed: { value: 0.3, unit: 'L' }, take: [{ container: 'can' }] }])
    expect(plan.oil[0]?.buy).toBeUndefined()
  })
})

describe('tools', () => {
  const toolbox = (change: Partial<Toolbox>) => ({
    toolbox: (given: Toolbox): Toolbox => ({ ...given, ...change }),
  })
  const drive = (value: unknown) => ({
    sheet: patched(replace('/gearcases/front/openings/fill/drive', value)),
  })
  const socketFor = (value: unknown, change: Partial<Toolbox> = {}) =>
    planExample('tind-4', { ...drive(value), ...toolbox(change) }).tools.find(
      ({ kind, for: parts }) =>
        kind === 'socket' && parts.some(({ path }) => path === '/gearcases/front/openings/fill'),
    )

  it('by hand needs none', () => {
    expect(socketFor({ kind: 'hand' })).toMatchObject({
      verdict: 'fits',
      reasons: [{ code: 'service/hand-only' }],
    })
  })

  it('a slot needs no size', () => {
    expect(socketFor({ kind: 'slot' })).toMatchObject({ verdict: 'missing' })
    const sockets = { blade: { name: 'wide blade', fits: 'slot' } } as const
    expect(socketFor({ kind: 'slot' }, { sockets })).toMatchObject({
      verdict: 'fits',
      have: { id: 'blade' },
      reasons: [{ params: { size: '' } }],
    })
  })

  it('a hexagon without a size cannot be told', () => {
    expect(socketFor({ kind: 'internal hex' })).toMatchObject({
      verdict: 'cannot tell',
      reasons: [{ code: 'service/drive-not-stated' }],
    })
  })

  it('sizes are designations: 3/16 in is no 5 mm', () => {
    const sockets = { key: { name: '5 mm key', fits: 'internal hex', size: '5 mm' } } as const
    expect(socketFor({ kind: 'internal hex', size: '3/16 in' }, { sockets })?.verdict).toBe('missing')
    expect(socketFor({ kind: 'internal hex', size: '5 mm' }, { sockets })?.have?.id).toBe('key')
  })

  it('a socket with a square comes before a key without one', () => {
    const sockets = {
      key: { name: 'key', fits: 'internal hex', size: '5 mm' },
      bit: { name: 'bit', fits: 'internal hex', size: '5 mm', drive: '1/2 in' },
    } as const
    expect(socketFor({ kind: 'internal hex', size: '5 mm' }, { sockets })?.have?.id).toBe('bit')
  })

  describe('stands: two a support, and each bears the whole machine of 640 kg', () => {
    const stands = (
      sets: Readonly<Record<string, readonly [count: number, kilograms: number]>>,
      mass?: unknown,
    ) => {
      const plan = planExample('tind-4', {
        ...toolbox({
          stands: Object.fromEntries(
            Object.entries(sets).map(([id, [count, value]]) => [
              id,
              { name: id, count, rating: { value, unit: 'kg' } },
            ]),
          ),
        }),
        ...(mass === undefined ? {} : { sheet: patched(replace('/machine/mass', mass)) }),
      })
      const found = plan.tools.filter(({ kind }) => kind === 'stands')
      return found.map(({ verdict, have, reasons }) => [verdict, have?.id, reasons[0]?.code])
    }
    const HOLD = 'service/stands-hold'
    const WEAK = 'service/stands-too-weak'

    it.each([
      [639.9, ['does not fit', 'pair', WEAK]],
      [640, ['fits', 'pair', HOLD]],
      [640.1, ['fits', 'pair', HOLD]],
    ])('rated %s kg', (rating, expected) => {
      expect(stands({ pair: [2, rating] })).toEqual([expected])
    })

    it.each([
      ['limits', { kind: 'limits', min: '600', max: '650', unit: 'kg' }, 650],
      [
        'a tolerance',
        { kind: 'nominal with tolerance', value: '640.1', minus: '5', plus: '0.2', unit: 'kg' },
        640.3,
      ],
    ])('%s: the most that it may weigh', (_what, mass, most) => {
      expect(stands({ pair: [2, most] }, mass)).toEqual([['fits', 'pair', HOLD]])
      expect(stands({ pair: [2, most - 0.1] }, mass)).toEqual([['does not fit', 'pair', WEAK]])
    })

    it('a mass that is not stated, or has no upper end, cannot be told', () => {
      const open = ['cannot tell', 'pair', 'service/mass-not-stated']
      expect(stands({ pair: [2, 1000] }, { kind: 'not stated' })).toEqual([open])
      expect(stands({ pair: [2, 1000] }, { kind: 'limits', min: '600', unit: 'kg' })).toEqual([open])
    })

    it('one is too few; two sets of one do together; a weak one does not count', () => {
      expect(stands({ one: [1, 1000] })).toEqual([['does not fit', 'one', 'service/stands-too-few']])
      expect(stands({ one: [1, 1000], other: [1, 700] })).toEqual([
        ['fits', 'one', HOLD],
        ['fits', 'other', HOLD],
      ])
      expect(stands({ weak: [2, 500], one: [1, 1000] })).toEqual([
        ['does not fit', 'one', 'service/stands-too-few'],
      ])
      expect(stands({})).toEqual([['missing', undefined, 'service/stands-missing']])
      expect(stands({ none: [0, 1000] })).toEqual([['does not fit', 'none', 'service/stands-too-few']])
    })

    it('a set that is enough alone comes before two', () => {
      expect(stands({ one: [1, 2000], pair: [2, 1000] })).toEqual([['fits', 'pair', HOLD]])
    })
  })

  describe('calibration: 12 months or 5,000 cycles, due at the limit itself', () => {
    const found = (calibration: unknown) => {
      const plan = planExample('tind-4', {
        toolbox: (given) =>
          applyPatch(given, [
            calibration === undefined
              ? { op: 'remove', path: '/wrenches/half-inch-click/calibration' }
              : replace('/wrenches/half-inch-click/calibration', calibration),
          ]) as Toolbox,
      })
      expect(plan.wrenches.use).toContain('half-inch-click')
      return plan.findings.map(({ code, path, params }) => [code, path, params['dueOn']])
    }
    const WRENCH = '/wrenches/half-inch-click'

    it.each([
      ['2022-10-05', '2023-10-05'],
      ['2022-10-06', '2023-10-06'],
    ])('dated %s has run out on 6 October 2023', (date, dueOn) => {
      expect(found({ date })).toEqual([['service/calibration-run-out', `${WRENCH}/calibration/date`, dueOn]])
    })

    it('dated 7 October 2022 has a day left', () => {
      expect(found({ date: '2022-10-07' })).toEqual([])
    })

    it.each([
      [4999, []],
      [5000, [['service/calibration-cycles-run-out', `${WRENCH}/calibration/cyclesSince`, undefined]]],
      [5001, [['service/calibration-cycles-run-out', `${WRENCH}/calibration/cyclesSince`, undefined]]],
    ])('%s cycles', (cyclesSince, expected) => {
      expect(found({ date: '2023-02-11', cyclesSince })).toEqual(expected)
    })

    it('both may have run out, and both are told', () => {
      expect(found({ date: '2022-01-01', cyclesSince: 6000 })).toHaveLength(2)
    })

    it('a date that nobody kept is information', () => {
      expect(found(undefined)).toEqual([['service/calibration-not-kept', WRENCH, undefined]])
    })
  })

  describe('several of a kind', () => {
    const long = requestExample('tind-4').toolbox?.fillers['long-hose'] as FunnelAndHose
    const wide = {
      ...long,
      name: 'wide hose',
      hose: { ...long.hose, bore: { value: 20, unit: 'mm' as const } },
    }

    it('the quickest hose is taken and listed, in whatever order they hang', () => {
      for (const fillers of [
        { long, wide },
        { wide, long },
      ]) {
        const plan = planExample('tind-4', toolbox({ fillers }))
        const hoses = plan.tools.filter(({ kind }) => kind === 'filler')
        expect(hoses).toMatchObject([{ have: { id: 'wide', name: 'wide hose' }, verdict: 'fits' }])
        expect(hoses[0]?.for).toHaveLength(2)
        expect(kitContents(plan).tools).toContainEqual({ id: 'wide', name: 'wide hose' })
      }
    })

    it('without a temperature the first hose is listed, and its time cannot be told', () => {
      const { ambient: _ambient, ...request } = requestExample('tind-4', toolbox({ fillers: { long, wide } }))
      const planned = planVisit(request)
      if (!planned.ok) throw new Error('no plan')
      expect(planned.value.tools.filter(({ kind }) => kind === 'filler')).toMatchObject([
        { have: { id: 'long' } },
      ])
    })

    it('no hose at all is told', () => {
      const plan = planExample('tind-4', toolbox({ fillers: {} }))
      const pours = plan.waits.filter(({ kind }) => kind === 'pour')
      expect(pours.map(({ reasons }) => reasons[0]?.code)).toEqual(['service/no-filler', 'service/no-filler'])
    })

    it('of pans the smallest that holds all; too small and none are told', () => {
      const pan = (value: number) => ({ name: `${value} mL`, size: { value, unit: 'mL' as const } })
      const verdict = (pans: Toolbox['pans']) => {
        const plan = planExample('tind-4', toolbox({ pans }))
        return [plan.pan.verdict, plan.pan.have?.id, ...codes(plan.findings)]
      }
      // 450 and 950 mL: 1,400 mL together.
      expect(verdict({ big: pan(6000), just: pan(1400) })).toEqual(['fits', 'just'])
      expect(verdict({ small: pan(1399) })).toEqual(['does not fit', 'small', 'service/pan-too-small'])
      expect(verdict({ tiny: pan(10) })).toEqual(['does not fit', undefined, 'service/pan-too-small'])
      expect(verdict({})).toEqual(['missing', undefined, 'service/no-pan'])
    })
  })

  it('a machine without supports is planned all the same', () => {
    const { sheet, ...request } = requestExample('tind-4')
    const planned = planVisit({
      ...request,
      sheet: { ...sheet, machine: { ...sheet.machine, supports: {} } },
    })
    expect(planned.findings.length + (planned.ok ? planned.value.steps.length : 0)).toBeGreaterThan(0)
  })
})

describe('kits of several machines', () => {
  const plan = planExample('tind-4')
  const kit = kitContents(plan)

  it('alike are one list to pack, and their orders add up', () => {
    const other = { ...kit, machine: { id: 'station-3', name: 'Station 3' } }
    expect(groupKits([kit, other])).toEqual([{ machines: [kit.machine, other.machine], kit }])
    const [oil] = orderList([kit, other]).oil
    const [single] = kit.buy.oil
    expect(oil?.volume.value).toBeCloseTo(2 * (single?.volume.value ?? 0), 9)
  })

  it('that differ in one washer are two', () => {
    const [first, ...rest] = kit.seals
    if (first === undefined) throw new Error('no seals')
    const other = { ...kit, seals: [{ ...first, count: first.count + 1 }, ...rest] }
    expect(groupKits([kit, other])).toHaveLength(2)
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
    const left = leaveStock(stock, planExample('tind-4')).containers['quart-80w-90']
    // 300 mL opened and one quart of 946.352946 mL, of which 1,400 mL are wanted: nothing is left.
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
    const planned = planVisit({ ...request, sheet: double(request.sheet), stock: { ...stock, seals } })
    if (!planned.ok) throw new Error('no plan')
    const used = planned.value.seals
      .filter(({ seal }) => 'partNumber' in seal && seal.partNumber === 'HB-1418')
      .reduce((sum, { count }) => sum + count, 0)
    const left = leaveStock({ ...stock, seals }, planned.value).seals
    expect((left['one']?.count ?? 0) + (left['other']?.count ?? 0)).toBe(6 - used)

    const van = requestExample('bud-3')
    if (van.stock === undefined) throw new Error('no stock')
    const tube = {
      name: 'tube',
      seal: { kind: 'thread sealant', product: 'pipe sealant with PTFE', replace: 'every opening' },
      count: 2,
    } as const
    const shelf = { ...van.stock, seals: { tube } }
    const taper = planVisit({ ...van, stock: shelf })
    if (!taper.ok) throw new Error('no plan')
    expect(leaveStock(shelf, taper.value).seals['tube']?.count).toBe(1)
  })

  it('a plan that names what the shelf has not changes nothing', () => {
    const { stock } = requestExample('tind-4')
    if (stock === undefined) throw new Error('no stock')
    const empty: Stock = { ...stock, containers: {}, seals: {} }
    expect(leaveStock(empty, planExample('tind-4'))).toEqual(empty)
  })
})

describe('sheets that say little', () => {
  const space = (sheet: SpecSheet, gearcase: string): OwnOilSpace => {
    const found: Gearcase | undefined = sheet.gearcases[gearcase]
    if (found?.oilSpace.kind !== 'own') throw new Error('no own oil space')
    return found.oilSpace
  }

  it('oils and refill not stated: nothing is chosen, nothing is bought, both are missing', () => {
    const plan = planExample('tind-4', {
      sheet: (sheet) => {
        const rear = space(sheet, 'rear')
        return patched(
          replace('/gearcases/rear/oilSpace/oils', { kind: 'not stated' }),
          replace('/gearcases/rear/oilSpace/fill', { ...rear.fill, drainAndRefill: { kind: 'not stated' } }),
          { op: 'remove', path: '/overrides' },
        )(sheet)
      },
    })
    const rear = plan.oil.find(({ part }) => part.path === '/gearcases/rear')
    expect(rear).toMatchObject({ take: [] })
    expect(rear?.choice).toBeUndefined()
    expect(rear?.needed).toBeUndefined()
    const missing = plan.missing.filter(({ kind }) => kind === 'not stated').map(({ path }) => path)
    expect(missing).toContain('/gearcases/rear/oilSpace/oils')
    expect(missing).toContain('/gearcases/rear/oilSpace/fill/drainAndRefill')
    expect(codes(plan.usedOil.reasons)).toContain('service/used-oil-open')
  })

  it('a seal not stated is to be looked up, and none is bought', () => {
    const plan = planExample('tind-4', {
      sheet: patched(replace('/gearcases/front/openings/drain/seals', [{ kind: 'not stated' }])),
    })
    const seal = plan.seals.find(({ part }) => part.path.startsWith('/gearcases/front/openings/drain'))
    expect(seal).toMatchObject({ replace: 'cannot tell', buy: 0, reasons: [{ code: 'service/seal-open' }] })
  })
})
