import { makeReason, type Params, type ReasonMaker } from '../base/index.js'
import type { Figure, LengthUnit, TorqueUnit } from '../quantity/index.js'

type Torque = { value: number | Figure; unit: TorqueUnit }
type Band = { min: Torque; max: Torque }
type Length = { value: number; unit: LengthUnit }
type Force = { value: number; unit: 'N' }
/** A nominal, or limits. */
type Angle = { nominal?: Figure; min?: Figure; max?: Figure }
type ReasonInput = { code: string; params: Params }

/** Codes of the torque functions with their params. */
export interface TorqueCodes {
  /** The setting is the wrench's mark inside the band that is nearest to the nominal or the middle. */
  'torque/setting-chosen': { setting: Torque; aim: Torque; from: 'nominal' | 'middle' }
  /**
   * A nominal without tolerance is between two marks. `percent`: how far the chosen mark is above the
   * nominal; negative if below.
   */
  'torque/nearest-mark': { setting: Torque; nominal: Torque; percent: number }
  /** With the wrench's permissible error the true torque stays inside the band. */
  'torque/actual-torque-in-band': {
    trueBand: Band
    band: Band
    percent: number
    of: 'reading' | 'full scale'
  }
  /** With the wrench's permissible error the true torque may leave the band. */
  'torque/actual-torque-out-of-band': {
    trueBand: Band
    band: Band
    percent: number
    of: 'reading' | 'full scale'
  }
  /** ISO 6789:2017 permits it, but it is below 20 % of full scale. */
  'torque/low-on-scale': { setting: Torque; highest: Torque; sharePercent: number }
  'torque/below-lowest-mark': { required: Torque; lowest: Torque }
  'torque/below-fifth-of-scale': { required: Torque; from: Torque; highest: Torque }
  'torque/below-declared-range': { required: Torque; from: Torque }
  'torque/above-highest-mark': { required: Torque; highest: Torque }
  'torque/above-declared-range': { required: Torque; to: Torque }
  /** `error` is present if the manual prints a nominal without tolerance: no mark is within that error of it. */
  'torque/no-mark-in-band': {
    band: Band
    below?: Torque
    above?: Torque
    unit: TorqueUnit
    error?: { percent: number; of: 'reading' | 'full scale' }
  }
  /** The display step of an electronic wrench is more than a quarter of its permissible error at this torque. */
  'torque/resolution-too-coarse': { required: Torque; from: Torque; step: Torque }
  /** The error, a percentage of full scale, is as large as the setting. */
  'torque/error-as-large-as-setting': { required: Torque; error: Torque }
  'torque/band-not-stated': { nominal: Torque }
  'torque/tolerance-from-caller': { nominal: Torque; percent: number; band: Band }
  'torque/one-limit-only': { limit: Torque; which: 'minimum' | 'maximum' }
  'torque/band-empty': { band: Band }
  'torque/not-stated': Record<never, never>
  'torque/by-turns': { min: Figure; max?: Figure }
  'torque/angle-after-torque': { angle: Angle }
  /** No source was read for the permissible error of this type of wrench in ISO 6789. */
  'torque/iso-figure-unknown': { type: string }
  'torque/stage': { stage: number; stages: number; reason: ReasonInput }
  'torque/adaptor-changes-setting': { setting: Torque; torque: Torque; ratio: number }
  'torque/extension-missing': Record<never, never>
  'torque/lever-length-missing': { extension: Length }
  'torque/drive-does-not-reach': { wrench: string; required: string }
  'torque/usual-for-plug': { torque: Torque; band: Band; thread: string }
  'torque/unusual-for-plug': { torque: Torque; band: Band; thread: string }
  /** A known ratio would make the figure usual; `meant` is the probable unit. */
  'torque/unit-slip': { torque: Torque; factor: string; becomes: Torque; meant?: TorqueUnit; band: Band }
  'torque/thread-missing': Record<never, never>
  'torque/thread-unreadable': { thread: string }
  'torque/swapped-torques-fit-better': {
    fill: Torque
    drain: Torque
    fillThread: string
    drainThread: string
  }
  'torque/plugs-not-swapped': { fill: Torque; drain: Torque }
  'torque/same-plug-figures': { fillThread: string; drainThread: string }
  'torque/class-unknown': { propertyClass: string }
  'torque/class-not-for-size': { propertyClass: string; thread: string; from: string; to: string }
  'torque/class-not-for-thread': { propertyClass: string; thread: string }
  'torque/proof-load': { stressMPa: number; area: number; load: Force }
  'torque/clamp-load': { torque: Torque; nutFactor: number; force: Force }
  'torque/above-proof': { max: Force; proof: Force }
  'torque/below-proof': { max: Force; proof: Force }
  'torque/cycles-used-up': { used: number; limit: number }
  'torque/cycles-left': { used: number; limit: number }
  'torque/cycles-not-counted': { limit: number }
  'torque/calibration-date-missing': Record<never, never>
  'torque/by-torque': Record<never, never>
  'torque/turns': { min: Figure; max?: Figure }
  'torque/turns-without-maximum': { min: Figure }
  'torque/turns-correct': { turns: number; min: Figure; max?: Figure }
  'torque/turns-too-few': { turns: number; min: Figure }
  'torque/turns-too-many': { turns: number; max: Figure }
  'torque/setting-not-a-mark': { set: Torque; below?: Torque; above?: Torque }
}

export const torqueReason: ReasonMaker<TorqueCodes> = makeReason
