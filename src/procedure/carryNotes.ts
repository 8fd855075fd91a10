import type { Id, ProcedureDocument, Step } from '../spec/index.js'

export interface CarriedNotes {
  readonly procedure: ProcedureDocument
  /** Notes whose step is not in the new procedure, by the old id. */
  readonly lost: readonly { readonly id: Id; readonly note: string }[]
}

/**
 * Carries the notes of an older procedure to a new one of the same work, for example after a revision of the sheet. A step
 * is the same if it does the same on the same part; of several, the first is the first. Its own note comes before.
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

/** For each step what it does and on what, and how often that was before. */
function listStepKeys(steps: readonly Step[]): readonly string[] {
  const counts = new Map<string, number>()
  return steps.map(({ do: action, on = '', at = {} }) => {
    const key = [action, on, at.instance ?? '', at.wheelMark ?? ''].join(' | ')
    const count = (counts.get(key) ?? 0) + 1
    counts.set(key, count)
    return `${key} | ${count}`
  })
}
