import type { Id, WheelMark } from '../spec/index.js'
import { type IndexedSheet, makeStateKey } from './layout.js'

/** `cracked`: loose in its seat; `nipped`: turned in by hand; `in`: fitted with its seal but not tight. */
type PlugPosition = 'tight' | 'cracked' | 'nipped' | 'out' | 'in'

type Flags<T> = { readonly [Name in keyof T]: boolean }

const INITIAL_PART = { areaClean: false, faceWiped: false, magnetSeen: false, magnetClean: false }
type PartState = Flags<typeof INITIAL_PART>

export interface OpeningState extends PartState {
  readonly position: PlugPosition
  readonly everCracked: boolean
  /** Wheel positions at which the plug was taken out. */
  readonly outAt: readonly WheelMark[]
}

export interface CoverState extends PartState {
  readonly position: 'tight' | 'off' | 'in'
  readonly wasRemoved: boolean
  readonly cured: boolean
}

/** A filter behind a cover or plug is `tight` as soon as it is in. */
export interface FilterState extends PartState {
  readonly position: 'tight' | 'off' | 'in'
  readonly wasRemoved: boolean
  readonly inspected: boolean
  readonly cleaned: boolean
}

/** `used`: its part was opened since the seal was fitted; `off`: the old seal was removed. */
type SealState = 'undisturbed' | 'used' | 'off' | 'new' | 'inspected'

const INITIAL_GEARCASE = {
  oil: 'old',
  panPlaced: false,
  sampled: false,
  oilSeen: false,
  breatherClear: false,
  wheelMark: 'not known',
  measured: false,
  additiveIn: false,
  hoseEmpty: true,
  levelChecked: false,
  /** Topped up since the last level check. */
  toppedUp: false,
  ranSinceFill: false,
  levelCheckedSinceRun: false,
  wipedDown: false,
  leaksChecked: false,
  leaksCheckedSinceRun: false,
  waitedForLeaks: false,
} as const

export interface GearcaseState extends Flags<Omit<typeof INITIAL_GEARCASE, 'oil' | 'wheelMark'>> {
  readonly oil: 'old' | 'out' | 'new'
  readonly wheelMark: WheelMark | 'not known'
}

/**
 * The state of the machine after a step. Parts are keyed by pointer and instance, such as
 * `/gearcases/hub/openings/plug@left`. The position of a wheel is in the state of its gearcase; `outAt` lists
 * the positions at which a plug was taken out.
 */
export interface ProcedureState {
  readonly variantFound: boolean
  readonly manualRead: boolean
  readonly protectionWorn: boolean
  readonly ground: 'not known' | 'level'
  readonly engine: 'running' | 'stopped'
  /** Axles with chocked wheels. */
  readonly chocked: readonly Id[]
  /** Pointers to the secured items. */
  readonly secured: readonly string[]
  /** Supports at which the machine is raised; empty if it is on its wheels. */
  readonly lifted: readonly Id[]
  /** The lifted supports that rest on stands; the others are on the jack. */
  readonly onStands: readonly Id[]
  /** Axles whose wheels are on ramps. */
  readonly onRamps: readonly Id[]
  readonly oilWarm: boolean
  readonly settled: boolean
  readonly usedOil: 'none' | 'in the pan' | 'taken away'
  readonly recorded: boolean
  readonly shields: Readonly<Record<string, 'on' | 'off'>>
  readonly gearcases: Readonly<Record<string, GearcaseState>>
  readonly openings: Readonly<Record<string, OpeningState>>
  readonly covers: Readonly<Record<string, CoverState>>
  readonly filters: Readonly<Record<string, FilterState>>
  readonly seals: Readonly<Record<string, SealState>>
}

type Writable<T> = T extends readonly (infer Item)[]
  ? Writable<Item>[]
  : T extends object
    ? { -readonly [K in keyof T]: Writable<T[K]> }
    : T

/** A state that steps can change. */
export type MutableState = Writable<ProcedureState>

/** The state of the machine on arrival: nothing is known to be safe, every plug is tight, the oil is old. */
export function makeInitialState(indexedSheet: IndexedSheet): MutableState {
  const state: MutableState = {
    variantFound: false,
    manualRead: false,
    protectionWorn: false,
    ground: 'not known',
    engine: 'running',
    chocked: [],
    secured: [],
    lifted: [],
    onStands: [],
    onRamps: [],
    oilWarm: false,
    settled: false,
    usedOil: 'none',
    recorded: false,
    shields: {},
    gearcases: {},
    openings: {},
    covers: {},
    filters: {},
    seals: {},
  }
  for (const shield of indexedSheet.shields.values()) state.shields[shield.path] = 'on'
  for (const { gearcase, instance } of indexedSheet.instances) {
    state.gearcases[makeStateKey(gearcase.path, instance)] = { ...INITIAL_GEARCASE }
    for (const { path, seals } of gearcase.openings) {
      const key = makeStateKey(path, instance)
      state.openings[key] = { position: 'tight', everCracked: false, ...INITIAL_PART, outAt: [] }
      for (const seal of seals) state.seals[makeStateKey(seal.path, instance)] = 'undisturbed'
    }
    for (const { path, seal } of gearcase.covers) {
      state.covers[makeStateKey(path, instance)] = {
        position: 'tight',
        wasRemoved: false,
        ...INITIAL_PART,
        cured: false,
      }
      state.seals[makeStateKey(seal.path, instance)] = 'undisturbed'
    }
    for (const { path, seals } of gearcase.filters) {
      const filterState = {
        position: 'tight',
        wasRemoved: false,
        inspected: false,
        cleaned: false,
        ...INITIAL_PART,
      } as const
      state.filters[makeStateKey(path, instance)] = filterState
      for (const seal of seals) state.seals[makeStateKey(seal.path, instance)] = 'undisturbed'
    }
  }
  return state
}

/** An independent copy. */
export function copyState(state: MutableState): MutableState {
  const { chocked, secured, lifted, onStands, onRamps, shields, seals } = state
  return {
    ...state,
    chocked: [...chocked],
    secured: [...secured],
    lifted: [...lifted],
    onStands: [...onStands],
    onRamps: [...onRamps],
    shields: { ...shields },
    seals: { ...seals },
    gearcases: copyParts(state.gearcases, (candidate) => ({ ...candidate })),
    openings: copyParts(state.openings, (candidate) => ({ ...candidate, outAt: [...candidate.outAt] })),
    covers: copyParts(state.covers, (candidate) => ({ ...candidate })),
    filters: copyParts(state.filters, (candidate) => ({ ...candidate })),
  }
}

function copyParts<T>(parts: Readonly<Record<string, T>>, copy: (part: T) => T): Record<string, T> {
  const copies: Record<string, T> = {}
  for (const key in parts) copies[key] = copy(parts[key] as T)
  return copies
}
