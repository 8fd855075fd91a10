import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { renderText } from '../../src/v1/card.js'
import { buildProcedure, validateProcedure } from '../../src/v1/procedure.js'
import { type ProcedureDocument, parseDocumentText } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { cardOf, planRequest, requestExample, type VisitRequest } from '../support/planExample.js'

const request = requestExample('tind-4')
const built = buildProcedure({
  sheet: request.sheet,
  identity: request.log.identity,
  services: ['gear-oil-change'],
})
if (!built.ok) throw new Error('no procedure for the first example')
const ownProcedure: ProcedureDocument = { ...built.value, id: 'own', name: 'Our own order' }
const planned = (procedure: ProcedureDocument, more: Partial<VisitRequest> = {}) =>
  planRequest({ ...request, procedure, ...more })
function planOf(procedure: ProcedureDocument, more: Partial<VisitRequest> = {}) {
  const result = planned(procedure, more)
  if (!result.ok) throw new Error(JSON.stringify(result.findings))
  return { ...result.value, findings: result.findings }
}
const withoutActions = (...actions: readonly string[]): ProcedureDocument => ({
  ...ownProcedure,
  steps: ownProcedure.steps.filter(({ do: action }) => !actions.includes(action)),
})

describe("a writer's procedure", () => {
  it('gives the plan its steps, time, tools, seals and its name, and no finding if it is good', () => {
    const plan = planOf(ownProcedure)
    expect(plan.steps.map(({ id }) => id)).toEqual(ownProcedure.steps.map(({ id }) => id))
    expect(plan.procedure).toEqual({ id: 'own', name: 'Our own order' })
    expect(plan.findings.filter(({ document }) => document.kind === 'procedure')).toEqual([])
    expect(renderText(cardOf(plan))).toContain('Steps: Our own order')
    const shorterPlan = planOf(withoutActions('wipe down', 'remove shield', 'refit shield'))
    // Twice 2 min, 5 min and 6 min less.
    expect(shorterPlan.time.minutes).toBe(plan.time.minutes - 15)
    const sizes = ({ tools }: typeof plan) => tools.flatMap(({ drive }) => drive?.size ?? [])
    expect(sizes(plan)).toContain('13 mm')
    expect(sizes(shorterPlan)).not.toContain('13 mm')
  })

  it('keeps its notes, and the card shows them', () => {
    const [first, ...others] = ownProcedure.steps
    if (first === undefined) throw new Error('no steps')
    const noted = planOf({
      ...ownProcedure,
      steps: [{ ...first, note: 'The manual is in the cab.' }, ...others],
    })
    expect(renderText(cardOf(noted))).toContain('The manual is in the cab.')
  })

  it('that is not safe has its findings first', () => {
    const unsafeProcedure = withoutActions('chock the wheels')
    const plan = planOf(unsafeProcedure)
    const errors = validateProcedure(unsafeProcedure, request.sheet).filter(
      ({ severity }) => severity === 'error',
    )
    expect(errors.map(({ code }) => code)).toContain('procedure/wheels-not-chocked')
    expect(plan.cautions[0]).toEqual({
      code: 'service/procedure-errors',
      params: { count: errors.length, signal: 'warning' },
    })
    expect(plan.findings).toEqual(expect.arrayContaining([...errors]))
    const text = renderText(cardOf(plan)).replaceAll(/\s+/g, ' ')
    expect(text.indexOf('Do not follow them')).toBeGreaterThan(0)
    expect(text.indexOf('Do not follow them')).toBeLessThan(text.indexOf('What is due'))
  })

  it('decides the services; other requested services are refused', () => {
    const check = buildProcedure({
      sheet: request.sheet,
      identity: request.log.identity,
      services: ['gear-oil-check'],
    })
    if (!check.ok) throw new Error('no procedure for the check')
    expect(planOf(check.value).work.map(({ service }) => service)).toEqual([
      'gear-oil-check',
      'gear-oil-check',
    ])
    expect(planned(check.value, { services: ['gear-oil-change'] })).toMatchObject({
      ok: false,
      findings: [
        {
          code: 'service/procedure-of-other-services',
          params: { services: ['gear-oil-check'], asked: ['gear-oil-change'] },
        },
      ],
    })
    expect(planned(check.value, { services: ['gear-oil-check'] }).ok).toBe(true)
  })

  it('of some gearcases leaves the others as they are', () => {
    const rearChange = [{ service: 'gear-oil-change', gearcase: 'rear' }]
    const rear = buildProcedure({
      sheet: request.sheet,
      identity: request.log.identity,
      services: ['gear-oil-change'],
      only: rearChange,
    })
    if (!rear.ok) throw new Error('no procedure for the rear')
    expect(planOf(rear.value).work.map(({ part }) => part.path)).toEqual(['/gearcases/rear'])
  })

  it('is for this machine: its variant and its events count, not those of the document', () => {
    const events = [{ kind: 'submersion', date: '2023-10-05' }] as const
    const plan = planOf(ownProcedure, { log: { ...request.log, events } })
    expect(plan.findings.map(({ code }) => code)).toContain('procedure/machine-must-not-run')
  })

  it('of another sheet is refused; of another revision is planned with a warning', () => {
    const otherPlan = planned({ ...ownProcedure, sheet: { id: 'another', revision: '1' } })
    expect(otherPlan).toMatchObject({
      ok: false,
      findings: [{ code: 'procedure/other-sheet', severity: 'error' }],
    })
    const olderPlan = planOf({ ...ownProcedure, sheet: { ...ownProcedure.sheet, revision: '2019' } })
    expect(olderPlan.findings).toContainEqual(
      expect.objectContaining({ code: 'procedure/other-sheet', severity: 'warning' }),
    )
  })

  it('of the examples makes a card', () => {
    for (const folder of ['tind-4', 'bud-3']) {
      const text = readFileSync(new URL(`../../examples/${folder}/procedure.json`, import.meta.url), 'utf8')
      const procedure = parseDocumentText('procedure', text)
      if (!procedure.ok) throw new Error(folder)
      const result = planRequest({ ...requestExample(folder), procedure: procedure.value })
      expect(result.ok).toBe(true)
    }
  })
})

describe('law', () => {
  it('any list of the steps gives a plan of these steps and a card', () => {
    law(25, fc.array(fc.nat({ max: ownProcedure.steps.length - 1 }), { maxLength: 60 }), (places) => {
      const steps = places.flatMap((place, at) => {
        const step = ownProcedure.steps[place]
        return step === undefined ? [] : [{ ...step, id: `s${at}` }]
      })
      const plan = planOf({ ...ownProcedure, steps })
      expect(plan.lines.flatMap((line) => line.steps)).toEqual(steps.map(({ id }) => id))
      expect(renderText(cardOf(plan)).length).toBeGreaterThan(100)
    })
  })
})
