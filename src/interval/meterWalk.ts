import type { DateText } from '../calendar/index.js'
import type { Finding, Severity } from '../finding.js'
import type { MachineLog, MeterName } from '../spec/machineLog.js'
import type { IntervalCodes } from './codes.js'
import { COUNTS_PER_UNIT, type MeterUnit, MOST_A_DAY, meterCount } from './meterCount.js'

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

export function meterQuantity({ unit }: MeterWalk, count: number): { value: number; unit: MeterUnit } {
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
