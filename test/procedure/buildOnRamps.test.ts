import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { buildProcedure, repairProcedure, validateProcedure } from '../../src/v1/procedure.js'
import type { SpecSheet } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { type CaseOptions, makeCase, makeSheet, visitArbitrary } from './sheets.js'
import { rampsSheet } from './unsafe/rampRows.js'

const sheetOf = (cases: Readonly<Record<string, CaseOptions>>): SpecSheet =>
  makeSheet(Object.fromEntries(Object.entries(cases).map(([id, options]) => [id, makeCase(id, options)])))

function buildOnRamps(sheet: SpecSheet, facts: { readonly events?: readonly ['submersion'] } = {}) {
  const built = buildProcedure({ sheet, identity: {}, services: ['change'], raiseOn: 'ramps', ...facts })
  if (!built.ok) throw new Error(JSON.stringify(built.findings))
  const { value: procedure, findings } = built
  return { procedure, findings, actions: procedure.steps.map((step) => step.do) }
}

describe('a machine on ramps', () => {
  test('one end on ramps: poured there, read back on flat ground', () => {
    const { procedure, actions } = buildOnRamps(rampsSheet)
    expect(validateProcedure(procedure, rampsSheet)).toEqual([])
    expect(actions).not.toContain('raise the machine')
    const ids = procedure.steps.map(({ id }) => id)
    const order = ['clear', 'ramps-front', 'stop-2', 'chock-rear', 'front-take-out-drain', 'front-pour-fill']
    const rest = ['front-nip-fill-2', 'clear-2', 'off-ramps', 'stop-3', 'front-level-fill', 'run']
    const places = [...order, ...rest].map((id) => ids.indexOf(id))
    expect(places).toEqual([...places].sort((place, other) => place - other))
    expect(places).not.toContain(-1)
  })

  test('all wheels on ramps: level, so the oil is filled and read there', () => {
    const sheet = sheetOf({
      front: { access: 'front', method: 'to level hole', attitude: 'level on its wheels' },
      rear: { access: 'rear' },
    })
    const { procedure, actions } = buildOnRamps(sheet)
    expect(validateProcedure(procedure, sheet)).toEqual([])
    expect(actions.indexOf('check the level')).toBeLessThan(actions.indexOf('drive off ramps'))
    expect(procedure.steps.find((step) => step.do === 'drive onto ramps')?.on).toBeUndefined()
  })

  test.each([
    ['wheel must turn', { access: 'front', out: 'sole opening by wheel' }],
    ['level needs flat ground', { access: 'front', method: 'to level hole' }],
    ['level needs stands', { access: 'front', method: 'dipstick', attitude: 'level on stands' }],
  ] as const)('%s: stands are used, and a finding says why', (because, options) => {
    const sheet = sheetOf({ box: options })
    const { procedure, findings, actions } = buildOnRamps(sheet)
    expect(findings).toContainEqual(
      expect.objectContaining({
        ...{ code: 'procedure/ramps-not-possible', severity: 'warning', path: '/gearcases/box' },
        params: { because, part: 'box' },
      }),
    )
    expect(actions).toContain('set on stands')
    expect(validateProcedure(procedure, sheet)).toEqual([])
  })

  test.each([
    ['for a service', ['front-change', 'rear-check'], false],
    ['after the run', ['front-change', 'rear-change'], true],
  ] as const)(
    'a guard removed for a level check on the ground %s: stands are used',
    (_when, services, recheck) => {
      const caseOptions = { method: 'sight glass', ownLevel: true, shield: true, recheck } as const
      const sheet = sheetOf({
        front: { ...caseOptions, access: 'front', attitude: 'not stated' },
        rear: { ...caseOptions, access: 'rear', attitude: 'level on its wheels' },
      })
      const guard = { ...sheet.shields?.['pan-guard'], guards: 'moving parts' } as const
      const guardedSheet = { ...sheet, shields: { 'pan-guard': guard } } as SpecSheet
      const built = buildProcedure({ sheet: guardedSheet, identity: {}, services, raiseOn: 'ramps' })
      if (!built.ok) throw new Error(JSON.stringify(built.findings))
      expect(validateProcedure(built.value, guardedSheet)).toEqual([])
      expect(built.findings).toContainEqual(
        expect.objectContaining({
          ...{ code: 'procedure/ramps-not-possible', path: '/gearcases/front' },
          params: { because: 'guard is off', part: 'front' },
        }),
      )
      expect(built.value.steps.map((step) => step.do)).toContain('set on stands')
    },
  )

  test('not where the manual forbids them, nor for a machine that must not run', () => {
    const sheet = sheetOf({ front: { access: 'front' } })
    const { axles } = sheet.machine
    const forbidden = Object.fromEntries(
      Object.entries(axles).map(([id, axle]) => [id, { ...axle, ramps: false }]),
    )
    const because = ({ findings }: ReturnType<typeof buildOnRamps>) =>
      findings.flatMap(({ params }) => ('because' in params ? params.because : []))
    expect(because(buildOnRamps({ ...sheet, machine: { ...sheet.machine, axles: forbidden } }))).toEqual([
      'manual forbids ramps',
    ])
    expect(because(buildOnRamps(sheet, { events: ['submersion'] }))).toEqual(['must not run'])
  })

  test('where the manual does not mention them, a finding says so', () => {
    const { findings } = buildOnRamps(sheetOf({ front: { access: 'front' } }))
    expect(findings).toEqual([
      expect.objectContaining({
        ...{ code: 'procedure/ramps-not-stated', severity: 'info', params: { part: 'front axle' } },
      }),
    ])
  })

  test('a repair with much to do rebuilds the order on ramps', () => {
    const { procedure } = buildOnRamps(rampsSheet)
    const steps = procedure.steps.filter((step, place) => step.do === 'drive onto ramps' || place % 3 > 0)
    const {
      procedure: repairedProcedure,
      left,
      stopped,
    } = repairProcedure({ ...procedure, steps }, rampsSheet)
    expect(left).toEqual([])
    expect(stopped).toBe('rebuilt')
    const actions = repairedProcedure.steps.map((step) => step.do)
    expect(actions).toContain('drive off ramps')
    expect(actions).not.toContain('set on stands')
  })

  test('whatever the machine and its guards, the order of work has no mistakes, on stands and on ramps', () => {
    let onRamps = 0
    law(200, visitArbitrary, fc.constantFrom(undefined, 'moving parts', 'the underside'), (visit, guards) => {
      const shields = Object.entries(visit.sheet.shields ?? {}).map(([id, one]) => [
        id,
        guards === undefined ? one : { ...one, guards },
      ])
      const sheet = { ...visit.sheet, shields: Object.fromEntries(shields) }
      const identity = { variant: 'plain' }
      const { services } = visit
      const onStands = buildProcedure({ sheet, identity, services })
      if (onStands.ok) expect(validateProcedure(onStands.value, sheet)).toEqual([])
      const built = buildProcedure({ sheet, identity, services, raiseOn: 'ramps' })
      if (!built.ok) return
      if (built.value.steps.some((step) => step.do === 'drive onto ramps')) onRamps += 1
      expect(validateProcedure(built.value, sheet)).toEqual([])
    })
    expect(onRamps).toBeGreaterThan(20)
  })
})
