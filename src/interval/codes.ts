import { makeReason, type Param, type ReasonMaker } from '../base/index.js'
import type { DueLine } from './dueVerdict.js'

type Amount = { value: number | string; unit: string }

/** Codes of the interval functions with their params. */
export interface IntervalCodes {
  // Lines of a verdict
  /** Its params are the whole line of the verdict. */
  'interval/by-meter': DueLine
  'interval/by-date': DueLine
  'interval/by-event': { event: string; date: string }
  'interval/window-left': { until: Param }
  'interval/not-tracked': { meter: string }
  'interval/governing-limit': { by: string; decidedBy: string; dueOn?: string }
  // Choices
  'interval/severe-interval-applied': { criteria: string }
  'interval/severe-factor-applied': { factor: string; criteria: string }
  'interval/severe-not-given': Record<never, never>
  'interval/early-service-counts': { by: string; date: string; point: Param }
  'interval/early-service-does-not-count': { by: string; date: string; point: Param }
  'interval/count-restarted': { by: string; date: string; point: Param }
  'interval/done-by-other-service': { date: string; service: string }
  'interval/record-for-all-instances': { date: string; instance: string }
  /** `less`: how much less the display shows than it would without the change; negative if it shows more. */
  'interval/display-changed': { meter: string; less: Amount }
  'interval/date-in-the-future': { what: string; date: string }
  // Missing facts
  'interval/reading-missing': { meter: string }
  'interval/reading-stale': { meter: string; date: string; days: number; staleAfter: number }
  'interval/reading-at-start-missing': { meter: string; of: string; date: string }
  'interval/meter-broken': { meter: string; from: string; to: string }
  'interval/first-use-missing': Record<never, never>
  'interval/interval-not-stated': { which: string }
  'interval/interval-depends': { which: string; facts: readonly string[] }
  'interval/fractional-period': { period: string; factor: string }
  'interval/limit-not-above-zero': { by: string }
  'interval/due-date-out-of-calendar': { period: string; from: string }
  'interval/no-limit-tracked': Record<never, never>
  // Meters
  'interval/meter-falls': { meter: string; before: Amount; after: Amount; from: string; to: string }
  'interval/meter-jumps': {
    meter: string
    before: Amount
    after: Amount
    from: string
    to: string
    largest: Amount
  }
  'interval/readings-out-of-order': { meter: string; date: string; after: string }
  'interval/reading-repeated': { meter: string; date: string }
  'interval/reading-out-of-bounds': { meter: string; value: number | string; largest: Amount }
  'interval/rollover-limit-missing': { meter: string; date: string }
  'interval/rollover-assumed': { meter: string; before: Amount; after: Amount; limit: Amount }
  // Forecast
  'interval/forecast-needs-readings': { meter: string; readings: number }
  'interval/forecast-without-band': { readings: number }
  'interval/forecast-without-end': Record<never, never>
  'interval/forecast-contradicted': { date: string }
  'interval/forecast-beyond-calendar': { meter: string }
  // Import
  'interval/import-no-machines': Record<never, never>
  'interval/import-ambiguous-key': { one: string; other: string }
  'interval/import-unit-unknown': { unit: string }
  'interval/import-mixed-units': { units: readonly string[] }
  'interval/import-date-unreadable': { text: string }
  // Findings of rules
  'interval/first-longer-than-repeat': { by: readonly string[] }
  'interval/severe-longer-than-repeat': { by: string }
  'interval/window-not-below-repeat': { by: string }
  'interval/implied-speed': { speed: number; slowest: number; fastest: number }
  'interval/log-speed': { speed: number; fastest: number; from: string; to: string }
  'interval/months-as-days': { days: number; months: number }
}

export const intervalReason: ReasonMaker<IntervalCodes> = makeReason
