import { type FindingMaker, makeFinding, makeReason, type ReasonMaker } from '../base/index.js'

/** Signal words in the sense of ANSI Z535.6; `notice` is about damage, never about injury. */
export type SignalWord = 'danger' | 'warning' | 'caution' | 'notice'

/** The names of the part on the sheet. */
export type AtPart = {
  readonly step?: string
  readonly part?: string
  readonly gearcase?: string
  readonly instance?: string
}

export type GearcaseParams = { readonly part: string; readonly gearcase: string }
/** The reason why work cannot be done on ramps. */
export type RampObstacle =
  | 'must not run'
  | 'manual forbids ramps'
  | 'axle not known'
  | 'wheel must turn'
  | 'level needs flat ground'
  | 'level needs stands'
  | 'guard is off'
type SignalParams = { readonly signal: SignalWord }

export interface ProcedureCodes {
  // Preconditions of a step.
  'procedure/variant-not-found': AtPart
  'procedure/manual-not-read': AtPart
  'procedure/protection-not-worn': AtPart
  'procedure/machine-not-on-level-ground': AtPart
  'procedure/engine-running': AtPart
  'procedure/wheels-not-chocked': AtPart
  'procedure/machine-not-secured': AtPart
  'procedure/machine-not-secured-for-run': AtPart
  'procedure/chocks-or-pan-in-place': AtPart
  'procedure/guard-not-refitted': AtPart
  'procedure/chocks-on-lifted-wheels': AtPart
  'procedure/axle-not-chocked': AtPart
  'procedure/jack-as-support': AtPart
  'procedure/ramps-and-jack': AtPart
  'procedure/ramps-not-permitted': AtPart
  'procedure/driven-with-plug-loose': AtPart
  'procedure/machine-not-raised': AtPart
  'procedure/drain-not-raised': AtPart
  'procedure/lowered-with-drain-open': AtPart
  'procedure/run-on-stands': AtPart
  'procedure/machine-must-not-run': AtPart
  'procedure/run-without-oil': AtPart
  'procedure/wheel-not-clear': AtPart
  'procedure/wheel-turned-with-plug-out': AtPart
  'procedure/wrong-attitude': AtPart
  'procedure/area-not-cleaned': AtPart
  'procedure/shield-in-the-way': AtPart
  'procedure/fill-not-cracked': AtPart
  'procedure/fill-plug-loose': AtPart
  'procedure/plug-not-cracked': AtPart
  'procedure/no-pan': AtPart
  'procedure/opening-closed': AtPart
  'procedure/drain-not-out': AtPart
  'procedure/part-not-removed': AtPart
  'procedure/fill-not-vented': AtPart
  'procedure/oil-not-warm': AtPart
  'procedure/sample-not-taken': AtPart
  'procedure/sample-too-late': AtPart
  'procedure/breather-not-cleared': AtPart
  'procedure/wrong-wheel-mark': AtPart
  'procedure/magnet-not-inspected': AtPart
  'procedure/magnet-not-cleaned': AtPart
  'procedure/filter-before-drain': AtPart
  'procedure/filter-not-reached': AtPart
  'procedure/filter-not-inspected': AtPart
  'procedure/filter-not-cleaned': AtPart
  'procedure/filter-left-out': AtPart
  'procedure/old-seal-not-removed': AtPart
  'procedure/face-not-wiped': AtPart
  'procedure/seal-not-renewed': AtPart
  'procedure/part-not-fitted': AtPart
  'procedure/oil-not-drained': AtPart
  'procedure/drain-left-closed': AtPart
  'procedure/oil-not-inspected': AtPart
  'procedure/oil-not-measured': AtPart
  'procedure/oil-poured-twice': AtPart
  'procedure/additive-missing': AtPart
  'procedure/drain-not-tightened': AtPart
  'procedure/cover-not-cured': AtPart
  'procedure/cover-not-tightened': AtPart
  'procedure/hose-not-empty': AtPart
  'procedure/oil-not-settled': AtPart
  'procedure/level-not-checked': AtPart
  'procedure/level-not-rechecked': AtPart
  'procedure/oil-not-topped-up': AtPart
  'procedure/part-not-tightened': AtPart
  'procedure/gearcase-not-wiped': AtPart
  'procedure/leaks-not-checked': AtPart
  'procedure/leaks-not-checked-after-run': AtPart
  // Conditions after the last step.
  'procedure/filter-not-changed': AtPart
  'procedure/oil-not-refilled': AtPart
  'procedure/no-short-run': AtPart
  'procedure/shield-left-off': AtPart
  'procedure/machine-not-lowered': AtPart
  'procedure/used-oil-left': AtPart
  'procedure/work-not-recorded': AtPart
  // Mistakes in one step.
  'procedure/unknown-action': { readonly step: string; readonly action: string }
  'procedure/duplicate-step-id': { readonly step: string }
  'procedure/wrong-part': {
    readonly step: string
    readonly action: string
    readonly required: readonly string[]
  }
  'procedure/unknown-part': { readonly step: string; readonly on: string }
  'procedure/instance-missing': {
    readonly step: string
    readonly gearcase: string
    readonly known: readonly string[]
  }
  'procedure/unknown-instance': {
    readonly step: string
    readonly instance: string
    readonly gearcase?: string
    readonly known: readonly string[]
  }
  'procedure/wheel-mark-missing': AtPart
  'procedure/part-not-on-this-machine': AtPart
  'procedure/figure-missing': { readonly step: string; readonly name: string; readonly pointer: string }
  'procedure/wrong-figure': {
    readonly step: string
    readonly name: string
    readonly pointer: string
    readonly found: string
  }
  'procedure/dangling-pointer': { readonly step: string; readonly name: string; readonly found: string }
  'procedure/other-sheet': {
    readonly named: string
    readonly namedRevision: string
    readonly sheet: string
    readonly revision: string
  }
  'procedure/unknown-service': { readonly service: string; readonly known: readonly string[] }
  'procedure/only-without-match': {
    readonly service: string
    readonly gearcase: string
    readonly instance?: string
  }
  'procedure/service-not-for-this-machine': { readonly service: string }
  'procedure/sample-not-possible': { readonly service: string; readonly gearcase: string }
  'procedure/part-not-known': { readonly part: string; readonly missing: readonly string[] }
  // Obstacles to a procedure, and remarks on one that can be written.
  'procedure/oil-owner-missing': GearcaseParams
  'procedure/no-fill-opening': GearcaseParams
  'procedure/no-way-to-empty': GearcaseParams
  'procedure/no-level-opening': GearcaseParams
  'procedure/no-supports': GearcaseParams
  'procedure/supports-on-another-axle': GearcaseParams
  'procedure/wheel-on-the-ground': GearcaseParams
  'procedure/drain-left-out': GearcaseParams
  'procedure/attitude-not-stated': GearcaseParams
  'procedure/second-lift': GearcaseParams
  'procedure/ramps-not-possible': { readonly because: RampObstacle; readonly part?: string }
  'procedure/ramps-not-stated': { readonly part: string }
  // Cautions before a step.
  'procedure/caution-machine-may-move': SignalParams
  'procedure/caution-must-not-run': SignalParams
  'procedure/caution-exhaust': SignalParams
  'procedure/caution-lifting': SignalParams
  'procedure/caution-parking-brake': SignalParams
  'procedure/caution-stands': SignalParams
  'procedure/caution-ramps': SignalParams
  'procedure/caution-hot-oil': SignalParams
  'procedure/caution-oil-on-skin': SignalParams
  'procedure/caution-wheel-turns': SignalParams
  'procedure/caution-rolling': SignalParams
  'procedure/caution-chips': SignalParams
  'procedure/caution-used-oil': SignalParams
  'procedure/caution-weeping-washer': SignalParams
  'procedure/caution-weeping-taper': SignalParams
  'procedure/caution-sharp-scraper': SignalParams
  'procedure/caution-shield-stays': SignalParams & { readonly shield: string }
}

/** The codes with these params. */
export type CodeWithParams<SomeParams> = {
  [Code in keyof ProcedureCodes]: [SomeParams, ProcedureCodes[Code]] extends [
    ProcedureCodes[Code],
    SomeParams,
  ]
    ? Code
    : never
}[keyof ProcedureCodes]

export const procedureReason: ReasonMaker<ProcedureCodes> = makeReason

/** Makes a finding; the compiler checks that code and params match. */
export const procedureFinding = makeFinding as FindingMaker<ProcedureCodes>
