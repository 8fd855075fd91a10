import { describe, expect, test } from 'vitest'
import { buildProcedure, validateProcedure } from '../../src/v1/procedure.js'
import type {
  Gearcase,
  Identity,
  MachineEventKind,
  ProcedureDocument,
  Shield,
  SpecSheet,
  Step,
} from '../../src/v1/spec.js'
import {
  build,
  filterSheet,
  makeCase,
  makeOpening,
  makeSheet,
  threeAxleSheet,
  varietySheet,
} from './sheets.js'

// Dangers of the trade: each as words of the plan, and as a writer's mistake that is reported.

const wordsOf = (steps: readonly Step[]) => steps.map((step) => step.do)
const codesOf = (procedure: ProcedureDocument, sheet = varietySheet) =>
  validateProcedure(procedure, sheet).map((item) => item.code)

describe('submerged, oil lost, contaminated, seal failed', () => {
  const afterEvent = (event: MachineEventKind, service = 'rear-change') => {
    const built = buildProcedure({ sheet: varietySheet, identity: {}, services: [service], events: [event] })
    if (!built.ok) throw new Error(JSON.stringify(built.findings))
    return built.value
  }

  test.each(['submersion', 'oil loss', 'contamination', 'seal failure'] as const)(
    '%s: carried, not run, not warmed, and the cold oil is no mistake',
    (event) => {
      const procedure = afterEvent(event)
      expect(wordsOf(procedure.steps).slice(0, 4)).toEqual([
        'read the manual',
        'wear protection',
        'carry to level ground',
        'chock the wheels',
      ])
      const pourIndex = wordsOf(procedure.steps).indexOf('pour the oil')
      expect(wordsOf(procedure.steps).slice(0, pourIndex)).not.toContain('park on level ground')
      expect(wordsOf(procedure.steps)).not.toContain('warm the oil')
      expect(codesOf(procedure)).toEqual([])
    },
  )

  test.each(['rebuild', 'storage'] as const)('%s: driven in and warmed as always', (event) => {
    expect(wordsOf(afterEvent(event).steps)).toContain('warm the oil')
  })

  test('a level check alone does not run it either', () => {
    const procedure = afterEvent('submersion', 'rear-check')
    expect(wordsOf(procedure.steps)).not.toContain('park on level ground')
    expect(codesOf(procedure)).toEqual([])
  })

  test('a writer who drives it in or warms it is stopped; a run on new oil is right', () => {
    const driven = { ...build(varietySheet, ['rear-change']), events: ['submersion'] } as const
    expect(validateProcedure(driven, varietySheet).map((item) => [item.code, item.path])).toEqual([
      ['procedure/machine-must-not-run', `/steps/${wordsOf(driven.steps).indexOf('warm the oil')}`],
      ['procedure/machine-must-not-run', `/steps/${wordsOf(driven.steps).indexOf('park on level ground')}`],
    ])
  })
})

describe('chocks and supports', () => {
  const withAxle = (axle: string | undefined, supports: readonly string[], lifts = 'front') => {
    const front = makeCase('front gearcase', { access: 'front' })
    const machine = {
      ...varietySheet.machine,
      supports: {
        'front-beam': { at: 'front beam', axle: lifts },
        'rear-beam': { at: 'rear beam', axle: 'rear' },
      },
    }
    const gearcase: Gearcase = {
      ...front,
      access: { kind: 'raised', supports },
      ...(axle === undefined ? {} : { axle }),
    }
    return makeSheet({ front: gearcase }, { machine })
  }
  const foundIn = (sheet: SpecSheet) =>
    buildProcedure({ sheet, identity: {}, services: ['change'] }).findings.map((finding) => [
      finding.code,
      finding.path,
    ])

  test('supports that lift another axle than the gearcase has are not used, and a writer hears of it', () => {
    const sheet = withAxle('front', ['front-beam'], 'rear')
    const expected = [['procedure/supports-on-another-axle', '/gearcases/front/access']]
    expect(foundIn(sheet)).toEqual(expected)
    const procedure = build(withAxle('front', ['front-beam']), ['change'])
    expect(codesOf(procedure, sheet)[0]).toBe('procedure/supports-on-another-axle')
  })

  test('its own axle, no axle stated, or all wheels lifted is no mistake', () => {
    expect(foundIn(withAxle('front', ['front-beam']))).toEqual([])
    expect(foundIn(withAxle(undefined, ['front-beam'], 'rear'))).toEqual([])
    expect(foundIn(withAxle('front', ['front-beam', 'rear-beam']))).toEqual([])
  })

  test('the wheels that stay down are chocked before the jack moves', () => {
    const { steps } = build(withAxle('front', ['front-beam']), ['change'])
    const from = steps.findIndex((step) => step.do === 'chock the wheels')
    expect(steps.slice(from, from + 3).map((step) => [step.do, step.on])).toEqual([
      ['chock the wheels', '/machine/axles/rear'],
      ['raise the machine', '/machine/supports/front-beam'],
      ['set on stands', '/machine/supports/front-beam'],
    ])
  })
})

