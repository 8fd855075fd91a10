// The functions and types that other modules use.
export type * from './codes.js'
export * from './diffSheets.js'
export type { MachineLogInput, ServiceRecordInput, StockInput, ToolboxInput } from './documentInputs.js'
export * from './documents.js'
export type { Filter, FilterHold } from './filter.js'
export { type FoundLeaf, type FoundValue, findLeaves, findStatedValues, readOverrides } from './findLeaves.js'
export {
  isMoved,
  moveToWritten,
  type TextPart,
  type WrittenPlace,
  type WrittenPlaces,
} from './findWritten.js'
export { formatOilName } from './formatOilName.js'
export type * from './gearcase.js'
export { WHEEL_MARKS } from './gearcase.js'
export { isDrainOpened, isFilterRenewed } from './isDrainOpened.js'
export { judgePart } from './judgePart.js'
export type * from './leaf.js'
export { ACROSS_FACE, CASE_FACES, DRIVE_KINDS, FACE_HEIGHTS } from './leaf.js'
export { findLeafRow, type LeafBelow, type LeafPlace, type LeafRole, listLeafTypes } from './leafTable.js'
export type * from './machineLog.js'
export type * from './procedureDocument.js'
export { ACTION_NAMES } from './procedureDocument.js'
export { requireDocument } from './requireDocument.js'
export type { IdentityFact, Resolved, Trace } from './resolved.js'
export { resolveLeaf } from './resolveLeaf.js'
export { type ResolvedRecord, resolveRecords } from './resolveRecords.js'
export { resolveVariant, type VariantVerdict } from './resolveVariant.js'
export type * from './seal.js'
export type * from './serviceRecord.js'
export { MIXED_FLUIDS, TIGHTENED_WITHOUT_FIGURE } from './serviceRecord.js'
export type * from './specSheet.js'
export { MACHINE_EVENT_KINDS, WARRANTY_FACTS } from './specSheet.js'
export type { SpecSheetInput } from './specSheetInput.js'
export type * from './specValue.js'
export type * from './stock.js'
export type * from './toolbox.js'
