import { compareDates } from '../calendar/index.js'
import {
  add,
  compareExact,
  divide,
  type Exact,
  exactIn,
  exactOf,
  findNearestDouble,
  formatExact,
  multiply,
} from '../quantity/index.js'
import { resolveLog } from '../record/index.js'
import type { ServiceRecord, SpecSheet } from '../spec/index.js'
import { serviceReason } from './codes.js'
import { listInstances } from './gearcases.js'
import type { ServiceDue } from './listDue.js'
import type { VisitFacts } from './requireVisit.js'
import type { Money, PlannedTime } from './visitPlan.js'

/** With fewer recorded visits, the plan keeps the house estimate. House rule. */
const ENOUGH_VISITS = 3

/** Currencies without two decimals, by ISO 4217, from memory. */
const CURRENCY_DECIMALS: Readonly<Record<string, number>> = Object.fromEntries([
  ...'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF'.split(' ').map((code) => [code, 0]),
  ...'BHD IQD JOD KWD LYD OMR TND'.split(' ').map((code) => [code, 3]),
])

/**
 * Uses the workshop's own time instead of the house estimate, if three past visits did the same services on
 * the same gearcases of the same sheet, and adds the labour cost.
 */
export function planTime(
  facts: VisitFacts,
  chosen: readonly ServiceDue[],
  estimate: PlannedTime,
  rate: Money | undefined,
): PlannedTime {
  const ownTimes = listOwnTimes(facts, chosen)
  const [shortest] = ownTimes
  const longest = ownTimes.at(-1)
  const hasEnoughVisits = ownTimes.length >= ENOUGH_VISITS
  const exactMinutes = hasEnoughVisits ? calculateMedian(ownTimes) : exactOf(estimate.minutes)
  const visits = shortest &&
    longest && { count: ownTimes.length, min: findNearestDouble(shortest), max: findNearestDouble(longest) }
  const labour = rate && { rate, cost: calculateCost(exactMinutes, rate) }
  return {
    minutes: findNearestDouble(exactMinutes),
    basis: hasEnoughVisits ? 'own records' : 'house estimate',
    ...(hasEnoughVisits && { estimate: estimate.minutes }),
    ...(visits && { visits }),
    ...(labour && { labour }),
    reasons: [
      ...estimate.reasons,
      ...(visits === undefined
        ? []
        : hasEnoughVisits
          ? [serviceReason('service/time-from-records', { ...visits, estimate: estimate.minutes })]
          : [serviceReason('service/time-few-visits', { count: visits.count, required: ENOUGH_VISITS })]),
      ...(labour ? [serviceReason('service/labour', { ...labour, rate: { ...labour.rate } })] : []),
    ],
  }
}

/** The minutes of each past visit with exactly this work, the shortest first. */
function listOwnTimes(
  { sheet, log, otherLogs = [], today }: VisitFacts,
  chosen: readonly ServiceDue[],
): readonly Exact[] {
  if (chosen.length === 0) return []
  const work = new Set(
    chosen.map(({ service, gearcase, part }) => makeWorkKey(service, gearcase, part.instance?.id)),
  )
  const others = otherLogs.filter(({ id }) => id !== log.id).map((other) => resolveLog(other, sheet).log)
  return [log, ...others]
    .flatMap(({ records }) => records)
    .filter((record) => record.sheet.id === sheet.id && compareDates(record.date, today) <= 0)
    .filter((record) => isSameSet(work, listWork(record, sheet)))
    .flatMap(({ workingTime }) =>
      workingTime === undefined || workingTime.value === 0 ? [] : [exactIn(workingTime, 'min')],
    )
    .sort(compareExact)
}

const makeWorkKey = (...parts: readonly (string | undefined)[]) => parts.join(' ')

/** The work of a record; an entry without an instance is for all instances. */
function listWork({ entries }: ServiceRecord, sheet: SpecSheet): ReadonlySet<string> {
  return new Set(
    entries.flatMap(({ service, gearcase, instance }) =>
      (instance === undefined ? listInstances(sheet, gearcase) : [instance]).map((item) =>
        makeWorkKey(service, gearcase, item),
      ),
    ),
  )
}

const isSameSet = (candidate: ReadonlySet<string>, other: ReadonlySet<string>) =>
  candidate.size === other.size && [...candidate].every((key) => other.has(key))

/** The median of a sorted list: the middle value, or the mean of the two middle values. */
function calculateMedian(sorted: readonly Exact[]): Exact {
  const low = sorted[Math.floor((sorted.length - 1) / 2)] ?? exactOf(0)
  const high = sorted[Math.floor(sorted.length / 2)] ?? low
  return divide(add(low, high), exactOf(2))
}

/** The cost of these minutes at an hourly rate, rounded to the decimals of the currency. */
function calculateCost(minutes: Exact, { amount, currency }: Money): Money {
  const cost = divide(multiply(minutes, exactOf(amount)), exactOf(60))
  const decimals = Object.hasOwn(CURRENCY_DECIMALS, currency) ? CURRENCY_DECIMALS[currency] : 2
  return { amount: Number(formatExact(cost, decimals ?? 2)), currency }
}
