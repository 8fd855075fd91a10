export type {
  DueIntervals,
  DueLimit,
  DueLine,
  DueOptions,
  DueState,
  DueVerdict,
  IntervalCodes,
  IntervalFacts,
  IntervalReadings,
  MeterQuantity,
  MetersOnDay,
} from '../interval/index.js'
export { computeDue, judgeInterval } from '../interval/index.js'
