import { describe, expect, it } from 'vitest'
import type { Gearcase, MachineLog, OwnOilSpace, SpecSheet, Stock } from '../../src/v1/spec.js'
import { add, patched, replace } from '../support/patched.js'
import { planExample } from '../support/planExample.js'

const codes = (found: readonly { readonly code: string }[]) => found.map(({ code }) => code)

/** The hubs of the tractor: 0.45 L each, left and right. */
const sheetWithHubs = (
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
    expect(sheetWithHubs('instance', '0.1')).toMatchObject({
      instances: 2,
      perInstance: { value: 0.1, unit: 'L' },
      needed: { value: 0.2, unit: 'L' },
    })
  })

  it('a figure for all is shared out', () => {
    expect(sheetWithHubs('all instances', '0.9')).toMatchObject({
      perInstance: { value: 0.45, unit: 'L' },
      needed: { value: 0.9, unit: 'L' },
    })
  })

  it('five litres shared out over three are five litres in the pan and as used oil', () => {
    const plan = planExample('acre-26', {
      sheet: patched(
        add('/gearcases/hub/instances/middle', { name: 'middle' }),
        replace('/gearcases/hub/oilSpace/fill/per', 'all instances'),
        replace('/gearcases/hub/oilSpace/fill/drainAndRefill', { kind: 'nominal', value: '5', unit: 'L' }),
      ),
      services: ['front-axle-oil-change'],
      toolbox: (toolbox) => ({
        ...toolbox,
        pans: { pan: { name: 'Large pan', size: { value: 8.2, unit: 'L' } } },
      }),
    })
    // the axle takes 3.2 L
    expect(plan.pan).toMatchObject({ verdict: 'fits', volume: { value: 8200, unit: 'mL' } })
    expect(plan.usedOil.volume).toEqual({ value: 8200, unit: 'mL' })
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
    // 450 mL including 50 mL of additive is 400 mL of oil; if the additive is extra, all 450 mL are oil.
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

  it('a maker fluid that is not in stock is reported, its pour time is unknown, and the plan continues', () => {
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
    // 300 mL opened; 450 and 950 mL needed.
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
    expect(codes(plan.usedOil.reasons)).toContain('service/used-oil-not-known')
  })

  describe('dry fill stated and refill not', () => {
    const plan = (litres: string) =>
      planExample('tind-4', {
        sheet: patched(
          replace('/gearcases/rear/oilSpace/fill/drainAndRefill', { kind: 'not stated' }),
          add('/gearcases/rear/oilSpace/fill/dryFill', { kind: 'nominal', value: litres, unit: 'L' }),
          { op: 'remove', path: '/overrides' },
        ),
      })

    it('the pan of 6 L is judged by the dry fill', () => {
      const { pan, usedOil } = plan('0.9')
      expect(pan).toMatchObject({ verdict: 'fits' })
      // 900 mL of the rear and 450 mL of the front, where it is changed too
      expect(usedOil.volume).toEqual({ value: 1350, unit: 'mL' })
      expect(codes(usedOil.reasons)).toContain('service/drain-limit-from-dry-fill')
      expect(codes(usedOil.reasons)).not.toContain('service/used-oil-not-known')
      expect(plan('6.1').pan).toMatchObject({ verdict: 'does not fit' })
    })

    it('the dry fill is a figure of the plan, and nothing is poured by it', () => {
      const { figures, oil } = plan('0.9')
      expect(figures.map(({ path }) => path)).toContain('/gearcases/rear/oilSpace/fill/dryFill')
      expect(oil.find(({ part }) => part.path === '/gearcases/rear')?.needed).toBeUndefined()
    })
  })

  it('clips need no torque; a skid plate whose torque is not stated does', () => {
    const of = (kind: string) =>
      planExample('tind-4', {
        sheet: patched(
          replace('/shields/skid-plate/fasteners/drive', { kind }),
          replace('/shields/skid-plate/fasteners/tightening', {
            kind: 'not stated',
            threadCondition: 'not stated',
          }),
        ),
      })
    const about = (plan: ReturnType<typeof of>) => [
      plan.missing.some(({ path }) => path?.startsWith('/shields/skid-plate')),
      plan.tightenings.some(({ part }) => part.path === '/shields/skid-plate'),
    ]
    expect(about(of('hand'))).toEqual([true, true])
    const clipSteps = of('clip')
    expect(about(clipSteps)).toEqual([false, false])
    const tool = clipSteps.tools.find(({ drive }) => drive?.kind === 'clip')
    expect(tool).toMatchObject({ verdict: 'fits', reasons: [{ code: 'service/turned-by-hand' }] })
  })

  it('a skid plate with holes for the plugs stays on, is named once, and its fasteners are not listed', () => {
    const through = [add('/shields/skid-plate/reachedThrough', true)]
    const plan = planExample('tind-4', { sheet: patched(...through), services: ['gear-oil-change'] })
    const before = planExample('tind-4', { services: ['gear-oil-change'] })
    const shieldSteps = ({ steps }: typeof plan) =>
      steps.filter(({ do: action }) => action.includes('shield'))
    expect([shieldSteps(before).length, shieldSteps(plan).length]).toEqual([2, 0])
    const isOfPlate = ({ part }: { readonly part: { readonly path: string } }) =>
      part.path.startsWith('/shields/skid-plate')
    expect([before.tightenings.some(isOfPlate), plan.tightenings.some(isOfPlate)]).toEqual([true, false])
    const restingParts = plan.steps.flatMap(({ cautions }) =>
      cautions.filter(({ code }) => code === 'procedure/caution-shield-stays'),
    )
    expect(restingParts).toEqual([
      { code: 'procedure/caution-shield-stays', params: { signal: 'notice', shield: 'front skid plate' } },
    ])
    const leaks = plan.steps.filter(({ do: action }) => action === 'check for leaks')
    expect(leaks.some(({ shield }) => shield === 'front skid plate')).toBe(true)
  })

  it('a seal not stated is to be looked up, and none is bought', () => {
    const plan = planExample('tind-4', {
      sheet: patched(replace('/gearcases/front/openings/drain/seals', [{ kind: 'not stated' }])),
    })
    const seal = plan.seals.find(({ part }) => part.path.startsWith('/gearcases/front/openings/drain'))
    expect(seal).toMatchObject({
      replace: 'cannot tell',
      buy: 0,
      reasons: [{ code: 'service/seal-not-known' }],
    })
  })
})