describe('1.2: several axles stay down', () => {
  const sheet = threeAxleSheet
  const chockAt = (...axles: readonly string[]) => {
    const built = build(sheet, ['change'])
    const place = built.steps.findIndex((step) => step.do === 'chock the wheels')
    const chocks = axles.map(
      (axle): Step => ({
        id: `chock-${axle}`,
        do: 'chock the wheels',
        on: `/machine/axles/${axle}`,
      }),
    )
    return { ...built, steps: built.steps.toSpliced(place, 1, ...chocks) }
  }

  test('one of two chocked is reported, with the step that chocks the other', () => {
    const [found, ...others] = validateProcedure(chockAt('middle'), sheet)
    expect(others).toEqual([])
    expect([found?.code, found?.severity]).toEqual(['procedure/axle-not-chocked', 'warning'])
    expect(found?.cures?.[0]).toMatchObject({
      op: 'add',
      value: { do: 'chock the wheels', on: '/machine/axles/rear' },
    })
  })

  test('both chocked, or all at once as built, is no mistake; none that stays is the graver mistake alone', () => {
    expect(codesOf(chockAt('middle', 'rear'), sheet)).toEqual([])
    expect(codesOf(build(sheet, ['change']), sheet)).toEqual([])
    expect(codesOf(chockAt('front'), sheet)).toEqual(['procedure/chocks-on-lifted-wheels'])
  })
})

describe('1.4: several ways of draining', () => {
  const caseWith = (emptying: Gearcase['emptying'], more: Partial<Gearcase['openings']> = {}): SpecSheet => {
    const rear = makeCase('rear gearcase', {})
    const side = makeOpening('side drain', [{ role: 'drain' }])
    return makeSheet({ rear: { ...rear, openings: { ...rear.openings, side, ...more }, emptying } })
  }
  const plug = (opening: string) => ({ kind: 'drain plug', opening }) as const
  const worked = (steps: readonly Step[], action: Step['do']) =>
    steps.flatMap((step) => (step.do === action ? step.on : []))
  const drains = ['/gearcases/rear/openings/drain', '/gearcases/rear/openings/side']

  test('two plugs that the machine certainly has are both opened, and the oil is inspected once', () => {
    const sheet = caseWith([plug('drain'), plug('side')])
    const { steps } = build(sheet, ['change'])
    expect(worked(steps, 'let drain')).toEqual(drains)
    expect(worked(steps, 'tighten').slice(0, 2)).toEqual(drains)
    expect(worked(steps, 'inspect the oil')).toEqual(['/gearcases/rear'])
    expect(wordsOf(steps).indexOf('inspect the oil')).toBeGreaterThan(wordsOf(steps).lastIndexOf('let drain'))
    expect(codesOf(build(sheet, ['change']), sheet)).toEqual([])
  })

  test('a written procedure that opens only the first is reported', () => {
    const sheet = caseWith([plug('drain'), plug('side')])
    const built = build(sheet, ['change'])
    const steps = built.steps.filter((step) => !step.on?.includes('/openings/side'))
    expect(codesOf({ ...built, steps }, sheet)).toEqual(['procedure/drain-left-closed'])
  })

  test('another way to empty, or a fill plug, is a second choice of the manual, so it stays closed', () => {
    const emptyingWays = [plug('drain'), { kind: 'suction', opening: 'fill' }, plug('fill')] as const
    const { steps } = build(caseWith(emptyingWays), ['change'])
    expect(worked(steps, 'let drain')).toEqual(drains.slice(0, 1))
    expect(worked(steps, 'suck out the oil')).toEqual([])
  })

  test('of plugs of which the machine has one, each is shown and the oil is inspected once, after the last', () => {
    const partOnlyIn = (variant: string, name: string) =>
      makeOpening(name, [{ role: 'drain' }], { appliesTo: { variants: [variant] } })
    const sheet = caseWith([plug('side'), plug('drain')], {
      side: partOnlyIn('plain', 'side drain'),
      drain: partOnlyIn('winch', 'drain plug'),
    })
    const built = buildProcedure({ sheet, identity: {}, services: ['change'] })
    const steps = built.ok ? built.value.steps : []
    expect(worked(steps, 'let drain')).toEqual(drains.toReversed())
    expect(worked(steps, 'inspect the oil')).toEqual(['/gearcases/rear'])
  })
})

