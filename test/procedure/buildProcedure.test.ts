import { describe, expect, test } from 'vitest'
import { readPointer } from '../../src/base/pointers.js'
import { buildProcedure, validateProcedure } from '../../src/v1/procedure.js'
import type { SpecSheet } from '../../src/v1/spec.js'
import { exampleMachines } from '../support/exampleMachines.js'
import { law } from '../support/law.js'
import { readExample } from '../support/readExample.js'
import { build, makeCase, makeSheet, sharedSheet, VARIETY, varietySheet, visitArbitrary } from './sheets.js'

describe('laws', () => {
  test('every built procedure validates with no finding', () => {
    law(50, visitArbitrary, ({ sheet, services }) => {
      const procedure = build(sheet, services)
      expect(validateProcedure(procedure, sheet).map((item) => `${item.path} ${item.code}`)).toEqual([])
    })
  })

  test('ids are unique and match the pattern, and every figure is in the sheet', () => {
    law(50, visitArbitrary, ({ sheet, services }) => {
      const { steps } = build(sheet, services)
      const ids = steps.map((step) => step.id)
      expect(new Set(ids).size).toBe(ids.length)
      for (const id of ids) expect(id).toMatch(/^[a-z][a-z0-9-]{0,63}$/)
      for (const step of steps)
        for (const pointer of [
          ...Object.values(step.values ?? {}),
          ...(step.on === undefined ? [] : [step.on]),
        ])
          expect(readPointer(sheet, pointer), pointer).toBeDefined()
    })
  })
})

