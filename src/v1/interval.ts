export {
  computeDue,
  type DueIntervals,
  type DueLimit,
  type DueLine,
  type DueOptions,
  type DueQuestion,
  type DueState,
  type DueVerdict,
  type IntervalCodes,
  type MeterQuantity,
} from '../interval/index.js'
