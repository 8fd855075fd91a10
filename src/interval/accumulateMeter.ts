import { dayNumberOf } from '../calendar/dayNumberOf.js'
import type { DateText } from '../calendar/index.js'
import type { Finding, Severity } from '../finding.js'
import type { MachineLog, MeterName } from '../spec/machineLog.js'
import type { IntervalCodes } from './codes.js'
import { followMeterChanges, type MeterChange } from './followMeterChanges.js'
import { COUNTS_PER_UNIT, LARGEST_COUNT, type MeterUnit, MOST_A_DAY, meterCount } from './meterCount.js'

/** One reading with everything before it counted in. */
export interface MeterPoint {
  day: number
  date: DateText
  /** What the display showed, in counts. */
  shown: number
  /** Accumulated since the start of its stretch, in counts; of stretch 0: since the machine's zero. */
  count: number
  /** A stretch ends where the meter fell or jumped and no event says why: across that, nothing can be subtracted. */
  stretch: number
  /** Which list of the log it stands in, and where. */
  list: 'readings' | 'records' | 'events'
  index: number
}

/** A meter on its way through the log. */
export interface MeterWalk {
  readonly log: MachineLog
  readonly name: MeterName
  readonly unit: MeterUnit
  readonly points: MeterPoint[]
  readonly findings: Finding[]
  offset: number
  stretch: number
}

/**
 * Reads one meter of a log up to a day: readings, the readings of service records, and the meter's own events, sorted
 * by day and added up. For `readMeters` and `computeDue`; NaN days and counts never get past here.
 */
export function accumulateMeter(log: MachineLog, name: MeterName, lastDay: number): MeterWalk | undefined {
  const meter = log.meters[name]
  if (meter === undefined) return undefined
  const { unit, readings } = meter
  const { records, events } = log
  const points: MeterPoint[] = []
  const walk: MeterWalk = { log, name, unit, points, findings: [], offset: 0, stretch: 0 }
  for (let index = 0; index < readings.length; index++) {
    const reading = readings[index]
    if (reading !== undefined) addPoint(walk, reading.date, reading.value, unit, 'readings', index, lastDay)
  }
  for (let index = 0; index < records.length; index++) {
    const record = records[index]
    const reading = record?.readings[name]
    if (record === undefined || reading === undefined) continue
    addPoint(walk, record.date, reading.value, reading.unit, 'records', index, lastDay)
  }

  let changes: MeterChange[] | undefined
  if (events !== undefined) {
    for (let index = 0; index < events.length; index++) {
      const event = events[index]
      if (event === undefined || !('meter' in event) || event.meter !== name) continue
      const day = dayNumberOf(event.date)
      const oldShown = event.kind === 'meter rollover' ? Number.NaN : meterCount(event.oldReading, unit)
      const newShown = event.kind === 'meter swap' ? meterCount(event.newReading, unit) : 0
      if (day <= lastDay) {
        changes ??= []
        changes.push({ day, date: event.date, oldShown, newShown, index })
      }
    }
  }
  if (changes !== undefined) followMeterChanges(walk, changes)
  else followPoints(walk)
  return walk
}

/** Adds a reading where it is one, and says what is wrong with it where it is none. */
function addPoint(
  walk: MeterWalk,
  date: DateText,
  value: number,
  unit: MeterUnit,
  list: 'readings' | 'records',
  index: number,
  lastDay: number,
): void {
  const { points, name } = walk
  const day = typeof date === 'string' ? dayNumberOf(date) : Number.NaN
  const shown = meterCount(value, unit)
  const point: MeterPoint = { day, date, shown, count: shown, stretch: 0, list, index }
  if (Number.isNaN(day)) {
    walk.findings.push({
      code: 'calendar/not-a-date',
      severity: 'error',
      document: { kind: 'machine-log', id: walk.log.id },
      path: pathOfPoint(walk, point),
      params: { text: String(date).slice(0, 40) },
    })
  } else if (!(shown >= 0 && shown <= LARGEST_COUNT[name])) {
    complainOfMeter(walk, 'interval/reading-out-of-bounds', 'error', point, {
      meter: name,
      value: Number.isFinite(value) ? value : String(value),
      most: meterQuantity(walk, LARGEST_COUNT[name]),
    })
  } else if (day <= lastDay) {
    const newest = points[points.length - 1]
    if (list === 'readings' && newest !== undefined && newest.day > day) {
      complainOfMeter(walk, 'interval/readings-out-of-order', 'info', point, {
        meter: name,
        date,
        after: newest.date,
      })
    }
    insertPoint(points, point)
  } else if (list === 'readings') {
    complainOfMeter(walk, 'interval/in-the-future', 'error', point, { what: name, date })
  }
}