describe('variety', () => {
  for (const id of Object.keys(VARIETY))
    for (const task of ['change', 'check'])
      test(`${id}: ${task}`, () => {
        const procedure = build(varietySheet, [`${id}-${task}`])
        expect(validateProcedure(procedure, varietySheet)).toEqual([])
      })

  test('all gearcases of all services: raised once a support, lowered once', () => {
    const procedure = build(varietySheet, ['change', 'check'])
    expect(validateProcedure(procedure, varietySheet)).toEqual([])
    const raisePlaces = procedure.steps
      .filter((step) => step.do === 'raise the machine')
      .map((step) => step.on)
    expect(raisePlaces).toEqual(['/machine/supports/front-beam', '/machine/supports/rear-beam'])
    expect(procedure.steps.filter((step) => step.do === 'lower the machine')).toHaveLength(1)
  })

  test('the fill plug is cracked and nipped before the drain plug is touched', () => {
    const ids = build(varietySheet, ['front-change']).steps.map((step) => step.id)
    expect(ids).toContain('front-crack-fill')
    expect(ids.indexOf('front-crack-fill')).toBeLessThan(ids.indexOf('front-nip-fill'))
    expect(ids.indexOf('front-nip-fill')).toBeLessThan(ids.indexOf('front-crack-drain'))
    expect(ids.indexOf('front-take-out-drain')).toBeLessThan(ids.indexOf('front-take-out-fill'))
    expect(ids.indexOf('front-take-out-fill')).toBeLessThan(ids.indexOf('front-drain-drain'))
  })

  test('a sole opening drains with its mark down and is filled with its mark level, on both sides', () => {
    const { steps } = build(varietySheet, ['hub-change'])
    const turns = steps.filter((step) => step.do === 'turn the wheel').map((step) => step.at)
    expect(turns).toEqual([
      { instance: 'left', wheelMark: 'mark down' },
      { instance: 'left', wheelMark: 'mark level' },
      { instance: 'right', wheelMark: 'mark down' },
      { instance: 'right', wheelMark: 'mark level' },
    ])
    const drained = steps.find((step) => step.do === 'let drain')
    expect(drained?.at).toEqual({ instance: 'left', wheelMark: 'mark down' })
  })

  test('a liquid gasket cures before oil; a paper gasket needs no wait', () => {
    const waits = (sheet: SpecSheet, service: string) =>
      build(sheet, [service]).steps.filter((step) => step.do === 'wait for the cure').length
    expect(waits(varietySheet, 'tail-change')).toBe(1)
    const paper = makeSheet({
      tail: makeCase('tail', {
        out: 'cover',
        coverSeal: { kind: 'gasket', material: 'paper', replace: 'every opening' },
      }),
    })
    expect(waits(paper, 'tail-change')).toBe(0)
  })

  test('a shared oil space is drained at both plugs and filled once', () => {
    const procedure = build(sharedSheet, ['change'])
    expect(validateProcedure(procedure, sharedSheet)).toEqual([])
    const drains = procedure.steps.filter((step) => step.do === 'let drain').map((step) => step.on)
    expect(drains).toEqual(['/gearcases/gearbox/openings/drain', '/gearcases/axle/openings/drain'])
    expect(procedure.steps.filter((step) => step.do === 'pour the oil')).toHaveLength(1)
  })

  test('a service that names only the sharer changes the owner’s oil', () => {
    const procedure = build(sharedSheet, ['axle-change'])
    expect(validateProcedure(procedure, sharedSheet)).toEqual([])
    const pour = procedure.steps.find((step) => step.do === 'pour the oil')
    expect(pour?.on).toBe('/gearcases/gearbox/openings/fill')
  })

  test('a check opens the level plug, gives it a new washer and drains nothing', () => {
    const actions = build(varietySheet, ['rear-check']).steps.map((step) => step.do)
    expect(actions).toContain('check the level')
    expect(actions).toContain('fit new seal')
    expect(actions).not.toContain('let drain')
    expect(actions).not.toContain('warm the oil')
    expect(actions).not.toContain('short run')
  })

  test('a check at a sight glass puts the pan under a fill plug that is the drain too', () => {
    const sheet = makeSheet({ rear: makeCase('rear', { out: 'sole opening', method: 'sight glass' }) })
    const procedure = build(sheet, ['check'])
    const ids = procedure.steps.map((step) => step.id)
    expect(ids.indexOf('rear-pan-fill')).toBeGreaterThan(-1)
    expect(ids.indexOf('rear-pan-fill')).toBeLessThan(ids.indexOf('rear-take-out-fill'))
    expect(validateProcedure(procedure, sheet)).toEqual([])
  })

  test('chocks stand at the axle that stays down', () => {
    const chock = build(varietySheet, ['front-change']).steps.find((step) => step.do === 'chock the wheels')
    expect(chock?.on).toBe('/machine/axles/rear')
  })

  test('a recheck of an opening in a wheel needs a second lift, with a finding', () => {
    const sheet = makeSheet({
      hub: makeCase('hub', {
        access: 'front',
        out: 'sole opening by wheel',
        method: 'to level hole',
        attitude: 'level on its wheels',
        recheck: true,
      }),
    })
    const built = buildProcedure({ sheet, identity: {}, services: ['change'] })
    expect(built.findings.map((finding) => finding.code)).toEqual(['procedure/second-lift'])
    if (!built.ok) throw new Error('not built')
    expect(validateProcedure(built.value, sheet)).toEqual([])
    expect(built.value.steps.filter((step) => step.do === 'lower the machine')).toHaveLength(2)
  })
})

