import {
  dropUndefined,
  isSameJson,
  joinPointer,
  type Reason,
  refuse,
  requireKnownKeys,
  requireShape,
} from '../base/index.js'
import { compareDates, type DateText } from '../calendar/index.js'
import type { DueOptions } from '../interval/index.js'
import type { NotDone, OpenFault, OpenSample } from '../record/index.js'
import { listOpenSamples, resolveLog } from '../record/index.js'
import type { Id, MachineLog, RecordEntry, ResolvedRecord, ServiceRecord, SpecSheet } from '../spec/index.js'
import { resolveRecords } from '../spec/index.js'
import { describeMachine } from './describeMachine.js'
import { type DueFacts, listDue, type ServiceDue } from './listDue.js'
import { describePart, type PartName } from './names.js'
import { requireDueFacts } from './requireVisit.js'
import type { PlannedMachine } from './visitPlan.js'

/** A part of a record with its names on the sheet. */
type WithPart<Item> = Item & { readonly part: PartName }

/** The work and its results at one gearcase. */
export interface SlipWork
  extends Pick<RecordEntry, 'refilled' | 'oil' | 'oilFinding' | 'magnet' | 'sample' | 'level' | 'leaks'> {
  readonly service: Id
  readonly serviceName: string
  readonly part: PartName
  /** The reason why the work does not count as done; absent if it counts. */
  readonly notDone?: Reason
  readonly tightened: readonly WithPart<RecordEntry['tightened'][number]>[]
  readonly seals: readonly WithPart<RecordEntry['seals'][number]>[]
  readonly filters: readonly WithPart<NonNullable<RecordEntry['filters']>[number]>[]
}

/** The workshop's report to the owner of a machine after a visit. */
export interface OwnerSlip {
  readonly kind: 'owner-slip'
  readonly version: '1.0'
  readonly machine: PlannedMachine
  /** The record of the visit, with its corrections applied. */
  readonly record: Id
  readonly date: DateText
  readonly readings: ServiceRecord['readings']
  readonly by?: string
  /** The records that correct it, in order. */
  readonly corrections: readonly { readonly record: Id; readonly date: DateText }[]
  /** All open faults of the machine. While it has one, it must not be used. */
  readonly faults: readonly OpenFault[]
  /** One for each entry of the record, in order. */
  readonly work: readonly SlipWork[]
  readonly shields: SlipWork['tightened']
  /** Notes of the record and of its corrections. */
  readonly notes: readonly string[]
  /** The day on which `due` was judged. */
  readonly today: DateText
  /** Every service of the machine, the earliest first; services without a known day come last. */
  readonly due: readonly ServiceDue[]
  /** All samples of the machine that have no result yet. */
  readonly samples: readonly WithPart<OpenSample>[]
}

/** The sheet, log and open faults of a machine, and the day. */
export interface SlipFacts extends DueFacts {
  /** All open faults of the machine, from `openFaults`. */
  readonly faults: readonly OpenFault[]
}

export interface SlipOptions {
  /** When a service is due soon, when a reading is stale, and whether use is severe. */
  readonly due: DueOptions
  /** The id of the record of the visit, or of one that corrects it; if absent, the last visit. */
  readonly record?: Id
}

/**
 * Collects the report for the owner after a visit: the open faults, the work done and not done, its results,
 * the next due date of each service, and the samples without a result. Corrections of records are applied. To
 * lay out the slip, use `slipModel`.
 *
 * @param facts - sheet, log, today and the open faults of the machine, from `openFaults`
 * @param options - those of `computeDue`, without defaults; and the record of the visit
 * @returns plain JSON
 * @throws TypeError if an argument is not an object or has an unknown key, or if the sheet or log was not
 *   parsed; RangeError if `today` is not a date, the log has no such record, or an option is out of its range
 *
 * Source: house rule. `resolveLog` decides what counts as done, `listDue` when a service is due.
 * @example
 * ```ts
 * import { openFaults, ownerSlip } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const entry = { service: 'change', gearcase: 'rear', notDone: 'the plug is seized', opened: [], tightened: [], seals: [] }
 * const record = {
 *   kind: 'service-record', version: '1.0', id: 'r', machine: 'one', sheet: { id: 'example', revision: '1' },
 *   detail: 'full', date: '2031-10-06', readings: {}, entries: [entry],
 * } as const
 * const log = {
 *   kind: 'machine-log', version: '1.0', id: 'one', name: 'One', sheet: record.sheet, identity: {}, meters: {}, records: [record],
 * } as const
 * const set = { sheets: [{ document: sheet }], logs: [], toolboxes: [], stocks: [], procedures: [], records: [] }
 * const faults = openFaults({ document: log }, set)
 * const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * // Why was the work of the last visit not done?
 * ownerSlip({ sheet, log, today: '2031-10-07', faults }, { due }).work[0]?.notDone?.params // => { why: 'the plug is seized' }
 * ```
 */
