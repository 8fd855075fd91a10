export type {
  AnyRule,
  CheckFacts,
  DocumentCodes,
  DocumentSet,
  HouseCodes,
  Named,
  RecordIndex,
  Rule,
  RuleCodes,
  RuleFacts,
  RuleFinding,
  RuleInput,
  RuleParams,
  RuleSubjects,
  SheetIndex,
  SubjectKind,
} from '../rules/index.js'
export { checkDocuments, defineRule } from '../rules/index.js'