describe('1.6: unknown variant', () => {
  const fillOn = (name: string, variants: readonly string[]) =>
    makeOpening(name, [{ role: 'fill' }], { appliesTo: { variants } })
  const withFills = (otherFills: readonly string[]): SpecSheet => {
    const rear = makeCase('rear gearcase', {})
    const fills = { fill: fillOn('fill plug', ['plain']), top: fillOn('top plug', otherFills) }
    return makeSheet({ rear: { ...rear, openings: { ...rear.openings, ...fills } } })
  }
  const stepsAtTop = (sheet: SpecSheet, identity: Identity) => {
    const built = buildProcedure({ sheet, identity, services: ['change'] })
    if (!built.ok) throw new Error('no procedure')
    return { built: built.value, top: built.value.steps.filter(({ on }) => on?.includes('/openings/top')) }
  }

  test('an alternative fill plug has its steps, each with its condition, and nothing is poured unmeasured', () => {
    const sheet = withFills(['winch'])
    const { built, top } = stepsAtTop(sheet, {})
    expect(wordsOf(top)).toEqual([
      ...['clean around', 'crack loose', 'nip by hand', 'take out', 'pour the oil', 'wait for the hose'],
      ...['take off old seal', 'wipe the seal face', 'fit new seal', 'fit', 'tighten'],
    ])
    for (const { id, do: action, values } of top)
      if (!/seal$/.test(action))
        expect([id, values?.['onlyIf']]).toEqual([id, '/gearcases/rear/openings/top/appliesTo'])
    expect(built.steps[0]?.do).toBe('find the variant')
    expect(validateProcedure(built, sheet).filter(({ code }) => code !== 'procedure/part-not-known')).toEqual(
      [],
    )
  })

  test('where one machine may have both, or the variant is known, oil is poured through one', () => {
    for (const { top } of [
      stepsAtTop(withFills(['winch', 'plain']), {}),
      stepsAtTop(withFills(['winch']), { variant: 'plain' }),
    ])
      expect(wordsOf(top)).toEqual([])
  })

  const twoCases = makeSheet({ rear: makeCase('rear gearcase', {}) })
  const differingSheet: SpecSheet = {
    ...twoCases,
    overrides: [
      {
        when: { variants: ['winch'] },
        set: [
          {
            kind: 'value',
            path: '/gearcases/rear/oilSpace/fill/drainAndRefill',
            to: { kind: 'nominal', value: '1.1', unit: 'L' },
          },
        ],
      },
    ],
  }
  const first = (sheet: SpecSheet, identity: Identity, service = 'change') => {
    const built = buildProcedure({ sheet, identity, services: [service] })
    return built.ok ? built.value.steps[0]?.do : undefined
  }

  test('where only a figure differs, the first step is to find it', () => {
    expect(first(differingSheet, {})).toBe('find the variant')
  })

  test('not where the variant is known, nor where no figure of the work differs', () => {
    for (const variant of ['winch', 'plain'])
      expect(first(differingSheet, { variant })).toBe('read the manual')
    expect(first(twoCases, {})).toBe('read the manual')
  })
})

test('a visit ends with pan and chocks away, also where only levels are checked', () => {
  for (const service of ['rear-check', 'rear-change', 'glass-check'])
    expect(wordsOf(build(varietySheet, [service]).steps).slice(-2)).toEqual(['clear away', 'record'])
})

