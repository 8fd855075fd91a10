import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import { rankHarm } from '../../src/procedure/rankHarm.js'
import { repairProcedure, validateProcedure } from '../../src/v1/procedure.js'
import type { ProcedureDocument, Step } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { brokenArbitrary } from './brokenProcedures.js'
import { expectRepaired } from './expectRepaired.js'
import { build, VARIETY, varietySheet, visitArbitrary } from './sheets.js'

function swap(procedure: ProcedureDocument, place: number): ProcedureDocument {
  const [first, second] = [procedure.steps[place], procedure.steps[place + 1]]
  if (first === undefined || second === undefined) throw new Error('no two steps there')
  return { ...procedure, steps: procedure.steps.toSpliced(place, 2, second, first) }
}

describe('laws', () => {
  test('one step left out of any built procedure is repaired by at most two changes', () => {
    law(30, visitArbitrary, fc.nat(), ({ sheet, services }, at) => {
      const fullProcedure = build(sheet, services)
      const shorterProcedure = {
        ...fullProcedure,
        steps: fullProcedure.steps.toSpliced(at % fullProcedure.steps.length, 1),
      }
      const repair = repairProcedure(shorterProcedure, sheet)
      expect(repair.left).toEqual([])
      expect(repair.applied.length).toBeLessThanOrEqual(2)
    })
  })

  test('two neighbours swapped in any built procedure are repaired by at most two changes', () => {
    law(30, visitArbitrary, fc.nat(), ({ sheet, services }, at) => {
      const fullProcedure = build(sheet, services)
      const swappedProcedure = swap(fullProcedure, at % (fullProcedure.steps.length - 1))
      const repair = repairProcedure(swappedProcedure, sheet)
      expect(repair.left).toEqual([])
      expect(repair.applied.length).toBeLessThanOrEqual(2)
    })
  })

  test('the reported changes are those made', () => {
    law(25, visitArbitrary, fc.nat(), ({ sheet, services }, at) => {
      const fullProcedure = build(sheet, services)
      const shorterProcedure = {
        ...fullProcedure,
        steps: fullProcedure.steps.toSpliced(at % fullProcedure.steps.length, 1),
      }
      const { applied, procedure } = repairProcedure(shorterProcedure, sheet)
      expect(applyPatch(shorterProcedure, applied)).toEqual(procedure)
    })
  })

  test('every cure leaves fewer or other troubles, and steps that can be read', () => {
    law(25, visitArbitrary, fc.nat(), ({ sheet, services }, at) => {
      const fullProcedure = build(sheet, services)
      const shorterProcedure = {
        ...fullProcedure,
        steps: fullProcedure.steps.toSpliced(at % fullProcedure.steps.length, 1),
      }
      const findings = validateProcedure(shorterProcedure, sheet)
      for (const finding of findings)
        for (const cure of finding.cures ?? []) {
          const after = validateProcedure(applyPatch(shorterProcedure, [cure]) as ProcedureDocument, sheet)
          expect(after.length).toBeLessThanOrEqual(findings.length)
          expect(after).not.toEqual(findings)
        }
    })
  })

  for (const id of Object.keys(VARIETY))
    test(`${id}: every two neighbours swapped are repaired`, () => {
      const fullProcedure = build(varietySheet, [`${id}-change`])
      for (let place = 0; place + 1 < fullProcedure.steps.length; place += 1) {
        const repair = repairProcedure(swap(fullProcedure, place), varietySheet)
        expect(repair.left, fullProcedure.steps[place]?.id ?? '').toEqual([])
        expect(repair.applied.length).toBeLessThanOrEqual(2)
      }
    })
})

describe('proposals', () => {
  test('nothing changes in a valid procedure', () => {
    const fullProcedure = build(varietySheet, ['front-change'])
    const nothing = { procedure: fullProcedure, applied: [], fixed: [], left: [], stopped: 'done' }
    expect(repairProcedure(fullProcedure, varietySheet)).toEqual(nothing)
  })

  test('a fill plug cracked too late is brought forward', () => {
    const fullProcedure = build(varietySheet, ['front-change'])
    const crack = fullProcedure.steps.find((step) => step.id === 'front-crack-fill')
    if (crack === undefined) throw new Error('no such step')
    const rest = fullProcedure.steps.filter((step) => step !== crack)
    const crackedLate = rest.toSpliced(
      rest.findIndex((step) => step.id === 'front-take-out-fill'),
      0,
      crack,
    )
    const { applied, procedure } = repairProcedure({ ...fullProcedure, steps: crackedLate }, varietySheet)
    expect(applied.map((cure) => cure.op)).toEqual(['move'])
    const ids = procedure.steps.map((step) => step.id)
    expect(ids.indexOf('front-crack-fill')).toBeLessThan(ids.indexOf('front-crack-drain'))
  })

  test('many mistakes: fixes as many as it can, and never adds one', () => {
    const fullProcedure = build(varietySheet, ['rear-change'])
    const steps: readonly Step[] = fullProcedure.steps.filter((_step, place) => place % 4 !== 0)
    const brokenProcedure = { ...fullProcedure, steps }
    const before = validateProcedure(brokenProcedure, varietySheet).length
    const repair = repairProcedure(brokenProcedure, varietySheet)
    expect(repair.left.length).toBeLessThan(before)
    expect(repair.applied.length).toBeGreaterThan(2)
  })

  test('a step that no machine could do, and that nothing hangs on, is taken out', () => {
    const fullProcedure = build(varietySheet, ['rear-check'])
    const oddStep = { id: 'odd', do: 'fit', on: '/gearcases/none' } as const
    const repair = repairProcedure(
      { ...fullProcedure, steps: [...fullProcedure.steps, oddStep] },
      varietySheet,
    )
    expect(repair.applied).toEqual([{ op: 'remove', path: `/steps/${fullProcedure.steps.length}` }])
    expect(repair.procedure).toEqual(fullProcedure)
  })
})

describe('broken by chance', () => {
  test('a procedure with 1 to 3 random edits is repaired, and a second repair changes nothing', () => {
    law(40, brokenArbitrary, expectRepaired)
  })

  test('where nothing can be built, each change helps, and a second repair changes nothing', () => {
    law(12, brokenArbitrary, ({ sheet, bad }) => {
      const withoutServices = { ...bad, services: [] }
      const { procedure, left, stopped } = repairProcedure(withoutServices, sheet)
      expect(left.length).toBeLessThanOrEqual(validateProcedure(withoutServices, sheet).length)
      expect(stopped === 'done').toBe(left.length === 0)
      expect(stopped).not.toBe('rebuilt')
      expect(repairProcedure(procedure, sheet)).toMatchObject({ procedure, applied: [], fixed: [] })
    })
  })

  test('half of the steps of a long list are missing: rebuilt, with notes, in the order of harm', () => {
    const fullProcedure = build(varietySheet, ['change'])
    const steps = fullProcedure.steps
      .filter((_step, place) => place % 2 === 0)
      .map((step, place): Step => (place === 20 ? { ...step, note: 'two pans' } : step))
    const repair = repairProcedure({ ...fullProcedure, steps }, varietySheet)
    expect([repair.left, repair.stopped]).toEqual([[], 'rebuilt'])
    expect(repair.procedure.steps.find(({ note }) => note === 'two pans')).toMatchObject({
      id: steps[20]?.id,
    })
    const ranks = repair.fixed.map(({ code }) => rankHarm(code))
    expect(ranks).toEqual(ranks.toSorted())
    expect([ranks[0], ranks.at(-1)]).toEqual([0, 3])
  })
})
