import type { Action, Id, Step } from '../spec/index.js'
import { findOwner, type GearcaseInstance } from './gearcaseInstance.js'
import {
  type CoverLayout,
  type GearcaseLayout,
  type Layout,
  type OpeningLayout,
  type Part,
  type SealLayout,
  type ShieldLayout,
  stateKey,
} from './layout.js'
import type { OilJob } from './listJobs.js'
import type { MutableState } from './state.js'

/** A step without its id: what a need would have done first. */
export interface StepDraft {
  readonly do: Action
  readonly on?: string
  readonly at?: NonNullable<Step['at']>
}

/** Where one step acts. */
export interface StepPlace {
  readonly layout: Layout
  readonly jobs: readonly OilJob[]
  readonly step: StepDraft
  readonly part?: Part
  readonly gearcase?: GearcaseLayout
  readonly instance?: Id
  readonly opening?: OpeningLayout
  readonly cover?: CoverLayout
  readonly seal?: SealLayout
  readonly shield?: ShieldLayout
}

/** Where one step acts, and the state there: everything that its needs and changes look at. */
export interface StepContext extends StepPlace {
  readonly state: MutableState
}

export interface ProcedureContext {
  readonly layout: Layout
  readonly jobs: readonly OilJob[]
}

/** Finds the part that a step stands on; the pointer must name one, or be absent. */
export function placeStep(context: ProcedureContext, step: StepDraft): StepPlace {
  const part = step.on === undefined ? undefined : context.layout.parts.get(step.on)
  return {
    ...context,
    step,
    ...(step.at?.instance === undefined ? {} : { instance: step.at.instance }),
    ...(part === undefined ? {} : { part }),
    ...(part !== undefined && 'gearcase' in part ? { gearcase: part.gearcase } : {}),
    ...(part !== undefined && 'opening' in part ? { opening: part.opening } : {}),
    ...(part !== undefined && 'cover' in part ? { cover: part.cover } : {}),
    ...(part !== undefined && 'seal' in part ? { seal: part.seal } : {}),
    ...(part !== undefined && 'shield' in part ? { shield: part.shield } : {}),
  }
}

export function findStepContext(
  context: ProcedureContext,
  state: MutableState,
  step: StepDraft,
): StepContext {
  return { ...placeStep(context, step), state }
}

type StateOf<K extends 'openings' | 'covers' | 'gearcases'> = MutableState[K][string]

export function openingAt(
  state: MutableState,
  opening: OpeningLayout,
  instance: Id | undefined,
): StateOf<'openings'> {
  return read(state.openings, stateKey(opening.path, instance))
}

export function coverAt(
  state: MutableState,
  cover: CoverLayout,
  instance: Id | undefined,
): StateOf<'covers'> {
  return read(state.covers, stateKey(cover.path, instance))
}

export function gearcaseAt(
  state: MutableState,
  { gearcase, instance }: GearcaseInstance,
): StateOf<'gearcases'> {
  return read(state.gearcases, stateKey(gearcase.path, instance))
}

/** The gearcase of a step and its owner; undefined for a step that stands on no gearcase. */
export function gearcaseInstanceOf(place: StepPlace): GearcaseInstance | undefined {
  return place.gearcase === undefined ? undefined : { gearcase: place.gearcase, instance: place.instance }
}

export function ownerOf(place: StepPlace): GearcaseInstance | undefined {
  return place.gearcase === undefined ? undefined : findOwner(place.layout, place.gearcase, place.instance)
}

function read<T>(record: Record<string, T>, key: string): T {
  const found = record[key]
  if (found === undefined) throw new RangeError(`state: nothing is kept under ${key}`)
  return found
}
