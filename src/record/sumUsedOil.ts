import { dropUndefined, refuse, requireKnownKeys, requireShape } from '../base/index.js'
import { compareDates, type DateText, isDate } from '../calendar/index.js'
import type { Exact, Quantity, VolumeUnit } from '../quantity/index.js'
import { add, exactIn, exactOf, findNearestQuantity, requireQuantity } from '../quantity/index.js'
import { type Id, type MachineLog, resolveRecords, type ServiceRecord, type UsedOil } from '../spec/index.js'
import { requireLog } from './resolveLog.js'

/** Used oil of one visit that went to one place. */
export interface UsedOilLine extends UsedOil {
  readonly machine: Id
  readonly record: Id
  readonly date: DateText
  /** The drained volume, if the record gives no volume of used oil. It is only in the sum `drained`. */
  readonly drained?: Quantity<'L'>
}

/** Exact sums of used oil, each rounded once. */
export interface UsedOilSum {
  /** All volumes of used oil, including those kept apart. */
  readonly volume: Quantity<'L'>
  /** The part that was kept apart, because another fluid is in it. */
  readonly keptApart: Quantity<'L'>
  /** The part without a receipt. */
  readonly withoutReceipt: Quantity<'L'>
  /** The number of lines without a volume. */
  readonly withoutVolume: number
  /** The drained volume of those lines; not in the other sums. */
  readonly drained: Quantity<'L'>
}

/** Used oil of a period: in total, by recipient, and line by line. */
export interface UsedOilReport extends UsedOilSum {
  /** By recipient as written, in the order of first mention; without `to`: not recorded. */
  readonly carriers: readonly (UsedOilSum & { readonly to?: string })[]
  /** By date. */
  readonly lines: readonly UsedOilLine[]
}

/**
 * Adds up the used oil handed over in a period, by recipient. It reads the `usedOilLog` of all records, each with
 * its corrections. A record without it is a line without a volume if it has `usedOil` or drained oil.
 *
 * Oil with water or metal from use is used oil; if a solvent, coolant, brake fluid or fuel is mixed into it,
 * it may be hazardous waste and is listed as kept apart. Local rules decide how each is handed over.
 *
 * @param logs - machine logs, with all their records
 * @param period - the first and the last day, both included; if absent, without limit
 * @returns sums in litres
 * @throws TypeError if a log was not parsed; RangeError if a day is not a date, or the period ends before it
 *   begins
 *
 * Source: house rule. Mixtures with hazardous waste: 40 CFR 279.10(b). Used oil with impurities from its use: 40 CFR
 * 279.1 as in US EPA, "Managing Used Oil: Advice for Small Businesses".
 * @example
 * ```ts
 * import { sumUsedOil } from 'drivetrain-service/v1/service'
 * const record = {
 *   kind: 'service-record', version: '1.0', id: 'r', machine: 'one', sheet: { id: 'example', revision: '1' }, detail: 'full', date: '2031-10-06',
 *   readings: {}, entries: [], usedOilLog: [{ volume: { value: 800, unit: 'mL' }, to: 'tank' }, { volume: { value: 0.4, unit: 'L' }, to: 'tank' }],
 * } as const
 * const log = {
 *   kind: 'machine-log', version: '1.0', id: 'one', name: 'One', sheet: record.sheet, identity: {}, meters: {}, records: [record],
 * } as const
 * // How much oil went into the tank in October?
 * sumUsedOil([log], { from: '2031-10-01', to: '2031-10-31' }).volume // => { value: 1.2, unit: 'L' }
 * ```
 */
export function sumUsedOil(
  logs: readonly MachineLog[],
  period: { readonly from?: DateText; readonly to?: DateText } = {},
): UsedOilReport {
  requireShape('logs', logs, [{}])
  for (const [place, log] of logs.entries()) requireLog(`logs[${place}]`, log)
  requireKnownKeys('period', period, ['from', 'to'])
  const { from = '0001-01-01', to = '9999-12-31' } = period
  if (!isDate(from)) throw refuse('period.from', from, 'a date YYYY-MM-DD', 'string')
  if (!isDate(to)) throw refuse('period.to', to, 'a date YYYY-MM-DD', 'string')
  if (to < from) throw refuse('period.to', to, `${from} or later`, 'string')
  const lines = logs
    .flatMap(({ id: machine, records }) =>
      resolveRecords(records)
        .filter(({ record: { corrects, date } }) => corrects === undefined && date >= from && date <= to)
        .flatMap(({ record }) => listLines(machine, record)),
    )
    .sort((item, other) => compareDates(item.date, other.date))
  const carriers = [...new Set(lines.map((line) => line.to))]
  return {
    ...sumLines(lines),
    carriers: carriers.map((place) =>
      dropUndefined({ to: place, ...sumLines(lines.filter((line) => line.to === place)) }),
    ),
    lines,
  }
}

function listLines(
  machine: Id,
  { id, date, usedOil: to, usedOilLog = [], entries }: ServiceRecord,
): readonly UsedOilLine[] {
  const common = { machine, record: id, date }
  const usedOilLines: readonly UsedOil[] = usedOilLog.length === 0 && to !== undefined ? [{ to }] : usedOilLog
  for (const [place, { volume }] of usedOilLines.entries())
    if (volume !== undefined) requireVolume(`record ${id}, usedOilLog[${place}].volume`, volume)
  const drainedVolumes = entries.flatMap(({ drained }) => (drained === undefined ? [] : [drained]))
  if (usedOilLines.length === 0 && drainedVolumes.length === 0) return []
  const [only = {}, ...others] = usedOilLines
  if (only.volume !== undefined || others.length > 0)
    return usedOilLines.map((usedOilLine) => ({ ...common, ...usedOilLine }))
  const volumes = drainedVolumes.filter((drainedVolume) => drainedVolume !== 'not judged')
  for (const volume of volumes) requireVolume(`record ${id}, drained`, volume)
  return [
    dropUndefined({ ...common, ...only, drained: volumes.length === 0 ? undefined : addVolumes(volumes) }),
  ]
}

const requireVolume = (name: string, volume: Quantity<VolumeUnit>) =>
  requireQuantity(name, volume, 'volume', { min: 0, max: Number.MAX_VALUE })

function sumLines(lines: readonly UsedOilLine[]): UsedOilSum {
  const sum = (of: readonly UsedOilLine[], key: 'volume' | 'drained' = 'volume') =>
    addVolumes(of.flatMap((line) => line[key] ?? []))
  return {
    volume: sum(lines),
    keptApart: sum(lines.filter(({ keptApart }) => keptApart !== undefined)),
    withoutReceipt: sum(lines.filter(({ receipt }) => receipt === undefined)),
    withoutVolume: lines.filter(({ volume }) => volume === undefined).length,
    drained: sum(lines, 'drained'),
  }
}

function addVolumes(volumes: readonly Quantity<VolumeUnit>[]): Quantity<'L'> {
  const total = volumes.reduce<Exact>((sum, volume) => add(sum, exactIn(volume, 'L')), exactOf(0))
  return findNearestQuantity(total, 'L', 'L')
}
