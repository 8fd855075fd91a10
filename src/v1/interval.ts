export {
  computeDue,
  type DueIntervals,
  type DueLimit,
  type DueLine,
  type DueOptions,
  type IntervalFacts,
  type DueState,
  type DueVerdict,
  type IntervalCodes,
  type MeterQuantity,
} from '../interval/index.js'
