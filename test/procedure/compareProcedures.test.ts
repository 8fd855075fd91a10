import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { compareProcedures } from '../../src/v1/procedure.js'
import type { ProcedureDocument, Step } from '../../src/v1/spec.js'
import { law } from '../support/law.js'
import { build, varietySheet, visitArbitrary } from './sheets.js'

const fullProcedure = build(varietySheet, ['front-change'])

function change(id: string, write: (step: Step) => Step | undefined): ProcedureDocument {
  return {
    ...fullProcedure,
    steps: fullProcedure.steps.flatMap((step) => (step.id === id ? (write(step) ?? []) : [step])),
  }
}

describe('laws', () => {
  test('names, notes and ids do not change the effect of a procedure', () => {
    law(40, visitArbitrary, ({ sheet, services }) => {
      const procedure = build(sheet, services)
      const renamedProcedure: ProcedureDocument = {
        ...procedure,
        name: 'Other words',
        steps: procedure.steps.map((step, place) => ({ ...step, id: `s${place}`, note: 'Slowly.' })),
      }
      expect(compareProcedures(procedure, renamedProcedure, sheet)).toEqual({
        verdict: 'same',
        state: [],
        onlyFirst: [],
        onlySecond: [],
        findings: { onlyFirst: [], onlySecond: [] },
      })
    })
  })

  test('the other way round it tells the same, turned', () => {
    law(50, fc.nat(fullProcedure.steps.length - 1), (at) => {
      const shorterProcedure = { ...fullProcedure, steps: fullProcedure.steps.toSpliced(at, 1) }
      const comparison = compareProcedures(fullProcedure, shorterProcedure, varietySheet)
      const back = compareProcedures(shorterProcedure, fullProcedure, varietySheet)
      expect(comparison.verdict).toBe('different')
      // If two steps do the same, either of them may be reported as missing.
      const missingSteps = comparison.onlyFirst.map((id) =>
        fullProcedure.steps.find((step) => step.id === id),
      )
      expect(missingSteps.map((step) => [step?.do, step?.on])).toEqual([
        [fullProcedure.steps[at]?.do, fullProcedure.steps[at]?.on],
      ])
      expect(back.onlySecond).toEqual(comparison.onlyFirst)
      expect(back.state.map(({ path, first, second }) => [path, second, first])).toEqual(
        comparison.state.map(({ path, first, second }) => [path, first, second]),
      )
      expect(back.findings.onlyFirst).toEqual(comparison.findings.onlySecond)
    })
  })
})

describe('what differs', () => {
  test('the order of two independent steps does not', () => {
    const [read, protect, ...rest] = fullProcedure.steps
    if (read === undefined || protect === undefined) throw new Error('too few steps')
    const protectedFirst = { ...fullProcedure, steps: [protect, read, ...rest] }
    expect(compareProcedures(fullProcedure, protectedFirst, varietySheet).verdict).toBe('same')
  })

  test('an order that breaks a need does, through its finding alone', () => {
    const crack = fullProcedure.steps.find((step) => step.id === 'front-crack-fill')
    if (crack === undefined) throw new Error('no such step')
    const rest = fullProcedure.steps.filter((step) => step !== crack)
    const crackedLate = rest.toSpliced(
      rest.findIndex((step) => step.id === 'front-take-out-fill'),
      0,
      crack,
    )
    expect(compareProcedures(fullProcedure, { ...fullProcedure, steps: crackedLate }, varietySheet)).toEqual({
      verdict: 'different',
      state: [],
      onlyFirst: [],
      onlySecond: [],
      findings: { onlyFirst: [], onlySecond: ['procedure/fill-not-cracked'] },
    })
  })

  test('a record that is not written does, in the state', () => {
    const withoutRecordText = change('record', () => undefined)
    expect(compareProcedures(fullProcedure, withoutRecordText, varietySheet)).toEqual({
      verdict: 'different',
      state: [{ path: '/recorded', first: 'true', second: 'false' }],
      onlyFirst: ['record'],
      onlySecond: [],
      findings: { onlyFirst: [], onlySecond: ['procedure/work-not-recorded'] },
    })
  })

  test('another figure does', () => {
    const otherTightening = change('front-tighten-drain', (step) => ({
      ...step,
      values: { tightening: '/gearcases/front/openings/fill/tightening' },
    }))
    const comparison = compareProcedures(fullProcedure, otherTightening, varietySheet)
    expect([comparison.onlyFirst, comparison.onlySecond]).toEqual([
      ['front-tighten-drain'],
      ['front-tighten-drain'],
    ])
    expect(comparison.findings.onlySecond).toEqual(['procedure/wrong-figure'])
  })

  test('a step done twice counts twice', () => {
    const recordedTwice = {
      ...fullProcedure,
      steps: [...fullProcedure.steps, { id: 'record-2', do: 'record' } as const],
    }
    expect(compareProcedures(fullProcedure, recordedTwice, varietySheet).onlySecond).toEqual(['record-2'])
  })

  test('two visits: the gearcases that only one of them reaches', () => {
    const otherProcedure = build(varietySheet, ['rear-check'])
    const comparison = compareProcedures(fullProcedure, otherProcedure, varietySheet)
    expect(comparison.onlyFirst).toContain('front-pour-fill')
    expect(comparison.onlySecond).toContain('rear-level-fill')
    expect(comparison.state).toContainEqual({
      path: '/gearcases/~1gearcases~1front/oil',
      first: 'new',
      second: 'old',
    })
  })

  test('misuse throws', () => {
    expect(() => compareProcedures(undefined as never, fullProcedure, varietySheet)).toThrow(
      /^first must be a procedure; parse the document first$/,
    )
    expect(() => compareProcedures(fullProcedure, 7 as never, varietySheet)).toThrow(
      /^second must be a procedure/,
    )
    expect(() => compareProcedures(fullProcedure, fullProcedure, fullProcedure as never)).toThrow(
      /^sheet must be a spec sheet/,
    )
    const noText = { ...varietySheet, revision: 10n } as never
    expect(() => compareProcedures(fullProcedure, fullProcedure, noText)).toThrow(
      /^sheet\.revision must be a string, got bigint/,
    )
  })

  test('a figure that is invalid in a document is compared as it is', () => {
    const withFigure = (figure: unknown) =>
      ({ ...fullProcedure, steps: [{ id: 'a', do: 'record', values: { figure } }] }) as never
    expect(compareProcedures(withFigure(10n), withFigure(10n), varietySheet).verdict).toBe('same')
    expect(compareProcedures(withFigure(10n), withFigure(11n), varietySheet).verdict).toBe('different')
  })
})
