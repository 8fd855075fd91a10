import { type FindingMaker, makeFinding, makeReason, type ReasonMaker } from '../base/index.js'
import type { RuleCodes } from '../rules/index.js'

/** Reasons why recorded work does not count as done, and why a record cannot be added to a log. */
export interface RecordCodes {
  'record/reported-not-done': { why: string }
  'record/old-oil-not-drained': { gearcase: string }
  'record/new-oil-not-filled': { gearcase: string }
  'record/level-not-checked': { gearcase: string }
  'record/corrected-record-missing': { record: string }
  'record/other-sheet': { required: string; given: string }
}

/** The codes of the findings of `appendRecord`. */
export interface AppendCodes extends RuleCodes, Pick<RecordCodes, 'record/other-sheet'> {}

export const recordReason: ReasonMaker<RecordCodes> = makeReason

export const recordFinding = makeFinding as FindingMaker<AppendCodes>
