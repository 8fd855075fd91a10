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
export type * from './leaf.js'
export { findLeafType, type LeafBelow, type LeafRole, listLeafTypes } from './leafTable.js'
export type * from './machineLog.js'
export { nameOil } from './nameOil.js'
export type * from './procedureDocument.js'
export { ACTION_NAMES } from './procedureDocument.js'
export { readOverrides } from './readOverrides.js'
export { requireDocument } from './requireDocument.js'
export type { IdentityFact, Resolved, Trace } from './resolved.js'
export { resolveLeaf } from './resolveLeaf.js'
export { resolveVariant, type VariantVerdict } from './resolveVariant.js'
export type * from './serviceRecord.js'
export type * from './specSheet.js'
export { DRIVE_KINDS, MACHINE_EVENT_KINDS, WHEEL_MARKS } from './specSheet.js'
export type * from './stock.js'
export type * from './toolbox.js'
