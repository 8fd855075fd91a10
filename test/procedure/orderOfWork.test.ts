import { describe, expect, test } from 'vitest'
import { buildProcedure, validateProcedure } from '../../src/v1/procedure.js'
import type { Action, Seal, SpecSheet, Step } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { build, makeCase, makeSheet, O_RING, visitArbitrary, WASHER } from './sheets.js'

// A second check of built orders of work, without states, needs or effects: it compares only positions in the list.

function places(steps: readonly Step[], action: Action, on?: string, instance?: string): readonly number[] {
  return steps.flatMap((step, place) =>
    step.do === action && (on === undefined || step.on === on) && step.at?.instance === instance
      ? [place]
      : [],
  )
}

interface OpeningOfVisit {
  readonly path: string
  readonly instance: string | undefined
  readonly roles: readonly string[]
  readonly seals: readonly Seal[]
  readonly magnet: boolean
}

function listOpenings(sheet: SpecSheet): readonly OpeningOfVisit[] {
  return Object.entries(sheet.gearcases).flatMap(([id, gearcase]) =>
    (gearcase.instances === undefined ? [undefined] : Object.keys(gearcase.instances)).flatMap((instance) =>
      Object.entries(gearcase.openings).map(([opening, details]) => ({
        path: `/gearcases/${id}/openings/${opening}`,
        instance,
        roles: details.uses.map((use) => use.role),
        seals: details.seals,
        magnet: details.magnet === true,
      })),
    ),
  )
}

function eachVisit(check: (sheet: SpecSheet, steps: readonly Step[]) => void): void {
  law(50, visitArbitrary, ({ sheet, services }) => {
    check(sheet, build(sheet, services).steps)
  })
}

describe('by places in the list alone', () => {
  test('every opening is cleaned around, cracked, taken out, fitted and tightened equally often, in that order', () => {
    eachVisit((sheet, steps) => {
      for (const { path, instance } of listOpenings(sheet)) {
        const rounds = (['clean around', 'crack loose', 'fit', 'tighten'] as const).map((action) =>
          places(steps, action, path, instance),
        )
        const [clean, crack, fit, tighten] = rounds
        for (const round of rounds) expect(round.length).toBe(crack?.length)
        for (const [nth, at] of (crack ?? []).entries()) {
          expect(clean?.[nth]).toBeLessThan(at)
          expect(fit?.[nth]).toBeGreaterThan(at)
          expect(tighten?.[nth]).toBeGreaterThan(fit?.[nth] ?? 0)
          const out = places(steps, 'take out', path, instance)
          expect(out.some((place) => place > at && place < (fit?.[nth] ?? 0))).toBe(true)
        }
      }
    })
  })

  test('every washer that is replaced at every opening is replaced as often as its plug is tightened', () => {
    eachVisit((sheet, steps) => {
      for (const { path, instance, seals } of listOpenings(sheet))
        for (const [nth, seal] of seals.entries()) {
          if (seal.kind !== 'crush washer') continue
          const newSealPlace = places(steps, 'fit new seal', `${path}/seals/${nth}`, instance)
          expect(newSealPlace.length).toBe(places(steps, 'tighten', path, instance).length)
        }
    })
  })

  test('no drain plug is touched before a fill plug was cracked and nipped; it is tight before oil is poured', () => {
    eachVisit((sheet, steps) => {
      for (const drain of listOpenings(sheet)) {
        if (!drain.roles.includes('drain') || drain.roles.includes('fill')) continue
        const [crackDrainPlace] = places(steps, 'crack loose', drain.path, drain.instance)
        if (crackDrainPlace === undefined) continue
        const fill = drain.path.replace('/drain', '/fill')
        const [crackPlace] = places(steps, 'crack loose', fill, drain.instance)
        const [nipped] = places(steps, 'nip by hand', fill, drain.instance)
        const [out] = places(steps, 'take out', fill, drain.instance)
        const [drained] = places(steps, 'let drain', drain.path, drain.instance)
        const [tightenPlace] = places(steps, 'tighten', drain.path, drain.instance)
        const [pourPlace] = places(steps, 'pour the oil', fill, drain.instance)
        const order = [crackPlace, nipped, crackDrainPlace, out, drained, tightenPlace, pourPlace]
        expect(order).not.toContain(undefined)
        expect(order).toEqual([...order].sort((item, other) => (item ?? 0) - (other ?? 0)))
      }
    })
  })

  test('a magnet is looked at, then wiped, before its plug goes back', () => {
    eachVisit((sheet, steps) => {
      for (const { path, instance, magnet } of listOpenings(sheet)) {
        const [fit] = places(steps, 'fit', path, instance)
        if (!magnet || fit === undefined) continue
        const [inspectPlace] = places(steps, 'inspect the magnet', path, instance)
        const [cleanPlace] = places(steps, 'clean the magnet', path, instance)
        expect(inspectPlace).toBeLessThan(cleanPlace ?? 0)
        expect(cleanPlace).toBeLessThan(fit)
      }
    })
  })

  test('chocks before every lift, a stand after every jack, as many times down as up, and a run only on the wheels', () => {
    eachVisit((_sheet, steps) => {
      let raisedAxles = new Set<string>()
      let chocked = false
      for (const [place, step] of steps.entries()) {
        if (step.do === 'chock the wheels') chocked = true
        if (['warm the oil', 'short run', 'park on level ground'].includes(step.do)) {
          expect(raisedAxles.size).toBe(0)
          chocked = false
        }
        if (step.do === 'raise the machine') {
          expect(chocked).toBe(true)
          expect(steps[place + 1]).toMatchObject({ do: 'set on stands', on: step.on })
          expect(raisedAxles.has(step.on ?? '')).toBe(false)
          raisedAxles.add(step.on ?? '')
        }
        if (step.do === 'lower the machine') {
          expect(raisedAxles.size).toBeGreaterThan(0)
          raisedAxles = new Set()
        }
      }
      expect(raisedAxles.size).toBe(0)
    })
  })

  test('a shield is refitted as often as it is removed, each time after a leak check behind it', () => {
    eachVisit((sheet, steps) => {
      const off = places(steps, 'remove shield')
      const on = places(steps, 'refit shield')
      expect(on.length).toBe(off.length)
      const isBehind = (step: Step) => sheet.gearcases[step.on?.split('/')[2] ?? '']?.shields !== undefined
      for (const [nth, back] of on.entries()) {
        expect(off[nth]).toBeLessThan(back)
        const before = steps.slice(0, back)
        const lastClosing = before.findLastIndex((step) => step.do === 'tighten' && isBehind(step))
        const looked = before.findLastIndex((step) => step.do === 'check for leaks' && isBehind(step))
        expect(looked).toBeGreaterThan(lastClosing)
      }
    })
  })

  test('after an oil change the machine runs, and every gearcase is looked at after the run', () => {
    eachVisit((_sheet, steps) => {
      const run = steps.findLastIndex((step) => step.do === 'short run')
      expect(run === -1).toBe(!steps.some((step) => step.do === 'pour the oil'))
      if (run === -1) return
      for (const [place, step] of steps.entries())
        if (step.do === 'pour the oil' || step.do === 'let drain') {
          const gearcase = step.on?.split('/')[2]
          const look = steps.findLastIndex(
            (candidate) =>
              candidate.do === 'check for leaks' &&
              candidate.on === `/gearcases/${gearcase}` &&
              candidate.at?.instance === step.at?.instance,
          )
          expect(place).toBeLessThan(run)
          expect(look).toBeGreaterThan(run)
        }
    })
  })
})

