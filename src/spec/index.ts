// What other rooms may use of this one.
export type { JsonNeed, NotPlain, SpecCodes, TypeName } from './codes.js'
export {
  diffSheets,
  type FactChange,
  type LeafAt,
  type LeafChange,
  type SheetDifference,
} from './diffSheets.js'
export {
  type AnyDocument,
  DOCUMENT_NAMES,
  type DocumentName,
  type Documents,
  type ParseOptions,
  READABLE_VERSIONS,
} from './documents.js'
export { type FoundLeaf, findLeaves } from './findLeaves.js'
export { type FoundValue, findStatedValues } from './findStatedValues.js'
export { judgePart } from './judgePart.js'
export type {
  BondedSeal,
  Condition,
  CrushWasher,
  CutGasket,
  Elastomer,
  GradeOil,
  Id,
  Identity,
  Interval,
  IntervalDistance,
  IntervalStated,
  Leaf,
  LeafKind,
  Leaves,
  LimitedSlip,
  LiquidGasket,
  MakerFluid,
  NoSeal,
  NotStated,
  OilAdditive,
  OilChoice,
  Oils,
  OilsStated,
  ORing,
  PlaceOnMachine,
  PlaceStated,
  PrintedValue,
  Replacement,
  Seal,
  SourceRef,
  SpecValue,
  StatedValue,
  ThreadCondition,
  ThreadSealant,
  Tightening,
  TighteningNotStated,
  TorqueTightening,
  TurnsTightening,
} from './leaf.js'
export { findLeafRow, type LeafBelow, type LeafRole, listLeafRows } from './leafTable.js'
export type {
  DistanceMeter,
  HourMeter,
  LogEvent,
  MachineLog,
  MeterName,
  MeterReading,
  TopUp,
} from './machineLog.js'
export { nameOil } from './nameOil.js'
export type { Action, ProcedureDocument, ServiceOnPart, Step } from './procedureDocument.js'
export { readOverrides } from './readOverrides.js'
export { requireDocument } from './requireDocument.js'
export type { IdentityFact, Resolved, Trace } from './resolved.js'
export { resolveLeaf } from './resolveLeaf.js'
export { resolveVariant, type VariantVerdict } from './resolveVariant.js'
export type {
  LeakFinding,
  MagnetFinding,
  OilFinding,
  RecordEntry,
  SealDone,
  ServiceRecord,
  SheetReference,
  TighteningDone,
} from './serviceRecord.js'
export type {
  Access,
  CountFrom,
  Cover,
  Drive,
  DriveKind,
  Emptying,
  FastenerSet,
  Fill,
  FillMethod,
  Gearcase,
  GearcaseType,
  Intervals,
  Level,
  Machine,
  MachineEventKind,
  OilSpace,
  Opening,
  OpeningRole,
  OpeningUse,
  Override,
  OverrideLeaf,
  OwnOilSpace,
  Service,
  SevereUse,
  SharedOilSpace,
  Shield,
  Source,
  SpecSheet,
  Variant,
  Waiver,
  WheelMark,
} from './specSheet.js'
export type { OfferedOil, OilContainer, Price, Stock, StockSeal } from './stock.js'
export type {
  Adaptor,
  DrainPan,
  FunnelAndHose,
  Jack,
  MeasuringVessel,
  Socket,
  Stands,
  Toolbox,
  TorqueWrench,
  WrenchAccuracy,
  WrenchScale,
} from './toolbox.js'
