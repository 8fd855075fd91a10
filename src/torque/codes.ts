import type { Params } from '../finding.js'
import type { Figure, LengthUnit, TorqueUnit } from '../quantity/unit.js'

type Torque = { value: number | Figure; unit: TorqueUnit }
type Band = { min: Torque; max: Torque }
type Length = { value: number; unit: LengthUnit }
/** One of: a nominal, or limits. */
type Angle = { nominal?: Figure; min?: Figure; max?: Figure }
type Told = { code: string; params: Params }

/** Every code that the torque room emits, with its params. */
export interface TorqueCodes {
  /** The setting taken: a mark of the wrench inside the band, nearest to the nominal or to the middle. */
  'torque/setting-chosen': { setting: Torque; aim: Torque; from: 'nominal' | 'middle' }
  /** With the wrench's permissible error the true torque stays inside the band. */
  'torque/true-band-inside': { trueBand: Band; band: Band; percent: number; of: 'reading' | 'full scale' }
  /** With the wrench's permissible error the true torque may leave the band. */
  'torque/true-band-leaves': { trueBand: Band; band: Band; percent: number; of: 'reading' | 'full scale' }
  /** Usable by the 2017 edition, but below 20 % of full scale. */
  'torque/low-on-scale': { setting: Torque; highest: Torque; sharePercent: number }
  'torque/below-lowest-mark': { wanted: Torque; lowest: Torque }
  'torque/below-fifth-of-scale': { wanted: Torque; from: Torque; highest: Torque }
  'torque/below-declared-range': { wanted: Torque; from: Torque }
  'torque/above-highest-mark': { wanted: Torque; highest: Torque }
  'torque/above-declared-range': { wanted: Torque; to: Torque }
  'torque/no-mark-inside': { band: Band; below?: Torque; above?: Torque; unit: TorqueUnit }
  /** An electronic wrench's display step is more than a quarter of its permissible error there. */
  'torque/resolution-too-coarse': { wanted: Torque; from: Torque; step: Torque }
  /** An error stated of full scale is as large as the setting itself. */
  'torque/error-as-large-as-setting': { wanted: Torque; error: Torque }
  'torque/band-not-stated': { nominal: Torque }
  'torque/tolerance-from-caller': { nominal: Torque; percent: number; band: Band }
  'torque/one-limit-only': { limit: Torque; which: 'least' | 'most' }
  'torque/band-empty': { band: Band }
  'torque/not-stated': Record<never, never>
  'torque/by-turns': { min: Figure; max?: Figure }
  'torque/then-angle': { angle: Angle }
  /** The accuracy of this type of wrench by ISO 6789 was not read in a source. */
  'torque/iso-figure-unknown': { type: string }
  'torque/stage': { stage: number; stages: number; reason: Told }
  'torque/adaptor-changes-setting': { setting: Torque; torque: Torque; ratio: number }
  'torque/lever-length-missing': { extension: Length }
  'torque/drive-does-not-reach': { wrench: string; wanted: string }
  /** A published band for plugs of this thread. */
  'torque/plug-band': { thread: string; housing: string; band: Band }
  'torque/inside-plug-band': { torque: Band; band: Band }
  'torque/outside-plug-band': { torque: Band; band: Band }
  'torque/slip': { torque: Torque; factor: string; becomes: Torque; meant?: string; band: Band }
  'torque/plug-not-in-table': { thread: string }
  'torque/thread-unreadable': { thread: string }
  'torque/swapped-fits-better': { fill: Torque; drain: Torque; fillThread: string; drainThread: string }
  'torque/not-swapped': { fill: Torque; drain: Torque }
  'torque/same-plug-band': { fillThread: string; drainThread: string }
  'torque/class-unknown': { propertyClass: string }
  'torque/class-not-for-size': { propertyClass: string; thread: string; range: string }
  'torque/no-stress-area': { thread: string }
  'torque/proof-load': { stress: number; area: number; load: number }
  'torque/above-proof': { load: number; proof: number; sharePercent: number }
  'torque/below-proof': { load: number; proof: number; sharePercent: number }
  'torque/cycles-run-out': { used: number; limit: number }
  'torque/cycles-left': { used: number; limit: number }
  'torque/cycles-not-kept': { limit: number }
  'torque/calibration-date-missing': Record<never, never>
  'torque/turns': { min: Figure; max?: Figure }
  'torque/turns-open': { min: Figure }
}