describe('the last check, guards and secured parts', () => {
  const SECURE = [
    { item: 'loader', how: 'lower it to the ground', when: 'before work' },
    { item: 'PTO', how: 'disengage it', when: 'before a run' },
  ] as const
  const planGuarded = (guards: Shield['guards'], access: 'from the ground' | 'front', recheck = false) => {
    const method = recheck ? ({ method: 'to level hole', attitude: 'level on its wheels' } as const) : {}
    const sheet = makeSheet({ box: makeCase('box', { access, shield: true, recheck, ...method }) })
    const shields = Object.entries(sheet.shields ?? {}).map(([id, shield]) => [id, { ...shield, guards }])
    const machine = { ...sheet.machine, secure: SECURE }
    return { ...sheet, machine, shields: Object.fromEntries(shields) } as SpecSheet
  }
  const LATE: readonly string[] = [
    'tighten',
    'wipe down',
    'let a leak show',
    'check for leaks',
    'refit shield',
    'lower the machine',
    'secure the machine',
    'clear away',
    'short run',
    'stop the engine',
    'chock the wheels',
    'record',
  ]
  const lateWords = (sheet: SpecSheet) => {
    const words = wordsOf(build(sheet, ['change']).steps)
    return words.slice(words.lastIndexOf('tighten')).filter((word) => LATE.includes(word))
  }
  const RUN = ['secure the machine', 'clear away', 'short run', 'stop the engine', 'chock the wheels']

  test('a guard over moving parts goes back before the run, and the leak check follows the run', () => {
    expect(lateWords(planGuarded('moving parts', 'from the ground'))).toEqual([
      ...['tighten', 'wipe down', 'check for leaks', 'refit shield'],
      ...[...RUN, 'secure the machine', 'check for leaks', 'clear away', 'record'],
    ])
  })

  test('a plate under the machine goes back after the last look', () => {
    expect(lateWords(planGuarded('the underside', 'from the ground'))).toEqual([
      ...[
        'tighten',
        'wipe down',
        ...RUN,
        'secure the machine',
        'check for leaks',
        'refit shield',
        'clear away',
        'record',
      ],
    ])
  })

  test('a plate that needs the machine raised: wiped dry, a wait on the stands, plate on, lowered, run, looked at', () => {
    expect(lateWords(planGuarded('the underside', 'front'))).toEqual([
      ...['tighten', 'wipe down', 'let a leak show', 'check for leaks', 'refit shield', 'lower the machine'],
      ...[...RUN, 'secure the machine', 'check for leaks', 'clear away', 'record'],
    ])
  })

  test('every one of them is right as written, also with a second level check', () => {
    for (const guards of ['moving parts', 'the underside', 'not stated', undefined] as const)
      for (const access of ['from the ground', 'front'] as const)
        for (const recheck of [false, true]) {
          const sheet = planGuarded(guards, access, recheck)
          expect(codesOf(build(sheet, ['change']), sheet)).toEqual([])
        }
  })

  const checkWithout = (sheet: SpecSheet, isLeftOut: (step: Step, place: number) => boolean) => {
    const procedure = build(sheet, ['change'])
    const steps = procedure.steps.filter((step, place) => !isLeftOut(step, place))
    return codesOf({ ...procedure, steps }, sheet)
  }

  test('each has a finding: guard off, chocks in place, PTO on, loader up, no look after the run', () => {
    const sheet = planGuarded('moving parts', 'from the ground')
    const last = build(sheet, ['change']).steps.findLastIndex((step) => step.do === 'check for leaks')
    expect(checkWithout(sheet, (step) => step.do === 'refit shield')).toContain(
      'procedure/guard-not-refitted',
    )
    expect(checkWithout(sheet, (step) => step.do === 'clear away')).toEqual([
      'procedure/chocks-or-pan-in-place',
    ])
    expect(checkWithout(sheet, (step) => step.on === '/machine/secure/0')).toContain(
      'procedure/machine-not-secured',
    )
    expect(checkWithout(sheet, (step) => step.on === '/machine/secure/1')).toContain(
      'procedure/machine-not-secured-for-run',
    )
    expect(checkWithout(sheet, (_step, place) => place === last)).toEqual([
      'procedure/leaks-not-checked-after-run',
    ])
  })
})