/** Keeps readings by day, and smallest first within a day. */
function insertPoint(points: MeterPoint[], point: MeterPoint): void {
  let at = points.length
  for (; at > 0; at--) {
    const before = points[at - 1]
    if (
      before === undefined ||
      before.day < point.day ||
      (before.day === point.day && before.shown <= point.shown)
    )
      break
  }
  if (at === points.length) points.push(point)
  else points.splice(at, 0, point)
}

/** Adds up a meter that was never changed. */
function followPoints(walk: MeterWalk): void {
  const { points } = walk
  let last: MeterPoint | undefined
  let kept = 0
  for (let at = 0; at < points.length; at++) {
    const point = points[at]
    if (point === undefined || (last !== undefined && isRepeated(walk, last, point))) continue
    followPoint(walk, last, point)
    last = point
    points[kept++] = point
  }
  if (kept < points.length) points.length = kept
}

/** Whether a reading says again what the last one said. A service record keeps its reading; a repeated line is reported. */
export function isRepeated(walk: MeterWalk, last: MeterPoint, point: MeterPoint): boolean {
  if (last.day !== point.day || last.shown !== point.shown || last.list === 'events') return false
  if (last.list === 'readings' && point.list === 'readings') {
    complainOfMeter(
      walk,
      'interval/reading-repeated',
      'info',
      point,
      { meter: walk.name, date: point.date },
      last,
    )
  }
  return point.list === 'readings'
}

/** Counts a reading on from the one before it; a fall or a jump that nothing explains begins a new stretch. */
export function followPoint(walk: MeterWalk, last: MeterPoint | undefined, point: MeterPoint): void {
  if (last !== undefined) {
    const rise = point.shown - last.shown
    const most = (point.day - last.day + 1) * MOST_A_DAY[walk.name]
    if (rise > most) {
      walk.stretch += 1
      complainOfMeter(
        walk,
        'interval/meter-jumps',
        'error',
        point,
        { ...bothEnds(walk, last, point), most: meterQuantity(walk, most) },
        last,
      )
    } else if (rise < 0) {
      const modulus = rolloverModulus(walk)
      if (rise + modulus <= most) {
        walk.offset += modulus
        const { meter, before, after } = bothEnds(walk, last, point)
        complainOfMeter(
          walk,
          'interval/rollover-taken',
          'info',
          point,
          { meter, before, after, limit: meterQuantity(walk, modulus) },
          last,
        )
      } else {
        walk.stretch += 1
        complainOfMeter(walk, 'interval/meter-falls', 'error', point, bothEnds(walk, last, point), last)
      }
    }
  }
  point.count = point.shown + walk.offset
  point.stretch = walk.stretch
}

/** Past `rollover` the display shows zero: the modulus is one more of the last digit that the limit is written with. */
export function rolloverModulus({ log, name, unit }: MeterWalk): number {
  const rollover = log.meters[name]?.rollover
  if (rollover === undefined) return Number.NaN
  const decimals = /\.([0-9]+)$/.exec(String(rollover))?.[1]?.length ?? 0
  return meterCount(rollover, unit) + meterCount(10 ** -decimals, unit)
}

/** Where a reading stands in the log. */
export function pathOfPoint({ name }: MeterWalk, { list, index }: MeterPoint): string {
  if (list === 'events') return `/events/${index}`
  return list === 'records' ? `/records/${index}/readings/${name}` : `/meters/${name}/readings/${index}`
}

export function complainOfMeter<Code extends keyof IntervalCodes>(
  walk: MeterWalk,
  code: Code,
  severity: Severity,
  point: MeterPoint,
  params: IntervalCodes[Code] & Finding['params'],
  related?: MeterPoint,
): void {
  const document = { kind: 'machine-log', id: walk.log.id } as const
  const finding = { code, severity, document, path: pathOfPoint(walk, point), params }
  walk.findings.push(
    related === undefined
      ? finding
      : { ...finding, related: [{ document, path: pathOfPoint(walk, related) }] },
  )
}

function meterQuantity({ unit }: MeterWalk, count: number): { value: number; unit: MeterUnit } {
  return { value: count / COUNTS_PER_UNIT[unit], unit }
}

function bothEnds(walk: MeterWalk, last: MeterPoint, point: MeterPoint) {
  const before = meterQuantity(walk, last.shown)
  return {
    meter: walk.name,
    before,
    after: meterQuantity(walk, point.shown),
    from: last.date,
    to: point.date,
  }
}
