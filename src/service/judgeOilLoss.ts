import { dropUndefined, type Reason, requireShape, type Shape } from '../base/index.js'
import { compareDates, type DateText, daysBetween } from '../calendar/index.js'
import type { Exact, Quantity, VolumeUnit } from '../quantity/index.js'
import {
  add,
  compareExact,
  divide,
  exactIn,
  exactOf,
  findNearestDouble,
  findNearestQuantity,
  multiply,
  requireQuantity,
} from '../quantity/index.js'
import { resolveLog } from '../record/index.js'
import { type Id, judgePart, resolveLeaf, type SpecSheet, type SpecValue } from '../spec/index.js'
import { calculateHoursBetween } from './calculateHoursBetween.js'
import { serviceReason } from './codes.js'
import { findOilOwner, listInstances } from './gearcases.js'
import type { DueFacts } from './listDue.js'
import { describePart, type PartName } from './names.js'
import { readRefill } from './refills.js'
import { requireDueFacts } from './requireVisit.js'

/**
 * A calculated range; an end that the records do not give is absent. It is a type because an interface is not
 * assignable to `Params`.
 */
export type Span<Unit extends string> = { readonly min?: number; readonly max?: number; readonly unit: Unit }

/** The oil that one gearcase lost since its last oil change. */
export interface OilLoss {
  readonly gearcase: Id
  readonly instance?: Id
  readonly part: PartName
  readonly verdict: 'no loss' | 'loses oil' | 'cannot tell'
  /** The day of the last oil change or rebuild, else of first use; absent: not known. */
  readonly since?: DateText
  /** The number of additions. */
  readonly count: number
  /** The total; absent if none was added. */
  readonly added?: Quantity<VolumeUnit>
  /** From `since` to the last addition. */
  readonly days?: number
  readonly hours?: Span<'h'>
  readonly per100Hours?: Span<VolumeUnit>
  /** In per cent of the stated refill, or of its upper limit. */
  readonly percentOfFill?: number
  readonly reasons: readonly Reason[]
}

interface OilAddition {
  readonly date: DateText
  readonly volume: Quantity<VolumeUnit>
  readonly namesInstance: boolean
}

const LOG_SHAPE: Shape = {
  'topUps?': [{ date: 'string', gearcase: 'string', volume: {} }],
  'events?': [{ kind: 'string', date: 'string' }],
}

/**
 * Up to these hours and this share after a change, oil may only have settled in bearings and tubes. House
 * rule.
 */
const SETTLING_LIMITS = { hours: exactOf(10), share: exactOf('0.1') }

/**
 * Calculates how much oil each gearcase loses. For every gearcase and instance of a machine it adds up the oil added
 * since the last oil change: the top-ups of the log, and refills at checks. Corrections of records apply.
 *
 * A closed gearcase uses no oil, so the added oil is the lost oil. It was lost before the last addition, so
 * hours and days are counted up to then: per 100 h = 100 × added / hours. Hours are a range if those days
 * have no reading.
 *
 * A single small quantity, up to a tenth of the fill, in the first 10 h is `cannot tell`, because the oil may only have
 * settled. Oil added on the day of the change belongs to the change.
 * @param facts - sheet, log and today; oil added later is not counted
 * @returns one line for each gearcase and instance with its own oil, in the order of the sheet
 * @throws TypeError if the sheet or log was not parsed, or `facts` has an unknown key; RangeError if `today`
 *   is not a date
 *
 * Source: common practice, no source, for added oil as a measure of lost oil. House rule for oil that may have settled,
 * and for two top-ups or a tenth of the fill as a leak to find before filling.
 * @example
 * ```ts
 * import { judgeOilLoss } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'One', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * // How many gearcases of a machine without gearcases lose oil?
 * judgeOilLoss({ sheet, log, today: '2031-10-06' }).filter(({ verdict }) => verdict === 'loses oil').length // => 0
 * ```
 */
export function judgeOilLoss(facts: DueFacts): readonly OilLoss[] {
  requireDueFacts(facts, ['sheet', 'log', 'today'])
  requireShape('facts.log', facts.log, LOG_SHAPE)
  const { sheet, today } = facts
  const { log } = resolveLog(facts.log, sheet)
  const countedFacts = { sheet, log, today }
  return Object.keys(sheet.gearcases).flatMap((gearcase) =>
    findOilOwner(sheet, gearcase) !== gearcase ||
    judgePart(sheet, log.identity, `/gearcases/${gearcase}`).verdict === 'no'
      ? []
      : listInstances(sheet, gearcase).map((instance) => judgeGearcase(countedFacts, gearcase, instance)),
  )
}

