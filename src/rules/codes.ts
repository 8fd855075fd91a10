import type { Params } from '../base/index.js'
import type { IntervalCodes, MeterCodes } from '../interval/index.js'
import type { GradeSystem } from '../oil/index.js'
import type { ProcedureCodes } from '../procedure/index.js'
import type {
  Figure,
  FigureSlip,
  MassUnit,
  Measure,
  TorqueUnit,
  Unit,
  VolumeUnit,
} from '../quantity/index.js'
import type {
  CaseFace,
  OpeningRole,
  PrintedValue,
  UnmeasuredTightening,
  WarrantyFact,
} from '../spec/index.js'
import type { SlipFactor } from '../torque/index.js'
import type { SerialMistake } from './lookup/findSerialMistake.js'
import type { ReferenceTarget } from './lookup/listSheetReferences.js'

/** A quantity in params. It is a type because an interface is not assignable to `Params`. */
type Amount<U extends Unit> = { readonly value: number; readonly unit: U }
type Millilitres = Amount<'mL'>
type Volume = Amount<VolumeUnit>
type Torque = Amount<TorqueUnit>
type PrintedPair = { readonly first: PrintedValue; readonly second: PrintedValue }
/** A reason from another function, in params. */
type ReasonParams = { readonly code: string; readonly params: Params }
/** A name that does not exist, the first existing names, the number of the others, and the probable name. */
type UnknownName = {
  readonly id: string
  readonly known: readonly string[]
  readonly more: number
  readonly meant: string | undefined
}
type PrintedFigure = { readonly value: Figure; readonly unit: Unit }
type BoltLoadParams = {
  part: string
  thread: string
  propertyClass: string
  torque: PrintedFigure
  load: Amount<'N'>
  proof: Amount<'N'>
}

