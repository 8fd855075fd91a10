import type { Id, WheelMark } from '../spec/index.js'

/** Where a plug is: `cracked` is loose in its seat, `nipped` turned in by hand, `in` fitted with its seal but not tight. */
export type PlugPosition = 'tight' | 'cracked' | 'nipped' | 'out' | 'in'

export interface OpeningState {
  readonly position: PlugPosition
  readonly everCracked: boolean
  readonly areaClean: boolean
  readonly faceWiped: boolean
  readonly magnetSeen: boolean
  readonly magnetClean: boolean
  /** Wheel positions at which the plug came out. */
  readonly outAt: readonly WheelMark[]
}

export interface CoverState {
  readonly position: 'tight' | 'off' | 'in'
  readonly everOff: boolean
  readonly areaClean: boolean
  readonly faceWiped: boolean
  readonly magnetSeen: boolean
  readonly magnetClean: boolean
  readonly cured: boolean
}

/** `used`: its plug was opened since it was fitted; `off`: the old one is away. */
export type SealState = 'undisturbed' | 'used' | 'off' | 'new' | 'inspected'

export interface GearcaseState {
  readonly oil: 'old' | 'out' | 'new'
  readonly panPlaced: boolean
  readonly oilSeen: boolean
  readonly breatherClear: boolean
  readonly wheelMark: WheelMark | 'not known'
  readonly measured: boolean
  readonly additiveIn: boolean
  readonly hoseEmpty: boolean
  readonly levelChecked: boolean
  /** Looked whether it needs topping up, since the last level check. */
  readonly toppedUp: boolean
  readonly ranSinceFill: boolean
  readonly levelCheckedSinceRun: boolean
  readonly wipedDown: boolean
  readonly leaksChecked: boolean
}

/**
 * Everything that a procedure has changed so far. Openings and covers are keyed by pointer and instance
 * (`/gearcases/hub/openings/plug@left`), seals and gearcases likewise. A plug is one thing however its wheel stands, so
 * the wheel's position is a fact of the gearcase, and `outAt` remembers at which positions the plug came out.
 */
export interface ProcedureState {
  readonly manualRead: boolean
  readonly protectionWorn: boolean
  readonly ground: 'not known' | 'level'
  readonly engine: 'running' | 'stopped'
  /** Axles with chocks at their wheels. */
  readonly chocked: readonly Id[]
  /** Supports that it was raised at; none: it stands on its wheels. */
  readonly lifted: readonly Id[]
  /** Of those, the ones that rest on stands; the others hang on the jack. */
  readonly onStands: readonly Id[]
  readonly oilWarm: boolean
  readonly settled: boolean
  readonly usedOil: 'none' | 'in the pan' | 'taken away'
  readonly recorded: boolean
  readonly shields: Readonly<Record<string, 'on' | 'off'>>
  readonly gearcases: Readonly<Record<string, GearcaseState>>
  readonly openings: Readonly<Record<string, OpeningState>>
  readonly covers: Readonly<Record<string, CoverState>>
  readonly seals: Readonly<Record<string, SealState>>
}

type Writable<T> = T extends readonly (infer Item)[]
  ? Writable<Item>[]
  : T extends object
    ? { -readonly [K in keyof T]: Writable<T[K]> }
    : T

/** A state while the simulation writes on it. */
export type MutableState = Writable<ProcedureState>
