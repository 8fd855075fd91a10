export {
  computeDue,
  type DueIntervals,
  type DueLimit,
  type DueLine,
  type DueOptions,
  type DueState,
  type DueVerdict,
  type IntervalCodes,
  type IntervalFacts,
  type MeterQuantity,
} from '../interval/index.js'
