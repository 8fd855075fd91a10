// The functions and types that other modules use.
export { checkDocuments } from './checkDocuments.js'
export { checkRecordRules } from './checkRecordRules.js'
export type { DocumentCodes, RuleCodes } from './codes.js'
export type { RecordIndex } from './lookup/indexRecord.js'
export type { SheetIndex } from './lookup/indexSheet.js'
export { requireSet } from './requireSet.js'
export type * from './rule.js'
export { defineRule } from './rule.js'
