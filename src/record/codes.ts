import { type FindingMaker, makeFinding, makeReason, type ReasonMaker } from '../base/index.js'
import type { RuleCodes } from '../rules/index.js'

/** Reasons why recorded work does not count as done, and why a record cannot be added to a log. */
export interface RecordCodes {
  'record/said-not-done': { why: string }
  'record/oil-not-out': { gearcase: string }
  'record/oil-not-in': { gearcase: string }
  'record/level-not-looked-at': { gearcase: string }
  'record/corrects-nothing': { record: string }
  'record/other-sheet': { required: string; given: string }
}

/** The codes of the findings of `appendRecord`. */
export interface AppendCodes extends RuleCodes, Pick<RecordCodes, 'record/other-sheet'> {}

export const recordReason: ReasonMaker<RecordCodes> = makeReason

export const recordFinding = makeFinding as FindingMaker<AppendCodes>
