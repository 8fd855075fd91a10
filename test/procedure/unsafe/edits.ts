import type { ProcedureCodes } from '../../../src/v1/procedure.js'
import type { ProcedureDocument, SpecSheet, Step } from '../../../src/v1/spec.js'
import { build } from '../sheets.js'

export interface UnsafeSequence {
  readonly fact: string
  readonly sheet: SpecSheet
  readonly good: ProcedureDocument
  readonly bad: ProcedureDocument
  /** The step at which they must be reported; absent: any step. */
  readonly at?: number
  readonly codes: readonly (keyof ProcedureCodes)[]
}

export type Edit = (steps: readonly Step[]) => readonly Step[]

/** The index of a step by its id; throws if there is none, since the edit would do nothing. */
export function placeOf(steps: readonly Step[], id: string): number {
  const place = steps.findIndex((step) => step.id === id)
  if (place === -1) throw new Error(`no step ${id}`)
  return place
}

export const drop =
  (...ids: readonly string[]): Edit =>
  (steps) =>
    ids.reduce<readonly Step[]>((left, id) => left.toSpliced(placeOf(left, id), 1), steps)

export const insert =
  (step: Omit<Step, 'id'>, before: string): Edit =>
  (steps) =>
    steps.toSpliced(placeOf(steps, before), 0, { id: 'put-in', ...step })

export const move =
  (id: string, before: string): Edit =>
  (steps) => {
    const step = steps[placeOf(steps, id)]
    const rest = drop(id)(steps)
    return step === undefined ? rest : rest.toSpliced(placeOf(rest, before), 0, step)
  }

export const again =
  (id: string, before: string): Edit =>
  (steps) => {
    const { id: _id, ...step } = steps[placeOf(steps, id)] as Step
    return insert(step, before)(steps)
  }

export const change =
  (id: string, more: Partial<Step>): Edit =>
  (steps) =>
    steps.map((step, place) => (place === placeOf(steps, id) ? { ...step, ...more } : step))

/** Several edits, one after the other. */
export const applyBoth =
  (...edits: readonly Edit[]): Edit =>
  (steps) =>
    edits.reduce((done, edit) => edit(done), steps)

export type Row = readonly [fact: string, edit: Edit, ...codes: readonly string[]]

export function on(
  sheet: SpecSheet,
  service: string,
  rows: readonly Row[],
  more: Partial<ProcedureDocument> = {},
  raiseOn: 'stands' | 'ramps' = 'stands',
): readonly UnsafeSequence[] {
  const validProcedure = build(sheet, [service], undefined, raiseOn)
  return rows.map(([fact, edit, ...codes]) => ({
    fact,
    sheet,
    good: validProcedure,
    bad: { ...validProcedure, ...more, steps: edit(validProcedure.steps) },
    codes: codes.map((code) => `procedure/${code}` as keyof ProcedureCodes),
  }))
}

export const CHOCK_FRONT: Step = { id: 'chock-front', do: 'chock the wheels', on: '/machine/axles/front' }

/** `id+id+id`: the steps, the last of which is unsafe; then the codes that it must get. */
export type ListRow = readonly [steps: string, ...codes: readonly string[]]

/** Complete short lists of steps from a longer procedure. */
export function shortLists(
  sheet: SpecSheet,
  source: ProcedureDocument,
  rows: readonly ListRow[],
): readonly UnsafeSequence[] {
  const { steps: known, services: _services, ...rest } = source
  const validProcedure = build(sheet, ['change'])
  return rows.map(([ids, ...codes]) => {
    const steps = ids.split('+').map((id, place): Step => {
      const step = known.find((candidate) => candidate.id === id)
      if (step === undefined) throw new Error(`no step ${id}`)
      return { ...step, id: `${id.slice(0, 55)}-${place}` }
    })
    return {
      fact: `begins with ${ids.replaceAll('+', ', ')}`,
      ...{ sheet, good: validProcedure, at: steps.length - 1 },
      bad: { ...rest, services: validProcedure.services, steps },
      codes: codes.map((code) => `procedure/${code}` as keyof ProcedureCodes),
    }
  })
}
