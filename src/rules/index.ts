// What other rooms may use of this one.
export { allRules } from './allRules.js'
export { checkDocuments } from './checkDocuments.js'
export type { RoomRuleCodes, RuleCodes } from './codes.js'
export { requireCircumstances } from './requireCircumstances.js'
export { requireSet } from './requireSet.js'
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
export { type AnyRule, runRules } from './runRules.js'
