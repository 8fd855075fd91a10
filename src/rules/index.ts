// What other rooms may use of this one.
export { checkDocuments } from './checkDocuments.js'
export { checkRecordRules } from './checkRecordRules.js'
export type { DocumentCodes, RuleCodes } from './codes.js'
export type { RecordIndex } from './lookup/indexRecord.js'
export type { SheetIndex } from './lookup/indexSheet.js'
export {
  type AnyRule,
  type Circumstances,
  type DocumentSet,
  defineRule,
  type HouseCodes,
  type Named,
  type Rule,
  type RuleFacts,
  type RuleFinding,
  type RuleInput,
  type RuleParams,
  type RuleSubjects,
  type SubjectKind,
} from './rule.js'