describe('unknown facts, and impossible work', () => {
  const winchOnly = { variants: ['winch'] }

  test('a drain plug that only some variants have', () => {
    const sheet = makeSheet({ rear: makeCase('rear', { drainOnSome: winchOnly }) })
    const undecided = buildProcedure({ sheet, identity: {}, services: ['change'] })
    expect(undecided.findings.map((finding) => [finding.code, finding.path])).toEqual([
      ['procedure/part-not-known', '/gearcases/rear/openings/drain'],
    ])
    if (!undecided.ok) throw new Error('not built')
    const crackStep = undecided.value.steps.find((step) => step.id === 'rear-crack-drain')
    expect(crackStep?.values?.['onlyIf']).toBe('/gearcases/rear/openings/drain/appliesTo')
    const withoutWinch = buildProcedure({ sheet, identity: { variant: 'plain' }, services: ['change'] })
    expect(withoutWinch.ok).toBe(false)
    expect(withoutWinch.findings.map((finding) => finding.code)).toEqual(['procedure/no-way-to-empty'])
    const withPlug = buildProcedure({ sheet, identity: { variant: 'winch' }, services: ['change'] })
    expect(withPlug.findings).toEqual([])
  })

  test.each([
    ['no fill opening', { fill: undefined }, 'procedure/no-fill-opening'],
    ['no drain', { drain: undefined }, 'procedure/no-way-to-empty'],
  ])('%s', (_what, taken, code) => {
    const gearcase = makeCase('rear', {})
    const openings = Object.fromEntries(
      Object.entries({ ...gearcase.openings, ...taken }).flatMap(([id, opening]) =>
        opening === undefined ? [] : [[id, opening]],
      ),
    )
    const built = buildProcedure({
      sheet: makeSheet({ rear: { ...gearcase, openings } }),
      identity: {},
      services: ['change'],
    })
    expect(built.ok).toBe(false)
    expect(built.findings.map((finding) => finding.code)).toContain(code)
  })

  test('a level hole that the sheet does not have', () => {
    const gearcase = makeCase('rear', {
      method: 'to level hole',
      ownLevel: true,
      attitude: 'level on its wheels',
    })
    const { level: _level, ...openings } = gearcase.openings
    const built = buildProcedure({
      sheet: makeSheet({ rear: { ...gearcase, openings } }),
      identity: {},
      services: ['change'],
    })
    expect(built.findings.map((finding) => [finding.code, finding.severity])).toEqual([
      ['procedure/no-level-opening', 'error'],
    ])
  })

  test('a level on stands without supports, and a wheel that cannot leave the ground', () => {
    const stands = makeSheet({
      rear: makeCase('rear', { method: 'to level hole', attitude: 'level on stands' }),
    })
    expect(
      buildProcedure({ sheet: stands, identity: {}, services: ['change'] }).findings.map(
        (finding) => finding.code,
      ),
    ).toEqual(['procedure/no-supports'])
    const wheel = makeSheet({ hub: makeCase('hub', { out: 'sole opening by wheel' }) })
    expect(
      buildProcedure({ sheet: wheel, identity: {}, services: ['change'] }).findings.map(
        (finding) => finding.code,
      ),
    ).toEqual(['procedure/wheel-on-the-ground'])
    const nowhere = makeCase('rear', {})
    const sheetWithoutSupport = makeSheet({
      rear: { ...nowhere, access: { kind: 'raised', supports: ['roof'] } },
    })
    expect(
      buildProcedure({ sheet: sheetWithoutSupport, identity: {}, services: ['change'] }).findings.map(
        (finding) => finding.code,
      ),
    ).toEqual(['procedure/no-supports'])
  })

  test('an unknown service is refused with the known ones; a service for other machines is left out', () => {
    const sheet = makeSheet({ rear: makeCase('rear', {}) })
    const unknown = buildProcedure({ sheet, identity: {}, services: ['chnage'] })
    expect(unknown.ok).toBe(false)
    expect(unknown.findings[0]).toMatchObject({
      code: 'procedure/unknown-service',
      path: '/services/0',
      params: { service: 'chnage' },
    })
    expect(buildProcedure({ sheet, identity: {}, services: ['constructor'] }).ok).toBe(false)
    const otherSheet = makeSheet(sheet.gearcases)
    const change = otherSheet.services['change']
    if (change === undefined) throw new Error('no service')
    const limitedSheet = { ...otherSheet, services: { change: { ...change, appliesTo: winchOnly } } }
    const skipped = buildProcedure({
      sheet: limitedSheet,
      identity: { variant: 'plain' },
      services: ['change'],
    })
    expect(skipped.findings.map((finding) => finding.code)).toEqual([
      'procedure/service-not-for-this-machine',
    ])
    const undecided = buildProcedure({ sheet: limitedSheet, identity: {}, services: ['change'] })
    expect(undecided.findings.map((finding) => [finding.code, finding.path])).toEqual([
      ['procedure/part-not-known', '/services/change'],
    ])
  })

  test('an oil space shared with a gearcase that is not there', () => {
    const { axle } = sharedSheet.gearcases
    if (axle === undefined) throw new Error('no axle')
    const built = buildProcedure({ sheet: makeSheet({ axle }), identity: {}, services: ['change'] })
    expect(built.findings.map((finding) => finding.code)).toEqual([
      'procedure/oil-owner-missing',
      'procedure/no-fill-opening',
    ])
  })

  test('a check of a gearcase that is filled by quantity looks for leaks and says that no level can be seen', () => {
    const built = buildProcedure({ sheet: varietySheet, identity: {}, services: ['front-check'] })
    expect(built.findings.map((finding) => [finding.code, finding.severity])).toEqual([
      ['procedure/no-level-opening', 'warning'],
    ])
    if (!built.ok) throw new Error('not built')
    expect(built.value.steps.some((step) => step.do === 'check for leaks')).toBe(true)
  })
})