describe('an opening that turns with its wheel, reached from the ground', () => {
  const makeHub = (more: Parameters<typeof makeCase>[1] = {}) =>
    makeSheet({
      hub: makeCase('hub', {
        out: 'sole opening by wheel',
        method: 'to level hole',
        attitude: 'level on its wheels',
        instances: true,
        ...more,
      }),
    })

  test('the machine is rolled, one side at a time: plug in, pan and chocks away, roll, chocks in, pan back', () => {
    const sheet = makeHub()
    const built = buildProcedure({ sheet, identity: {}, services: ['change'] })
    expect(built.findings.map((finding) => [finding.severity, finding.code])).toEqual([
      ['info', 'procedure/wheel-on-the-ground'],
      ['info', 'procedure/wheel-on-the-ground'],
    ])
    if (!built.ok) throw new Error('not built')
    const { steps } = built.value
    const rolls = steps.filter((step) => step.do === 'roll the machine').map((step) => step.at)
    expect(rolls).toEqual([
      { instance: 'left', wheelMark: 'mark down' },
      { instance: 'left', wheelMark: 'mark level' },
      { instance: 'right', wheelMark: 'mark down' },
      { instance: 'right', wheelMark: 'mark level' },
    ])
    const second = steps.findIndex((step) => step.at?.wheelMark === 'mark level')
    expect(wordsOf(steps).slice(second - 2, second + 3)).toEqual([
      'nip by hand',
      'clear away',
      'roll the machine',
      'chock the wheels',
      'place the pan',
    ])
    expect(codesOf(built.value, sheet)).toEqual([])
  })

  test('a level that is checked again after the run is right too', () => {
    const sheet = makeHub({ recheck: true })
    expect(codesOf(build(sheet, ['change']), sheet)).toEqual([])
    expect(codesOf(build(sheet, ['check']), sheet)).toEqual([])
  })

  test('a writer who turns the wheel on the ground, or rolls with a plug out or on stands, is stopped', () => {
    const sheet = makeHub()
    const fullProcedure = build(sheet, ['change'])
    const turnedSteps = fullProcedure.steps.map(
      (step): Step => (step.do === 'roll the machine' ? { ...step, do: 'turn the wheel' } : step),
    )
    expect(codesOf({ ...fullProcedure, steps: turnedSteps }, sheet)).toContain('procedure/wheel-not-clear')
    const untightenedSteps = fullProcedure.steps.filter((step) => step.do !== 'nip by hand')
    expect(codesOf({ ...fullProcedure, steps: untightenedSteps }, sheet)).toContain(
      'procedure/wheel-turned-with-plug-out',
    )
    const withRaising = fullProcedure.steps.flatMap((step): Step[] =>
      step.do === 'roll the machine'
        ? [{ id: `up-${step.id}`, do: 'raise the machine', on: '/machine/supports/front-beam' }, step]
        : [step],
    )
    expect(codesOf({ ...fullProcedure, steps: withRaising }, sheet)).toContain('procedure/run-on-stands')
  })
})

describe('filters and strainers', () => {
  const fullProcedure = build(filterSheet, ['sump-change'])
  const placeOf = (id: string) => fullProcedure.steps.findIndex((step) => step.id === id)
  const moved = (id: string, before: string) => {
    const steps = fullProcedure.steps.toSpliced(placeOf(id), 1)
    const to = steps.findIndex((step) => step.id === before)
    return {
      ...fullProcedure,
      steps: steps.toSpliced(to, 0, fullProcedure.steps.find((step) => step.id === id) as Step),
    }
  }

  test('off over a pan while the drain is open, looked into, on and tight before the drain closes and oil goes in', () => {
    const order = [
      'sump-drain-drain',
      'sump-pan-spin-on',
      'sump-filter-off-spin-on',
      'sump-look-at-filter-spin-on',
      'sump-wipe-face-spin-on',
      'sump-fit-filter-spin-on',
      'sump-tighten-filter-spin-on',
      'sump-pan-sump',
      'sump-take-off-sump',
      'sump-filter-off-suction',
      'sump-look-at-filter-suction',
      'sump-clean-filter-suction',
      'sump-fit-filter-suction',
      'sump-tighten-cover-sump',
      'sump-tighten-drain',
      'sump-pour-fill',
      'run',
      'sump-leaks',
    ]
    const places = order.map(placeOf)
    expect(places).toEqual(places.toSorted((place, other) => place - other))
    expect(places).not.toContain(-1)
    // A new filter is not cleaned, and a filter behind a cover has no tightening.
    expect(placeOf('sump-clean-filter-spin-on')).toBe(-1)
    expect(placeOf('sump-tighten-filter-suction')).toBe(-1)
  })

  test.each([
    [
      'a filter off a full case',
      'sump-filter-off-spin-on',
      'sump-drain-drain',
      ['area-not-cleaned', 'filter-before-drain'],
    ],
    [
      'oil poured on a loose filter',
      'sump-tighten-filter-spin-on',
      'sump-hose-fill',
      ['drain-not-tightened'],
    ],
    [
      'a strainer out through its cover',
      'sump-filter-off-suction',
      'sump-take-off-sump',
      ['filter-not-reached'],
    ],
  ])('%s is reported', (_what, id, before, codes) => {
    expect(codesOf(moved(id, before), filterSheet)).toEqual(codes.map((code) => `procedure/${code}`))
  })
})