/** Every code of the rules with the type of its params; the texts are in `message/<language>/rules`. */
export interface RuleCodes {
  // spec: sheets, and documents that name a sheet
  'spec/condition-empty': { holds: 'always' | 'never' }
  'spec/dangling-reference': { to: ReferenceTarget } & UnknownName
  'spec/id-used-twice': { kind: string; id: string }
  'spec/instances-without-per': { gearcase: string; count: number }
  'spec/limits-reversed': { min: Figure; max: Figure; unit: Unit }
  'spec/model-years-reversed': { from: number; to: number }
  'spec/no-fill-opening': { gearcase: string }
  'spec/no-way-to-empty': { gearcase: string }
  'spec/oil-space-chain': { gearcase: string; with: string }
  'spec/opening-without-role': { opening: string; role: OpeningRole; use: string }
  'spec/overlapping-overrides': { target: string; with: string }
  'spec/override-of-other-kind': { target: string; kind: string; there: string }
  'spec/override-target-missing': { target: string }
  'spec/part-supersedes-itself': { partNumber: string; numbers: readonly string[] }
  'spec/period-as-hours': { hours: Figure; months: number }
  'spec/serial-range-wrong': { what: SerialMistake; prefix?: string; from?: string; to?: string }
  'spec/sheet-not-found': UnknownName
  'spec/sheet-of-other-revision': { id: string; revision: string; known: readonly string[] }
  'spec/tolerance-too-large': { value: Figure; minus: Figure; plus: Figure; unit: Unit }
  'spec/unit-of-other-measure': { unit: Unit; measure: Measure; required: Measure }
  'spec/unknown-variant': UnknownName
  'spec/variants-overlap': { variant: string; with: string }
  'spec/support-on-another-axle': { gearcase: string; axle: string; lifted: readonly string[] }
  'spec/waiver-without-finding': { code: string; waived: string }
  'spec/wheel-mark-missing': { opening: string }
  'spec/drain-at-mark-up': { opening: string }
  'spec/drain-not-named': { opening: string; gearcase: string }
  'spec/implausible-drain-temperature': { gearcase: string; temperature: PrintedValue }
  'spec/position-contradicts-place': { part: string; place: string; position: string }
  'spec/position-off-face': {
    part: string
    face: CaseFace
    coordinate: 'across' | 'height' | 'offset'
  }
  'spec/level-on-raised-end': { gearcase: string; raised: 'nothing' | 'one end' }
  'spec/gearcase-without-change': { gearcase: string }
  'spec/filter-without-change': { gearcase: string }
  'spec/source-date-in-the-future': { date: string; today: string }
  'spec/implausible-mass': { mass: PrintedValue }
  'spec/size-spelling': { size: string; meant: string }
  'spec/override-far-from-base': { figure: PrintedValue; base: PrintedValue }
  'spec/model-year-gap': { from: number; to: number }
  'spec/override-equals-base': { target: string }
  // quantity, thread, torque
  'quantity/interval-distances-differ': { first: PrintedFigure; second: PrintedFigure }
  'quantity/second-unit-disagrees': PrintedPair & {
    missPercent: number | undefined
    how: 'miss' | 'differ' | 'not-comparable'
  }
  'quantity/second-unit-slip': PrintedPair & { slip: FigureSlip; ratio: string }
  'quantity/distance-converted-wrong-way': { first: PrintedFigure; second: PrintedFigure }
  'thread/designation-unreadable': { thread: string; part: string; because: ReasonParams | null }
  'torque/above-proof-load': BoltLoadParams
  'torque/fill-and-drain-swapped': { gearcase: string; fill: PrintedValue; drain: PrintedValue }
  'torque/slip-at-plug': {
    part: string
    thread: string
    torque: PrintedValue
    factor: SlipFactor
    becomes: Torque
    meant: TorqueUnit | undefined
  }
  'torque/stages-not-rising': { part: string; before: PrintedFigure; step: PrintedFigure }
  'torque/turns-on-parallel-thread': { part: string; thread: string }
  'torque/large-for-drive': { part: string; drive: string; torque: PrintedValue; limit: Torque }
  'torque/turns-reversed': { part: string; min: Figure; max: Figure }
  'torque/small-for-class': BoltLoadParams
  'torque/fill-and-drain-far-apart': { gearcase: string; high: PrintedValue; low: PrintedValue }
  'torque/implausible-angle': { part: string; angle: PrintedValue }
  'torque/implausible-turns': { part: string; turns: Figure }
  'torque/unknown-class': { part: string; propertyClass: string; meant: string | undefined }
  // seal, oil, fill
  'seal/crush-washer-reused': { part: string }
  'seal/material-doubtful-in-oil': { part: string; material: string; reason: ReasonParams }
  'seal/material-not-for-oil': { part: string; material: string }
  'seal/o-ring-size-differs': { part: string; reason: ReasonParams }
  'seal/washer-does-not-fit': { part: string; reason: ReasonParams }
  'seal/none-at-opening': { part: string }
  'seal/none-beside-seal': { part: string }
  'seal/none-on-parallel-thread': { part: string; thread: string }
  'seal/o-ring-far-from-plug': { part: string; inside: Amount<'mm'>; thread: string }
  'seal/sealant-on-dry-thread': { part: string }
  'seal/cure-of-zero': { part: string }
  'oil/additive-counted-twice': {
    additive: string
    volume: Millilitres
    refill: Millilitres
    dryFill: Millilitres
  }
  'oil/additive-exceeds-refill': { additive: string; volume: Millilitres; refill: Millilitres }
  'oil/ambient-gap': { from: PrintedFigure; to: PrintedFigure }
  'oil/unknown-edition': { grade: string; system: GradeSystem; edition: string; known: readonly string[] }
  'oil/unknown-grade': { grade: string; system: GradeSystem; others: readonly GradeSystem[] }
  'oil/unknown-category': { category: string }
  'oil/viscosity-outside-grade': { oil: string; grade: string; viscosity: Amount<'mm2/s'> }
  'fill/portion-larger-than-refill': { gearcase: string; portion: Millilitres; refill: Millilitres }
  'fill/implausible-refill': { gearcase: string; refill: PrintedValue; limit: Amount<'L'> }
  'fill/refill-larger-than-dry-fill': { gearcase: string; refill: Millilitres; dryFill: Millilitres }
  'fill/minutes-with-engine-running': { gearcase: string }
  'fill/dry-fill-far-above-refill': { gearcase: string; dryFill: Millilitres; refill: Millilitres }
  'fill/implausible-level-depth': { gearcase: string; below: PrintedValue }
  // log
  'log/date-in-the-future': { date: string; today: string }
  'log/oil-not-permitted': { gearcase: string; oil: string; permitted: readonly string[] }
  'log/pause-reversed': { from: string; to: string }
  'log/record-of-other-machine': { machine: string; log: string; record: string }
  'log/unknown-part': UnknownName
  'log/used-before-commissioned': { date: string; commissioned: string }
  'log/meter-through-pause': { meter: 'hours' | 'distance'; first: number; last: number }
  'log/variant-contradicted': { variant: string | undefined; candidates: readonly string[] }
  // toolbox and stock
  'toolbox/implausible-accuracy': { wrench: string; percent: number }
  'toolbox/calibration-in-the-future': { wrench: string; date: string; today: string }
  'toolbox/declared-range-reversed': { wrench: string; min: Torque; max: Torque }
  'toolbox/scale-wrong': {
    wrench: string
    lowest: number
    highest: number
    graduation: number
    unit: TorqueUnit
  }
  'toolbox/scales-disagree': { wrench: string; first: Torque; other: Torque }
  'toolbox/implausible-load-rating': { tool: string; rating: Amount<MassUnit> }
  'toolbox/vessel-graduation': { vessel: string; size: Volume; mark: Volume | undefined }
  'stock/opened-larger-than-size': { container: string; opened: Volume; size: Volume }
  'stock/implausible-density': { container: string; density: Amount<'kg/m3'> }
  'stock/viscosities-swapped': { container: string; kv40: Amount<'mm2/s'>; kv100: Amount<'mm2/s'> }
  'stock/implausible-pour-point': { container: string; pourPoint: Amount<'degC'> }
  // record
  'record/corrects-itself': { id: string }
  'record/corrects-unknown-record': UnknownName
  'record/date-in-the-future': { date: string; today: string }
  'record/leak-left': { gearcase: string; found: 'weeping' | 'dripping' }
  'record/level-not-right': { gearcase: string; level: 'below' | 'above' | 'not checked' }
  'record/machine-not-found': UnknownName
  'record/metal-in-the-oil': { gearcase: string; found: 'chips' | 'pieces' | 'metallic' }
  'record/oil-not-permitted': { gearcase: string; oil: string; permitted: readonly string[] }
  'record/part-not-on-machine': { part: string }
  'record/plug-not-tightened': { part: string }
  'record/reading-contradicts-log': { reason: ReasonParams }
  'record/reading-missing': { meter: 'hours' | 'distance' }
  'record/refill-not-recorded': { gearcase: string }
  'record/refill-outside-tolerance': {
    gearcase: string
    refilled: Volume
    printedRefill: PrintedValue<VolumeUnit>
    byLevel: boolean
    reason: ReasonParams
  }
  'record/seal-not-new': { part: string; seal: string; usedAgain: boolean }
  'record/tightening-method-differs': {
    part: string
    done: 'turns' | 'torque set'
    required: 'turns' | 'torque'
  }
  'record/tightening-not-measured': { part: string; done: UnmeasuredTightening }
  'record/torque-outside-band': {
    part: string
    set: Torque
    stated: PrintedValue<TorqueUnit>
    side: 'below' | 'above'
  }
  'record/turns-outside-band': { part: string; turns: number; min: Figure; max: Figure | undefined }
  'record/unknown-container': UnknownName
  'record/unknown-part': UnknownName
  'record/unknown-tool': UnknownName
  'record/water-in-the-oil': { gearcase: string }
  'record/wrench-cannot-reach': {
    part: string
    wrench: string
    torque: Torque
    because: readonly ReasonParams[]
  }
  'record/drained-far-below-refill': { gearcase: string; drained: Volume; refilled: Volume }
  'record/drain-not-opened': { gearcase: string }
  'record/filter-not-changed': { part: string; change: string }
  'record/shield-not-refitted': { shield: string; gearcase: string }
  'record/wrench-out-of-calibration': { wrench: string; calibrated: string; date: string }
  'record/more-than-container-held': { container: string; used: Millilitres; held: Millilitres }
  'record/warranty-facts-missing': { lacks: readonly WarrantyFact[] }
  'record/certificate-expired': { wrench: string; certificate: string; validTo: string; date: string }
  'record/other-part-number': { part: string; fitted: string; stated: string }
  'spec/implausible-hours': { hours: Figure }
}

/** The codes of the findings of `checkDocuments`: rules, meters and procedures. */
export interface DocumentCodes
  extends RuleCodes,
    MeterCodes,
    ProcedureCodes,
    Pick<
      IntervalCodes,
      | 'interval/first-longer-than-repeat'
      | 'interval/fractional-period'
      | 'interval/implied-speed'
      | 'interval/log-speed'
      | 'interval/months-as-days'
      | 'interval/severe-longer-than-repeat'
      | 'interval/window-not-below-repeat'
    > {}
