import { type Finding, type JsonPointer, requireShape } from '../base/index.js'
import { type DateText, LAST_DAY } from '../calendar/index.js'
import type { MachineLog, MeterName } from '../spec/index.js'
import { accumulateMeter } from './accumulateMeter.js'
import type { MeterQuantity } from './dueVerdict.js'
import { LOG_SHAPE } from './logShape.js'
import { countsPerUnit } from './meterCount.js'
import type { MeterCodes, MeterPoint, MeterState } from './meterState.js'

/** One reading, and its total including earlier displays. */
export interface CountedMeterReading {
  readonly date: DateText
  /** The reading of the display. */
  readonly shown: MeterQuantity
  /** Since the machine's zero; in a later stretch, since the start of that stretch's display. */
  readonly total: MeterQuantity
  /** Readings of different stretches cannot be subtracted: the meter fell or jumped between them without an event. */
  readonly stretch: number
  readonly path: JsonPointer
}

export interface MetersRead {
  /** Absent if the machine has no such meter. */
  readonly hours?: readonly CountedMeterReading[]
  readonly distance?: readonly CountedMeterReading[]
  readonly findings: readonly Finding<MeterCodes>[]
}

/**
 * Reads each meter of a log as one rising count, through swaps, resets and rollovers, to show or check a history.
 * {@link computeDue} reads the meters itself.
 *
 * total = shown + the counts of earlier displays; a display that rolls over adds its `rollover` limit and one unit of its last
 * digit
 *
 * @param log - a machine log; the readings in its service records are included
 * @returns readings by date, and findings about falls, jumps (over 24 h or 2,400 km a day, house rule),
 *   order, repetition and bounds
 * @throws TypeError if `log`, or a part that is read, is not an object or list
 *
 * Source: ISO 11783-7 for a distance that starts again at its documented limit. The rest is a house rule.
 *
 * @example
 * ```ts
 * // The hour meter was swapped at 812 h and shows 30 h now: how many hours has the machine run?
 * import { readMeters } from 'drivetrain-service/v1/interval/meters'
 * const readings = [{ date: '2030-05-01', value: 800 }, { date: '2030-09-01', value: 30 }]
 * const log = {
 *   kind: 'machine-log', version: '1.0', id: 'two', name: 'Two', sheet: { id: 'tind', revision: '1' }, identity: {},
 *   meters: { hours: { unit: 'h', readings } }, records: [],
 *   events: [{ kind: 'meter swap', date: '2030-05-20', meter: 'hours', oldReading: 812, newReading: 0 }],
 * } as const
 * readMeters(log).hours?.at(-1)?.total.value // => 842
 * ```
 */
export function readMeters(log: MachineLog): MetersRead {
  try {
    return readBothMeters(log)
  } catch (error) {
    requireShape('log', log, LOG_SHAPE)
    throw error
  }
}

function readBothMeters(log: MachineLog): MetersRead {
  const findings: Finding<MeterCodes>[] = []
  const readMeter = (name: MeterName): readonly CountedMeterReading[] | undefined => {
    const meter = accumulateMeter(log, name, LAST_DAY)
    if (meter === undefined) return undefined
    for (const { code, severity, params, point, last } of meter.notes) {
      const document = { kind: 'machine-log', id: log.id } as const
      const finding = {
        code,
        severity,
        document,
        path: findPointPath(meter, point),
        params,
      } as Finding<MeterCodes>
      findings.push(
        last === undefined
          ? finding
          : { ...finding, related: [{ document, path: findPointPath(meter, last) }] },
      )
    }
    const { unit } = meter
    const perUnit = countsPerUnit(unit)
    return meter.points.map((point) => ({
      date: point.date,
      shown: { value: point.shown / perUnit, unit },
      total: { value: point.count / perUnit, unit },
      stretch: point.stretch,
      path: findPointPath(meter, point),
    }))
  }
  const hours = readMeter('hours')
  const distance = readMeter('distance')
  return { ...(hours && { hours }), ...(distance && { distance }), findings }
}

/** The pointer to a reading in the log. */
function findPointPath({ name }: MeterState, { list, index }: MeterPoint): JsonPointer {
  if (list === 'events') return `/events/${index}`
  return list === 'records' ? `/records/${index}/readings/${name}` : `/meters/${name}/readings/${index}`
}
