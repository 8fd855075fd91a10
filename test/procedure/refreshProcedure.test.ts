import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { refreshProcedure } from '../../src/procedure/refreshProcedure.js'
import { validateProcedure } from '../../src/v1/procedure.js'
import type { ProcedureDocument, SpecSheet } from '../../src/v1/spec.js'
import { cases, law } from '../support/law.js'
import { build, type CaseOptions, makeCase, makeSheet, VARIETY } from './sheets.js'

type Cases = Readonly<Record<string, CaseOptions>>

const sheetOf = (cases: Cases, revision = '2031-01'): SpecSheet => ({
  ...makeSheet(Object.fromEntries(Object.entries(cases).map(([id, options]) => [id, makeCase(id, options)]))),
  revision,
})

/** A writer's procedure: the gearcases in the other order, own ids, a note on every third step. */
function writeOwn(cases: Cases): ProcedureDocument {
  const built = build(sheetOf(Object.fromEntries(Object.entries(cases).reverse())), ['change'])
  const steps = built.steps.map((step, place) => ({
    ...step,
    id: `own-${step.id}`.slice(0, 60),
    ...(place % 3 === 0 && { note: `Mind number ${place}.` }),
  }))
  return { ...built, name: "The station's own order", steps }
}

const TWO: Cases = { front: { access: 'front', magnet: true }, rear: { breather: true } }
const refresh = (oldProcedure: ProcedureDocument, sheet: SpecSheet) =>
  refreshProcedure(oldProcedure, sheet, oldProcedure.identity)
const idsOf = ({ steps }: ProcedureDocument) => steps.map(({ id }) => id)

describe('a procedure for a new revision of its sheet', () => {
  test('an unchanged sheet gives the same procedure', () => {
    const oldProcedure = writeOwn(TWO)
    expect(refresh(oldProcedure, sheetOf(TWO)).procedure).toBe(oldProcedure)
  })

  test('of changed values only the revision is new', () => {
    const oldProcedure = writeOwn(TWO)
    const sheet = sheetOf(TWO, '2031-02')
    const text = JSON.stringify(sheet).replaceAll('"35"', '"38"').replaceAll('"900"', '"850"')
    const refreshed = refresh(oldProcedure, JSON.parse(text))
    expect(refreshed.procedure).toEqual({ ...oldProcedure, sheet: { id: sheet.id, revision: '2031-02' } })
    expect(refreshed).toMatchObject({
      removedSteps: [],
      moved: [],
      lostNotes: [],
      left: [],
      isRebuilt: false,
    })
  })

  test('many new steps come in without a change of the order', () => {
    const oldProcedure = writeOwn(TWO)
    const more: Cases = {
      front: { ...TWO['front'], shield: true, filters: ['spin-on'] },
      rear: { ...TWO['rear'], magnet: true },
    }
    const sheet = sheetOf(more, '2031-02')
    const { procedure, left, isRebuilt } = refresh(oldProcedure, sheet)
    expect(left).toEqual([])
    expect(isRebuilt).toBe(false)
    expect(idsOf(procedure).filter((id) => id.startsWith('own-'))).toEqual(idsOf(oldProcedure))
    const added = procedure.steps.filter(({ id }) => !id.startsWith('own-')).map((step) => step.do)
    expect(added).toEqual(expect.arrayContaining(['remove shield', 'take off filter', 'inspect the magnet']))
    expect(procedure.name).toBe("The station's own order")
  })

  test('steps of a part that is gone are named, with their notes', () => {
    const oldProcedure = writeOwn({ ...TWO, tail: { out: 'cover', access: 'rear' } })
    const { procedure, removedSteps, lostNotes, left } = refresh(oldProcedure, sheetOf(TWO, '2031-02'))
    expect(left).toEqual([])
    expect(removedSteps.length).toBeGreaterThan(10)
    expect(removedSteps.every(({ on }) => /\/tail|rear-beam/.test(on ?? ''))).toBe(true)
    expect(lostNotes.length).toBeGreaterThan(2)
    expect(idsOf(procedure)).toEqual(idsOf(oldProcedure).filter((id) => idsOf(procedure).includes(id)))
  })

  const flag = fc.boolean()
  const options = fc.record(
    {
      magnet: flag,
      breather: flag,
      shield: flag,
      recheck: flag,
      filters: fc.constantFrom([], ['spin-on'] as const),
    },
    { requiredKeys: [] },
  )
  const ids = fc.uniqueArray(fc.constantFrom(...Object.keys(VARIETY)), { minLength: 1, maxLength: 3 })
  const casesOf = (chosen: readonly string[], more: readonly CaseOptions[]): Cases =>
    Object.fromEntries(chosen.map((id, place) => [id, { ...VARIETY[id], ...more[place] }]))

  test('any edit of the sheet ends valid; every note is kept or reported, the order stays', () => {
    let rebuiltCount = 0
    law(60, ids, fc.array(options), fc.array(options), ids, (chosen, before, after, others) => {
      const oldProcedure = writeOwn(casesOf(chosen, before))
      const keptCases = chosen.filter((id, place) => place === 0 || others.includes(id))
      const sheet = sheetOf(casesOf(keptCases, after), '2031-02')
      const { procedure, left, lostNotes, moved, isRebuilt } = refresh(oldProcedure, sheet)
      expect(left).toEqual([])
      expect(validateProcedure(procedure, sheet)).toEqual([])
      const notes = [...procedure.steps.map(({ note }) => note), ...lostNotes.map(({ note }) => note)]
      for (const { note } of oldProcedure.steps) if (note !== undefined) expect(notes).toContain(note)
      const keptIds = idsOf(procedure).filter((id) => idsOf(oldProcedure).includes(id) && !moved.includes(id))
      if (isRebuilt) rebuiltCount += 1
      else expect(moved.length).toBeLessThanOrEqual(3)
      expect(keptIds).toEqual(idsOf(oldProcedure).filter((id) => keptIds.includes(id)))
    })
    expect(rebuiltCount).toBeLessThanOrEqual(cases(60) / 20)
  })
})