describe('only some of the gearcases', () => {
  const idsAndActions = (steps: readonly { readonly id: string; readonly do: string }[]) =>
    steps.filter((step) => step.do === 'pour the oil').map((step) => step.id)

  test('one gearcase, one instance, or the sharer for its owner', () => {
    const request = { sheet: varietySheet, identity: {}, services: ['change'] }
    const rear = buildProcedure({ ...request, only: [{ service: 'change', gearcase: 'rear' }] })
    if (!rear.ok) throw new Error('not built')
    expect(idsAndActions(rear.value.steps)).toEqual(['rear-pour-fill'])
    expect(validateProcedure(rear.value, varietySheet)).toEqual([])
    const left = buildProcedure({
      ...request,
      only: [{ service: 'change', gearcase: 'hub', instance: 'left' }],
    })
    if (!left.ok) throw new Error('not built')
    expect(idsAndActions(left.value.steps)).toEqual(['hub-left-pour-fill'])
    expect(validateProcedure(left.value, varietySheet)).toEqual([])
    const hubChange = buildProcedure({ ...request, only: [{ service: 'change', gearcase: 'hub' }] })
    if (!hubChange.ok) throw new Error('not built')
    expect(idsAndActions(hubChange.value.steps)).toEqual(['hub-left-pour-fill', 'hub-right-pour-fill'])
    const sharedProcedure = buildProcedure({
      sheet: sharedSheet,
      identity: {},
      services: ['change'],
      only: [{ service: 'change', gearcase: 'gearbox' }],
    })
    if (!sharedProcedure.ok) throw new Error('not built')
    expect(idsAndActions(sharedProcedure.value.steps)).toEqual(['gearbox-pour-fill'])
    expect(sharedProcedure.value.steps.map((step) => step.id)).toContain('axle-drain-drain')
  })

  test('references to nothing are reported', () => {
    const built = buildProcedure({
      sheet: varietySheet,
      identity: {},
      services: ['change'],
      only: [
        { service: 'change', gearcase: 'rear' },
        { service: 'change', gearcase: 'hub', instance: 'middle' },
        { service: 'check', gearcase: 'rear' },
      ],
    })
    expect(built.ok).toBe(false)
    expect(built.findings.map((finding) => [finding.code, finding.path])).toEqual([
      ['procedure/only-without-match', '/only/1'],
      ['procedure/only-without-match', '/only/2'],
    ])
  })
})

describe('the examples', () => {
  const sheets = exampleMachines().map((name): [string, SpecSheet] => [name, readExample(name, 'sheet')])

  test('are there', () => expect(sheets.length).toBeGreaterThan(0))

  test.each(sheets)(
    '%s: every service, and all at once, gives an order of work without a finding',
    (_name, sheet) => {
      const all = Object.keys(sheet.services)
      for (const services of [...all.map((id) => [id]), all])
        for (const variant of Object.keys(sheet.machine.variants))
          expect(validateProcedure(build(sheet, services, { variant }), sheet)).toEqual([])
    },
  )
})

