import { describe, expect, it } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import { kitContents } from '../../src/v1/service.js'
import type { FunnelAndHose, Toolbox, TorqueWrench } from '../../src/v1/spec.js'
import { patched, replace } from '../support/patched.js'
import { planExample, planRequest, requestExample } from '../support/planExample.js'

const codes = (found: readonly { readonly code: string }[]) => found.map(({ code }) => code)

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
      reasons: [{ code: 'service/turned-by-hand' }],
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

  it('for a hexagon without a size the tool is unknown', () => {
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
    const HOLD = 'service/stands-strong-enough'
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

    it('a mass that is not stated, or has no upper end, is `cannot tell`', () => {
      const undecidedPair = ['cannot tell', 'pair', 'service/mass-not-stated']
      expect(stands({ pair: [2, 1000] }, { kind: 'not stated' })).toEqual([undecidedPair])
      expect(stands({ pair: [2, 1000] }, { kind: 'limits', min: '600', unit: 'kg' })).toEqual([undecidedPair])
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

    it('one sufficient set comes before two sets', () => {
      expect(stands({ one: [1, 2000], pair: [2, 1000] })).toEqual([['fits', 'pair', HOLD]])
    })
  })

  describe('ramps: one a wheel that is driven up, each for the whole machine of 640 kg', () => {
    const planOn = (
      sets: Toolbox['ramps'],
      { stands = {}, raiseOn }: { stands?: Toolbox['stands']; raiseOn?: 'stands' | 'ramps' } = {},
      ramps: boolean | 'silent' = true,
    ) => {
      const plan = planExample('tind-4', {
        ...toolbox({ stands, ...(sets && { ramps: sets }) }),
        ...(raiseOn && { request: { raiseOn } }),
        sheet: (given) => {
          const axles = Object.entries(given.machine.axles).map(([id, axle]) => [
            id,
            { ...axle, ...(ramps !== 'silent' && { ramps }) },
          ])
          return { ...given, machine: { ...given.machine, axles: Object.fromEntries(axles) } }
        },
      })
      const found = plan.tools.filter(({ kind }) => kind === 'stands' || kind === 'ramps')
      return {
        ramps: plan.steps.some((step) => step.do === 'drive onto ramps'),
        tools: found.map(({ kind, verdict, reasons }) => [kind, verdict, reasons[0]?.code]),
        codes: codes(plan.findings).filter((code) => code.includes('ramps')),
      }
    }
    const set = (count: number, value: number) =>
      ({ pair: { name: 'pair', count, rating: { value, unit: 'kg' } } }) as const

    it('where the toolbox has no stands and the manual permits ramps, the plan uses them', () => {
      expect(planOn(set(2, 640))).toEqual({
        ...{ ramps: true, codes: [] },
        tools: [['ramps', 'fits', 'service/ramps-strong-enough']],
      })
    })

    it.each([
      [2, 639.9, 'service/ramps-too-weak'],
      [1, 1000, 'service/ramps-too-few'],
    ])('%s of %s kg do not do', (count, kilograms, code) => {
      const { tools, codes: found } = planOn(set(count, kilograms))
      expect(tools).toEqual([['ramps', 'does not fit', code]])
      expect(found).toEqual([code])
    })

    it('stands come first where there are some, the manual is silent or forbids ramps', () => {
      expect(planOn(set(2, 1000), { stands: set(2, 1000) }).ramps).toBe(false)
      expect(planOn(set(2, 1000), {}, false).ramps).toBe(false)
      expect(planOn(set(2, 1000), {}, 'silent').tools).toEqual([
        ['stands', 'missing', 'service/stands-missing'],
      ])
    })

    it('requested ramps are used if the manual does not mention them, and refused if it forbids them', () => {
      const asked = { stands: set(2, 1000), raiseOn: 'ramps' } as const
      expect(planOn(undefined, asked, 'silent')).toEqual({
        ...{ ramps: true, tools: [['ramps', 'missing', 'service/ramps-missing']] },
        codes: ['service/ramps-missing', 'procedure/ramps-not-stated'],
      })
      expect(planOn(set(2, 1000), asked, false)).toMatchObject({
        ...{ ramps: false, codes: ['procedure/ramps-not-possible'] },
      })
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
      expect(found({ date })).toEqual([['service/calibration-expired', `${WRENCH}/calibration/date`, dueOn]])
    })

    it('dated 7 October 2022 has a day left', () => {
      expect(found({ date: '2022-10-07' })).toEqual([])
    })

    it.each([
      [4999, []],
      [5000, [['service/calibration-cycles-used-up', `${WRENCH}/calibration/cyclesSince`, undefined]]],
      [5001, [['service/calibration-cycles-used-up', `${WRENCH}/calibration/cyclesSince`, undefined]]],
    ])('%s cycles', (cyclesSince, expected) => {
      expect(found({ date: '2023-02-11', cyclesSince })).toEqual(expected)
    })

    it('both may have expired, and both are reported', () => {
      expect(found({ date: '2022-01-01', cyclesSince: 6000 })).toHaveLength(2)
    })

    it('a date to come, at the end of the calendar too, has not run out', () => {
      for (const date of ['2023-10-07', '9998-12-31', '9999-12-31'])
        expect(found({ date, cyclesSince: 0 })).toEqual([])
    })

    it('a missing date is information', () => {
      expect(found(undefined)).toEqual([['service/calibration-not-recorded', WRENCH, undefined]])
    })
  })

  describe('a wrench whose scale ends below where it begins', () => {
    const withScale = (highest: number) =>
      planExample('tind-4', {
        toolbox: (given) => {
          const click = given.wrenches['small-click'] as TorqueWrench
          const scales = click.scales.map((scale) => ({ ...scale, highest }))
          return { ...given, wrenches: { ...given.wrenches, 'small-click': { ...click, scales } } }
        },
      })

    it('is left out and reported for each scale; the other wrenches are used', () => {
      const plan = withScale(3)
      expect(
        plan.findings
          .filter(({ code }) => code === 'service/scale-reversed')
          .map(({ severity, path, params }) => [severity, path, params]),
      ).toEqual([
        [
          'error',
          '/wrenches/small-click/scales/0',
          {
            wrench: 'small click wrench',
            lowest: { value: 5, unit: 'N.m' },
            highest: { value: 3, unit: 'N.m' },
          },
        ],
        [
          'error',
          '/wrenches/small-click/scales/1',
          {
            wrench: 'small click wrench',
            lowest: { value: 4, unit: 'lbf.ft' },
            highest: { value: 3, unit: 'lbf.ft' },
          },
        ],
      ])
      expect(plan.wrenches.use).toEqual(['half-inch-click'])
    })

    it('a scale of one mark alone stays', () => {
      expect(withScale(5).findings.map(({ code }) => code)).not.toContain('service/scale-reversed')
    })
  })

  describe('several of a kind', () => {
    const longFunnel = requestExample('tind-4').toolbox?.fillers['long-hose'] as FunnelAndHose
    const wideFunnel = {
      ...longFunnel,
      name: 'wide hose',
      hose: { ...longFunnel.hose, bore: { value: 20, unit: 'mm' as const } },
    }

    it('the quickest hose is taken and listed, in whatever order they hang', () => {
      for (const fillers of [
        { long: longFunnel, wide: wideFunnel },
        { wide: wideFunnel, long: longFunnel },
      ]) {
        const plan = planExample('tind-4', toolbox({ fillers }))
        const hoses = plan.tools.filter(({ kind }) => kind === 'filler')
        expect(hoses).toMatchObject([{ have: { id: 'wide', name: 'wide hose' }, verdict: 'fits' }])
        expect(hoses[0]?.for).toHaveLength(2)
        expect(kitContents(plan).tools).toContainEqual({ id: 'wide', name: 'wide hose' })
      }
    })

    it('without a temperature the first hose is listed, and its time is unknown', () => {
      const { ambient: _ambient, ...request } = requestExample(
        'tind-4',
        toolbox({ fillers: { long: longFunnel, wide: wideFunnel } }),
      )
      const planned = planRequest(request)
      if (!planned.ok) throw new Error('no plan')
      expect(planned.value.tools.filter(({ kind }) => kind === 'filler')).toMatchObject([
        { have: { id: 'long' } },
      ])
    })

    it('a missing hose is reported', () => {
      const plan = planExample('tind-4', toolbox({ fillers: {} }))
      const pours = plan.waits.filter(({ kind }) => kind === 'pour')
      expect(pours.map(({ reasons }) => reasons[0]?.code)).toEqual(['service/no-filler', 'service/no-filler'])
    })

    it('the smallest pan that holds all oil; reports pans that are too small, and no pan', () => {
      const pan = (value: number) => ({ name: `${value} mL`, size: { value, unit: 'mL' as const } })
      const verdict = (pans: Toolbox['pans']) => {
        const plan = planExample('tind-4', toolbox({ pans }))
        return [plan.pan?.verdict, plan.pan?.have?.id, ...codes(plan.findings)]
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
    const planned = planRequest({
      ...request,
      sheet: { ...sheet, machine: { ...sheet.machine, supports: {} } },
    })
    expect(planned.findings.length + (planned.ok ? planned.value.steps.length : 0)).toBeGreaterThan(0)
  })
})

describe('hand tools', () => {
  const toolsFor = (name: string) => planExample(name).handTools?.params

  it('of every step are listed: chocks, jack, brush, bar and scraper', () => {
    expect(toolsFor('tind-4')).toEqual({ tools: ['chocks', 'brush', 'breaker bar', 'scraper', 'jack'] })
  })

  it('include a torque wrench where the torque is in the manual alone', () => {
    expect(toolsFor('kvist-2')).toEqual({
      tools: ['chocks', 'brush', 'breaker bar', 'scraper', 'torque wrench'],
    })
    expect(toolsFor('bud-3')).toEqual({ tools: ['chocks', 'brush', 'breaker bar', 'scraper'] })
  })

  it('need no bar and no wrench for what is turned by hand', () => {
    const setHandDrive = (part: string) =>
      replace(`/gearcases/bevel/openings/${part}/drive`, { kind: 'hand' })
    const { handTools } = planExample('kvist-2', {
      sheet: patched(setHandDrive('fill'), setHandDrive('drain')),
    })
    expect(handTools?.params).toEqual({ tools: ['chocks', 'brush', 'scraper'] })
  })

  it('are not in a plan without steps', () => {
    expect(planExample('kvist-2', { services: [] })).not.toHaveProperty('handTools')
  })
})
