export type { IntervalCodes } from './codes.js'
export { computeDue } from './computeDue.js'
export type { DueIntervals, DueOptions, DueQuestion } from './dueQuestion.js'
export type { DueLimit, DueLine, DueState, DueVerdict, MeterQuantity } from './dueVerdict.js'