describe('unknown facts of the machine', () => {
  const winch = { variants: ['winch'] }

  test('which seal it has: a new one is always correct', () => {
    const sheet = makeSheet(
      { rear: makeCase('rear', { seal: O_RING }) },
      {
        overrides: [
          {
            when: winch,
            set: [{ kind: 'seal', path: '/gearcases/rear/openings/drain/seals/0', to: WASHER }],
          },
        ],
      },
    )
    const listActions = (identity: { variant: string } | Record<string, never>) => {
      const built = buildProcedure({ sheet, identity, services: ['change'] })
      if (!built.ok) throw new Error('not built')
      expect(validateProcedure(built.value, sheet)).toEqual([])
      return built.value.steps
        .filter((step) => step.on === '/gearcases/rear/openings/drain/seals/0')
        .map((step) => step.do)
    }
    expect(listActions({ variant: 'plain' })).toEqual(['inspect the seal'])
    expect(listActions({ variant: 'winch' })).toEqual(['take off old seal', 'fit new seal'])
    expect(listActions({})).toEqual(['take off old seal', 'fit new seal'])
  })

  test('which oil it needs: the additive step is included if some oil needs it', () => {
    const plainCase = makeCase('rear', {})
    const { oilSpace: mixed } = makeCase('rear', { additive: 'always' })
    if (mixed.kind !== 'own') throw new Error('an own oil space is required')
    const sheet = makeSheet(
      { rear: plainCase },
      {
        overrides: [
          { when: winch, set: [{ kind: 'oils', path: '/gearcases/rear/oilSpace/oils', to: mixed.oils }] },
        ],
      },
    )
    const adds = (identity: { variant: string } | Record<string, never>) => {
      const built = buildProcedure({ sheet, identity, services: ['change'] })
      if (!built.ok) throw new Error('not built')
      return built.value.steps.filter((step) => step.do === 'add the additive').length
    }
    expect([adds({ variant: 'plain' }), adds({ variant: 'winch' }), adds({})]).toEqual([0, 1, 1])
  })

  test('a drain temperature that only an override states is pointed to', () => {
    const path = '/gearcases/rear/drainTemperature'
    const to = { kind: 'nominal', value: '40', unit: 'degC' } as const
    const sheet = makeSheet(
      { rear: makeCase('rear', {}) },
      { overrides: [{ when: winch, set: [{ kind: 'value', path, to }] }] },
    )
    const warmStep = build(sheet, ['change'], { variant: 'winch' }).steps.find(
      (step) => step.do === 'warm the oil',
    )
    expect(warmStep?.values).toEqual({ rear: path })
  })

  test('oils that are not stated, and a shield that this machine lacks', () => {
    const rear = makeCase('rear', { shield: true })
    if (rear.oilSpace.kind !== 'own') throw new Error('an own oil space is required')
    const sheet = makeSheet({
      rear: { ...rear, oilSpace: { ...rear.oilSpace, oils: { kind: 'not stated' } } },
    })
    const guard = sheet.shields?.['pan-guard']
    if (guard === undefined) throw new Error('a shield is required')
    const winchSheet = { ...sheet, shields: { 'pan-guard': { ...guard, appliesTo: winch } } }
    const steps = build(winchSheet, ['change'], { variant: 'plain' }).steps
    expect(places(steps, 'remove shield')).toEqual([])
    expect(validateProcedure(build(winchSheet, ['change'], { variant: 'plain' }), winchSheet)).toEqual([])
    const undecided = buildProcedure({ sheet: winchSheet, identity: {}, services: ['change'] })
    expect(undecided.findings.map((finding) => [finding.code, finding.path])).toEqual([
      ['procedure/part-not-known', '/shields/pan-guard'],
    ])
    if (!undecided.ok) throw new Error('not built')
    expect(undecided.value.steps.find((step) => step.do === 'remove shield')?.values?.['onlyIf']).toBe(
      '/shields/pan-guard/appliesTo',
    )
  })
})
