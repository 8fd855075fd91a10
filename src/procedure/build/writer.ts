import { dropUndefined } from '../../base/index.js'
import type { Action, Id, Identity, SpecSheet, Step } from '../../spec/index.js'
import { ACTIONS } from '../actions.js'
import { findStepFigures } from '../findStepFigures.js'
import type {
  CoverLayout,
  FilterLayout,
  GearcaseInstance,
  GearcaseLayout,
  OpeningLayout,
  SealLayout,
} from '../layout.js'
import { runStep } from '../runStep.js'
import { type MutableState, makeInitialState } from '../state.js'
import { getGearcaseState, getOpeningState, type ProcedureContext, type StepDraft } from '../stepContext.js'
import type { ChosenRamps } from './chooseRamps.js'

/** Collects the steps of a procedure and keeps the state after the last one. */
export interface Writer {
  readonly context: ProcedureContext
  readonly state: MutableState
  readonly steps: Step[]
  readonly usedIds: Set<Id>
  /** Keys of the gearcase instances that are finished. */
  readonly finishedKeys: Set<string>
  readonly sheet: SpecSheet
  readonly identity: Identity
  readonly ramps: Pick<ChosenRamps, 'axles' | 'onRamps'>
  /** Notes of the services, each for the first matching step. */
  readonly notes: { readonly key: Id; readonly text: string; used: boolean }[]
}

interface WriterFacts {
  readonly sheet: SpecSheet
  readonly identity: Identity
  readonly services: readonly Id[]
  readonly ramps: Writer['ramps']
}

export function makeWriter(
  { sheet, identity, services, ramps }: WriterFacts,
  context: ProcedureContext,
): Writer {
  const notes = services.flatMap((id) =>
    Object.entries(sheet.services[id]?.notes ?? {}).map(([key, text]) => ({ key, text, used: false })),
  )
  return {
    sheet,
    identity,
    ramps,
    context,
    state: makeInitialState(context.indexedSheet),
    steps: [],
    usedIds: new Set(),
    finishedKeys: new Set(),
    notes,
  }
}

export function writeStep(writer: Writer, action: Action, on?: string, at: StepDraft['at'] = {}): void {
  const draft: StepDraft = dropUndefined({
    do: action,
    on,
    at: Object.keys(at).length === 0 ? undefined : at,
  })
  const id = makeStepId(draft, writer.usedIds)
  writer.usedIds.add(id)
  const values = findStepFigures(writer.sheet, writer.context, draft)
  const note = takeNote(writer, action, id)
  runStep(writer.context, writer.state, draft)
  const shownValues = Object.keys(values).length === 0 ? undefined : values
  writer.steps.push(dropUndefined({ id, ...draft, values: shownValues, note }))
}

/** Writes a step on a part of this gearcase, with the wheel mark if the part turns with a wheel. */
export function writePartStep(
  writer: Writer,
  action: Action,
  part: GearcaseLayout | OpeningLayout | CoverLayout | FilterLayout | SealLayout,
  target: GearcaseInstance,
): void {
  const turnsWithWheel = 'opening' in part && part.opening.uses.some((use) => use.wheelMark !== undefined)
  const mark = getGearcaseState(writer.state, target).wheelMark
  const wheelMark = turnsWithWheel && mark !== 'not known' ? mark : undefined
  writeStep(writer, action, part.path, dropUndefined({ instance: target.instance, wheelMark }))
}

export function isOpen(writer: Writer, opening: OpeningLayout, target: GearcaseInstance): boolean {
  return getOpeningState(writer.state, opening, target.instance).position === 'out'
}

function takeNote(writer: Writer, action: Action, id: Id): string | undefined {
  const actionId = action.replaceAll(' ', '-')
  const found = writer.notes.filter((note) => !note.used && (note.key === id || note.key === actionId))
  for (const note of found) note.used = true
  return found.length === 0 ? undefined : found.map((note) => note.text).join(' ')
}

/** A unique id such as `front-crack-fill`: gearcase, instance, action, part, and a number if needed. */
export function makeStepId(step: StepDraft, used: ReadonlySet<Id>): Id {
  const tokens = (step.on ?? '').split('/').slice(1)
  const [list, owner, kind, part, ...tokensBelow] = tokens
  const short = ACTIONS[step.do].short
  const isOnGearcase = list === 'gearcases' && owner !== undefined
  const seal = tokensBelow[0] === 'seals' && tokensBelow[1] !== '0' ? tokensBelow[1] : undefined
  const words = isOnGearcase
    ? [owner, step.at?.instance, short, kind && part, seal]
    : [short, tokens[list === 'machine' ? 2 : 1]]
  const known = words.filter((word) => word !== undefined)
  const base = known.join('-').slice(0, 60)
  let id = base
  for (let count = 2; used.has(id); count += 1) id = `${base}-${count}`
  return id
}
