import type { Id, ProcedureDocument, Step } from '../spec/index.js'

export interface CarriedNotes {
  readonly procedure: ProcedureDocument
  /** Notes without a matching step in the new procedure, with the old step id. */
  readonly lost: readonly { readonly id: Id; readonly note: string }[]
}

/**
 * Copies the notes of an old procedure to a new one of the same work, for example after a revision of the
 * sheet. Steps match by action, part, instance and wheel mark; repeated steps match in order. A note that the
 * new step already has comes first.
 */
export function carryNotes(oldProcedure: ProcedureDocument, newProcedure: ProcedureDocument): CarriedNotes {
  const newKeys = listStepKeys(newProcedure.steps)
  const notes = new Map<string, string>()
  const lost: { readonly id: Id; readonly note: string }[] = []
  for (const [place, key] of listStepKeys(oldProcedure.steps).entries()) {
    const { id, note } = oldProcedure.steps[place] ?? {}
    if (id === undefined || note === undefined) continue
    if (newKeys.includes(key)) notes.set(key, note)
    else lost.push({ id, note })
  }
  const steps = newProcedure.steps.map((step, place): Step => {
    const note = notes.get(newKeys[place] ?? '')
    if (note === undefined) return step
    return {
      ...step,
      note: step.note === undefined || note.includes(step.note) ? note : `${step.note} ${note}`,
    }
  })
  return { procedure: { ...newProcedure, steps }, lost }
}

/** A key for each step: action, part, instance, wheel mark, and a number for repeated steps. */
function listStepKeys(steps: readonly Step[]): readonly string[] {
  const counts = new Map<string, number>()
  return steps.map(({ do: action, on = '', at = {} }) => {
    const key = [action, on, at.instance ?? '', at.wheelMark ?? ''].join(' | ')
    const count = (counts.get(key) ?? 0) + 1
    counts.set(key, count)
    return `${key} | ${count}`
  })
}
