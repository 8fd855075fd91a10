import type { Action, Id, Step } from '../spec/index.js'
import type { OilJob } from './jobs.js'
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
import type { Draft } from './state.js'

/** A step without its id: what a need would have done first. */
export interface StepSeed {
  readonly do: Action
  readonly on?: string
  readonly at?: NonNullable<Step['at']>
}

/** Where one step acts. */
export interface Location {
  readonly layout: Layout
  readonly jobs: readonly OilJob[]
  readonly step: StepSeed
  readonly part?: Part
  readonly gearcase?: GearcaseLayout
  readonly instance?: Id
  readonly opening?: OpeningLayout
  readonly cover?: CoverLayout
  readonly seal?: SealLayout
  readonly shield?: ShieldLayout
}

/** Where one step acts, and the state there: everything that its needs and changes look at. */
export interface Site extends Location {
  readonly state: Draft
}

export interface World {
  readonly layout: Layout
  readonly jobs: readonly OilJob[]
}

/** Finds the part that a step stands on; the pointer must name one, or be absent. */
export function locate(world: World, step: StepSeed): Location {
  const part = step.on === undefined ? undefined : world.layout.parts.get(step.on)
  return {
    ...world,
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

export function findSite(world: World, state: Draft, step: StepSeed): Site {
  return { ...locate(world, step), state }
}

/** A gearcase and which of its instances. */
export interface Unit {
  readonly gearcase: GearcaseLayout
  readonly instance: Id | undefined
}

/** The gearcase that owns the oil of another, and the instance of it that this one opens to. */
export function findOwner(layout: Layout, gearcase: GearcaseLayout, instance: Id | undefined): Unit {
  const owner = layout.gearcases.get(gearcase.owner) ?? gearcase
  return { gearcase: owner, instance: owner.instances.includes(instance) ? instance : owner.instances[0] }
}

/** Every gearcase whose oil is that of this owner, the owner first. */
export function findSharers(layout: Layout, owner: Unit): readonly Unit[] {
  const sharers: Unit[] = [owner]
  for (const gearcase of layout.gearcases.values()) {
    if (gearcase.owner !== owner.gearcase.id || gearcase.id === owner.gearcase.id) continue
    for (const instance of gearcase.instances)
      if (findOwner(layout, gearcase, instance).instance === owner.instance)
        sharers.push({ gearcase, instance })
  }
  return sharers
}

type DraftOf<K extends 'openings' | 'covers' | 'gearcases'> = Draft[K][string]

export function openingAt(
  state: Draft,
  opening: OpeningLayout,
  instance: Id | undefined,
): DraftOf<'openings'> {
  return read(state.openings, stateKey(opening.path, instance))
}

export function coverAt(state: Draft, cover: CoverLayout, instance: Id | undefined): DraftOf<'covers'> {
  return read(state.covers, stateKey(cover.path, instance))
}

export function gearcaseAt(state: Draft, { gearcase, instance }: Unit): DraftOf<'gearcases'> {
  return read(state.gearcases, stateKey(gearcase.path, instance))
}

/** The gearcase of a step and its owner; undefined for a step that stands on no gearcase. */
export function unitOf(site: Location): Unit | undefined {
  return site.gearcase === undefined ? undefined : { gearcase: site.gearcase, instance: site.instance }
}

export function ownerOf(site: Location): Unit | undefined {
  return site.gearcase === undefined ? undefined : findOwner(site.layout, site.gearcase, site.instance)
}

function read<T>(record: Record<string, T>, key: string): T {
  const found = record[key]
  if (found === undefined) throw new RangeError(`state: nothing is kept under ${key}`)
  return found
}