export function ownerSlip(facts: SlipFacts, options: SlipOptions): OwnerSlip {
  requireDueFacts(facts, ['sheet', 'log', 'today', 'faults'])
  requireShape('facts', facts, {
    faults: [{ record: 'string', date: 'string', finding: { code: 'string', params: {} } }],
  })
  requireKnownKeys('options', options, ['due', 'record'])
  const { sheet, log, today, faults } = facts
  const due = listDue({ sheet, log, today }, options.due)
  const { notDone } = resolveLog(log, sheet)
  const resolved = resolveRecords(log.records)
  const { record, root } = findVisit(resolved, log, options.record)
  const corrections = resolved.filter(
    (candidate) => candidate.root === root && candidate.record.corrects !== undefined,
  )
  const { id, date, readings, by, note, entries, shields = [] } = record
  return dropUndefined({
    kind: 'owner-slip' as const,
    version: '1.0' as const,
    machine: describeMachine(sheet, log),
    record: id,
    date,
    readings,
    by,
    corrections: corrections.map((correction) => ({
      record: correction.record.id,
      date: correction.record.date,
    })),
    faults,
    work: entries.map((entry) => makeSlipWork(entry, sheet, findNotDoneReason(notDone, id, entry))),
    shields: describeParts(shields, sheet),
    notes: [note, ...corrections.map((correction) => correction.record.note)].flatMap((item) => item ?? []),
    today,
    due: sortDue(due),
    samples: listOpenSamples(log).map((sample) => ({
      ...sample,
      part: describeGearcase(sheet, sample),
    })),
  })
}

/** The visit named by its record or by a correction of it; without a name, the last visit. */
function findVisit(
  resolved: readonly ResolvedRecord[],
  { records }: MachineLog,
  chosen: Id | undefined,
): ResolvedRecord {
  const visits = resolved.filter(({ record }) => record.corrects === undefined)
  const [last] = visits
    .toReversed()
    .sort((visit, other) => compareDates(other.record.date, visit.record.date))
  if (last === undefined) throw new RangeError('facts.log must have a record of a visit, got none')
  if (chosen === undefined) return last
  const root = resolved.find((_one, place) => records[place]?.id === chosen)?.root
  const found = root === undefined ? undefined : resolved[root]
  if (found === undefined) throw refuse('options.record', chosen, 'the id of a record of the log', 'string')
  return found
}

const findNotDoneReason = (notDone: readonly NotDone[], record: Id, entry: RecordEntry): Reason | undefined =>
  notDone.find((candidate) => candidate.record === record && isSameJson(candidate.entry, entry))?.reason

function makeSlipWork(entry: RecordEntry, sheet: SpecSheet, notDone: Reason | undefined): SlipWork {
  const { service, tightened, seals, filters = [] } = entry
  const { refilled, oil, oilFinding, magnet, sample, level, leaks } = entry
  const serviceOnSheet = Object.hasOwn(sheet.services, service) ? sheet.services[service] : undefined
  return dropUndefined({
    service,
    serviceName: serviceOnSheet?.name ?? service,
    part: describeGearcase(sheet, entry),
    notDone,
    refilled,
    oil,
    oilFinding,
    magnet,
    sample,
    level,
    leaks,
    tightened: describeParts(tightened, sheet),
    seals: describeParts(seals, sheet),
    filters: describeParts(filters, sheet),
  })
}

const describeGearcase = (
  sheet: SpecSheet,
  { gearcase, instance }: Pick<RecordEntry, 'gearcase' | 'instance'>,
) => describePart(sheet, joinPointer(['gearcases', gearcase]), dropUndefined({ instance }))

const describeParts = <Item extends { readonly on: string }>(items: readonly Item[], sheet: SpecSheet) =>
  items.map((item): WithPart<Item> => ({ ...item, part: describePart(sheet, item.on) }))

/**
 * Sorts services: those due now, then by due day, then those without a day; otherwise in the order of the
 * sheet.
 */
function sortDue(due: readonly ServiceDue[]): readonly ServiceDue[] {
  const isDueNow = ({ verdict }: ServiceDue) => verdict === 'overdue' || verdict === 'due'
  const makeSortKey = (candidate: ServiceDue) => `${isDueNow(candidate) ? 0 : 1} ${candidate.dueOn ?? '~'}`
  return [...due].sort((item, other) =>
    makeSortKey(item) < makeSortKey(other) ? -1 : makeSortKey(item) > makeSortKey(other) ? 1 : 0,
  )
}
