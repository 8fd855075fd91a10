import { type JsonPointer, readPointer } from '../base/index.js'
import { type Action, readOverrides, type SpecSheet } from '../spec/index.js'
import type { ShownFigure } from './actionRow.js'
import { ACTIONS } from './actions.js'
import type { GearcaseLayout } from './layout.js'
import { findStepParts, type ProcedureContext, type StepDraft, type StepParts } from './stepContext.js'

/**
 * The figures that a step must show, by name, as pointers to leaves of the base sheet; overrides are resolved
 * later. `onlyIf` points to the condition of a part if it is unknown whether this machine has it.
 */
export function findStepFigures(
  sheet: SpecSheet,
  context: ProcedureContext,
  step: StepDraft,
): Readonly<Record<string, JsonPointer>> {
  const place = findStepParts(context, step)
  const figures: Record<string, JsonPointer> = {}
  for (const shown of ACTIONS[step.do].figures)
    for (const [name, base] of listFigureOwners(place, shown))
      if (hasLeaf(sheet, `${base}${shown.leaf}`)) figures[name] = `${base}${shown.leaf}`
  const onlyIf = [place.opening ?? place.cover ?? place.filter ?? place.shield, place.gearcase]
    .filter((part) => part?.applies === 'cannot tell')
    .map((part) => `${part?.path}/appliesTo`)
    .find((path) => readPointer(sheet, path) !== undefined)
  if (onlyIf !== undefined) figures['onlyIf'] = onlyIf
  return figures
}

/** Whether steps of this action show this figure. */
export function showsFigure(action: Action, name: string): boolean {
  return ACTIONS[action].figures.some((figure) => figure.name === name)
}

/** The parts that have the figure, each with the name of the figure in the step. */
function listFigureOwners(
  place: StepParts,
  { name, of }: ShownFigure,
): readonly (readonly [string, JsonPointer])[] {
  const pairWithIds = (gearcases: readonly GearcaseLayout[]) =>
    gearcases.map(({ id, path }) => [id, path] as const)
  switch (of) {
    case 'machine':
      return [[name, '/machine']]
    case 'part':
      return place.step.on === undefined ? [] : [[name, place.step.on]]
    case 'oil space':
      return place.owner === undefined ? [] : [[name, `${place.owner.gearcase.path}/oilSpace`]]
    case 'each changed gearcase':
      return pairWithIds(
        place.jobs.flatMap(({ task, emptiedInstances }) =>
          task === 'change' ? emptiedInstances.map((emptiedInstance) => emptiedInstance.gearcase) : [],
        ),
      )
    case 'each oil space':
      if (place.gearcase !== undefined) return []
      return pairWithIds(place.jobs.map(({ owner }) => owner.gearcase)).map(([id, path]) => [
        id,
        `${path}/oilSpace`,
      ])
  }
}

/** Whether the base sheet or an override states this leaf. */
function hasLeaf(sheet: SpecSheet, path: JsonPointer): boolean {
  if (readPointer(sheet, path) !== undefined) return true
  return readOverrides(sheet).some((override) => override.set.some((leaf) => leaf.path === path))
}