describe('notes, names and ids', () => {
  test('a note hangs once on the first step of its action, or on the step of its id', () => {
    const plainSheet = makeSheet({ rear: makeCase('rear', {}) })
    const { change } = plainSheet.services
    if (change === undefined) throw new Error('no service')
    const notes = { 'crack-loose': 'Use the long bar.', 'rear-fit-drain': 'Magnet upwards.' }
    const { steps } = build({ ...plainSheet, services: { change: { ...change, notes } } }, ['change'])
    expect(steps.filter((step) => step.note !== undefined).map((step) => [step.id, step.note])).toEqual([
      ['rear-crack-fill', 'Use the long bar.'],
      ['rear-fit-drain', 'Magnet upwards.'],
    ])
  })

  test('id and name come from the sheet unless they are given', () => {
    const sheet = makeSheet({ rear: makeCase('rear', {}) })
    const builtProcedure = build(sheet, ['change', 'check'])
    expect([builtProcedure.id, builtProcedure.name]).toEqual([
      'storvik-berg-2-change-check',
      'Storvik Berg 2: oil change, level check',
    ])
    const given = buildProcedure(
      { sheet, identity: {}, services: ['change'] },
      { id: 'winter', name: 'Winter' },
    )
    expect(given.ok && [given.value.id, given.value.name]).toEqual(['winter', 'Winter'])
  })

  test('long ids are cut and stay unique', () => {
    const longId = 'g'.repeat(64)
    const sheet = makeSheet({ [longId]: makeCase('long', {}) })
    const ids = build(sheet, ['change']).steps.map((step) => step.id)
    expect(Math.max(...ids.map((id) => id.length))).toBeLessThanOrEqual(64)
    expect(new Set(ids).size).toBe(ids.length)
  })
})

describe('misuse throws', () => {
  const sheet = makeSheet({ rear: makeCase('rear', {}) })
  const facts = { sheet, identity: {}, services: ['change'] }
  test.each([
    ['no facts', undefined],
    ['no sheet', { identity: {}, services: ['change'] }],
    ['a log for a sheet', { sheet: { kind: 'machine-log' }, identity: {}, services: ['change'] }],
    [
      'a sheet without gearcases',
      { sheet: { kind: 'spec-sheet', machine: {}, services: {} }, identity: {}, services: ['a'] },
    ],
    ['no identity', { sheet, services: ['change'] }],
    ['services as text', { sheet, identity: {}, services: 'change' }],
    ['services of numbers', { sheet, identity: {}, services: [Number.NaN] }],
    ['only as text', { sheet, identity: {}, services: ['change'], only: 'rear' }],
    ['only of nothing', { sheet, identity: {}, services: ['change'], only: [null] }],
    ['a name that is none', facts, { name: 7 }],
    ['a bigint for an id', facts, { id: 10n }],
    ['options as text', facts, 'winter'],
  ])('%s: TypeError', (_what, given, options?: unknown) => {
    expect(() => buildProcedure(given as never, options as never)).toThrow(TypeError)
  })
  test('an unknown key, with a similar one', () => {
    expect(() => buildProcedure({ ...facts, service: 'change' } as never)).toThrow(
      /^facts.*service.*did you mean services\?$/,
    )
    expect(() => buildProcedure(facts, { nam: 'Winter' } as never)).toThrow(
      /^options.*nam.*did you mean name\?$/,
    )
  })
  test.each([
    ['no services', { ...facts, services: [] }, {}],
    ['an id with a space', facts, { id: 'my id' }],
    ['an id of 65 characters', facts, { id: 'a'.repeat(65) }],
    ['a hostile id', facts, { id: '__proto__' }],
  ])('%s: RangeError', (_what, given, options) => {
    expect(() => buildProcedure(given, options)).toThrow(RangeError)
  })
  test('an id of 64 characters holds', () => {
    expect(buildProcedure({ sheet, identity: {}, services: ['change'] }, { id: 'a'.repeat(64) }).ok).toBe(
      true,
    )
  })
})