function judgeGearcase(facts: DueFacts, gearcase: Id, instance: Id | undefined): OilLoss {
  const { sheet, log } = facts
  const part = describePart(sheet, `/gearcases/${gearcase}`, dropUndefined({ instance }))
  const common = dropUndefined({ gearcase, instance, part })
  const since = findStartDate(facts, gearcase, instance)
  const additions = listAdditions(facts, gearcase, instance)
    .filter(({ date }) => since === undefined || compareDates(date, since) > 0)
    .sort((addition, other) => compareDates(addition.date, other.date))
  const count = additions.length
  const last = additions.at(-1)
  const unknownStartReasons =
    since === undefined ? [serviceReason('service/oil-start-not-known', { part })] : []
  if (last === undefined)
    return dropUndefined({
      ...common,
      verdict: since === undefined ? 'cannot tell' : 'no loss',
      since,
      count,
      reasons:
        since === undefined ? unknownStartReasons : [serviceReason('service/no-oil-added', { part, since })],
    })
  const sum = additions.reduce((total, { volume }) => add(total, exactIn(volume, 'mL')), exactOf(0))
  const { unit } = last.volume
  const added = findNearestQuantity(sum, 'mL', unit)
  const hours = since === undefined ? undefined : calculateHoursBetween(log, since, last.date)
  const share = calculateFillShare(facts, gearcase, sum)
  const figures = dropUndefined({
    since,
    days: since === undefined ? undefined : daysBetween(since, last.date),
    hours: hours && makeSpan('h', hours.min, hours.max),
    per100Hours: hours && calculateRate(sum, hours, unit),
    percentOfFill: share && findNearestDouble(multiply(share, exactOf(100))),
  })
  const reasons = [serviceReason('service/oil-added', { part, added, count, ...figures })]
  const line = { ...common, count, added, ...figures }
  if (additions.every(({ namesInstance }) => !namesInstance))
    return {
      ...line,
      verdict: 'cannot tell',
      reasons: [...reasons, serviceReason('service/top-up-instance-missing', { part })],
    }
  const isSmall = share !== undefined && compareExact(share, SETTLING_LIMITS.share) <= 0
  const isEarly = hours?.max !== undefined && compareExact(hours.max, SETTLING_LIMITS.hours) <= 0
  if (count === 1 && isSmall && isEarly)
    return {
      ...line,
      verdict: 'cannot tell',
      reasons: [...reasons, serviceReason('service/oil-may-have-settled', {})],
    }
  const code = count === 1 && isSmall ? 'service/look-for-leaks' : 'service/find-the-leak'
  return {
    ...line,
    verdict: 'loses oil',
    reasons: [...reasons, serviceReason(code, {}), ...unknownStartReasons],
  }
}

/** The day of the last oil change or rebuild, else of first use. */
function findStartDate({ sheet, log, today }: DueFacts, gearcase: Id, instance: Id | undefined) {
  const changes = log.records.filter(({ entries }) =>
    entries.some(
      (entry) =>
        entry.gearcase === gearcase &&
        (entry.instance === undefined || entry.instance === instance) &&
        findTask(sheet, entry.service) === 'change',
    ),
  )
  const rebuilds = (log.events ?? []).filter(
    (event) => event.kind === 'rebuild' && (event.gearcases?.includes(gearcase) ?? true),
  )
  const days = [...changes, ...rebuilds].map(({ date }) => date)
  return [...days, ...(log.commissioned === undefined ? [] : [log.commissioned])]
    .filter((date) => compareDates(date, today) <= 0)
    .sort(compareDates)
    .at(-1)
}

const findTask = ({ services }: SpecSheet, service: Id) =>
  Object.hasOwn(services, service) ? services[service]?.task : undefined

/** All oil added to a gearcase up to today. An addition without an instance may be of any instance. */
function listAdditions({ sheet, log, today }: DueFacts, gearcase: Id, instance: Id | undefined) {
  const topUps = (log.topUps ?? []).map((topUp, place) => ({
    ...topUp,
    place: `facts.log.topUps[${place}].volume`,
  }))
  const checks = log.records.flatMap(({ date, entries }) =>
    entries.flatMap(({ service, refilled: volume, ...one }) =>
      volume === undefined || findTask(sheet, service) !== 'check'
        ? []
        : [{ ...one, date, volume, place: 'refilled' }],
    ),
  )
  return [...topUps, ...checks].flatMap(({ place, date, volume, ...one }): readonly OilAddition[] => {
    requireQuantity(place, volume, 'volume', { min: 0, max: Number.MAX_VALUE })
    if (compareDates(date, today) > 0 || volume.value === 0) return []
    if (findOilOwner(sheet, one.gearcase) !== gearcase) return []
    const namedInstance = one.gearcase === gearcase ? one.instance : undefined
    if (namedInstance !== undefined && namedInstance !== instance) return []
    return [{ date, volume, namesInstance: namedInstance === instance }]
  })
}

/** A quantity as a share of the refill of one instance. */
function calculateFillShare({ sheet, log }: DueFacts, gearcase: Id, added: Exact): Exact | undefined {
  const space = sheet.gearcases[gearcase]?.oilSpace
  const path = `/gearcases/${gearcase}/oilSpace/fill/drainAndRefill`
  const leaf = resolveLeaf(sheet, log.identity, 'value', path)
  if (space?.kind !== 'own' || leaf.kind !== 'stated') return undefined
  const all = listInstances(sheet, gearcase).length
  const fill = readRefill(leaf.value as SpecValue<VolumeUnit>, space.fill.per, { worked: 1, all })
  return fill === undefined || fill.exactEach.n === 0n ? undefined : divide(added, fill.exactEach)
}

function calculateRate(sum: Exact, { min, max }: { min: Exact; max?: Exact }, unit: VolumeUnit) {
  const rate = (hours: Exact | undefined) =>
    hours === undefined || hours.n === 0n
      ? undefined
      : findNearestQuantity(divide(multiply(sum, exactOf(100)), hours), 'mL', unit).value
  const rates = dropUndefined({ min: rate(max), max: rate(min) })
  return rates.min === undefined && rates.max === undefined ? undefined : { ...rates, unit }
}

const makeSpan = <Unit extends string>(unit: Unit, min: Exact, max: Exact | undefined): Span<Unit> => ({
  min: findNearestDouble(min),
  ...(max && { max: findNearestDouble(max) }),
  unit,
})
