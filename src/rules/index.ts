// What other rooms may use of this one.
export { checkDocuments } from './checkDocuments.js'
export { checkRecordRules } from './checkRecordRules.js'
export type { RoomRuleCodes, RuleCodes } from './codes.js'
export {
  type Circumstances,
  type Complaint,
  type DocumentSet,
  defineRule,
  type Named,
  type Rule,
  type RuleFacts,
  type RuleSubjects,
  type SaidBy,
  type SubjectKind,
} from './rule.js'
export type { AnyRule } from './runRules.js'
