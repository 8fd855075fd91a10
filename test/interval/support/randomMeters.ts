import { dayNumberOf } from '../../../src/calendar/dayNumbers.js'
import { accumulateMeter } from '../../../src/interval/accumulateMeter.js'
import { countsPerUnit } from '../../../src/interval/meterCount.js'
import { findPoint } from '../../../src/interval/readMeterScale.js'
import type { MachineLog } from '../../../src/v1/spec.js'
import { addDays } from '../../support/addDays.js'
import { log } from './machine.js'
import { seedRandom, TODAY } from './randomRows.js'

type Unit = 'h' | 'km' | 'mi'

/**
 * Logs whose meter was swapped, reset or rolled over: several times, on one day, on days that follow each other, with readings of
 * the same day on both displays. Some readings fall, jump, repeat, are after today or no value at all.
 */
function randomLog(random: () => number, unit: Unit): MachineLog {
  const pickOne = <T>(...choices: readonly T[]): T => choices[Math.floor(random() * choices.length)] as T
  const chance = (share: number): boolean => random() < share
  const readings: { date: string; value: number }[] = []
  const records: { date: string; value: number | undefined }[] = []
  const events: NonNullable<MachineLog['events']>[number][] = []
  const meter = unit === 'h' ? 'hours' : 'distance'
  const rollover = chance(0.4) ? pickOne(999, 999.9, 9999, 99.99, 9999.999) : undefined
  const digits = pickOne(1, 1, 10, 1000)
  const round = (value: number): number => Math.round(value * digits) / digits
  let day = addDays(TODAY, -Math.floor(random() * 900))
  let shown = chance(0.5) ? 0 : round(random() * 900)
  const hasChanges = chance(0.7)
  const steps = 1 + Math.floor(random() * 12)
  for (let step = 0; step < steps; step++) {
    day = addDays(day, pickOne(0, 0, 1, 1, 2, 10, 40, 200))
    shown = round(shown + pickOne(0, 0, 1, 5, 20, 60, random() * 100))
    if (rollover !== undefined && shown > rollover) shown = round(shown - rollover)
    const choice = random()
    if (hasChanges && choice < 0.3) {
      const after = pickOne(0, 0, 3, round(random() * 50), round(random() * 3000))
      const kind = pickOne('meter swap', 'meter swap', 'meter reset', 'meter rollover')
      const oldReading = chance(0.9) ? shown : round(random() * 1000)
      if (kind === 'meter swap') events.push({ kind, date: day, meter, oldReading, newReading: after })
      else if (kind === 'meter reset') events.push({ kind, date: day, meter, oldReading })
      else events.push({ kind, date: day, meter })
      shown = kind === 'meter swap' ? after : 0
      if (chance(0.4)) readings.push({ date: day, value: shown })
      if (chance(0.3)) readings.push({ date: day, value: round(shown + random() * 20) })
    } else if (choice < 0.5) {
      // At most one record a day: a table of services has no number of the record.
      if (records.at(-1)?.date !== day) records.push({ date: day, value: chance(0.8) ? shown : undefined })
    } else readings.push({ date: day, value: shown })
    if (chance(0.04)) readings.push({ date: day, value: round(random() * 5000) })
    if (chance(0.02)) readings.push({ date: day, value: pickOne(-1, 2_000_000_000) })
    if (chance(0.05)) readings.push({ date: addDays(day, pickOne(0, 1, -1)), value: shown })
  }
  if (chance(0.1)) readings.push({ date: addDays(TODAY, 1), value: shown })
  if (chance(0.1)) readings.reverse()
  const machine = log({ events, records: records.map(({ date }) => ({ date })) })
  const stated = { ...(rollover === undefined ? {} : { rollover }), readings }
  return {
    ...machine,
    records: machine.records.map((record, index) => {
      const value = records[index]?.value
      if (value === undefined) return record
      return {
        ...record,
        readings: unit === 'h' ? { hours: { value, unit } } : { distance: { value, unit } },
      }
    }),
    meters: unit === 'h' ? { hours: { unit, ...stated } } : { distance: { unit, ...stated } },
  }
}

export function randomLogs(count: number, unit: Unit, seed = 14): readonly MachineLog[] {
  const random = seedRandom(seed)
  return Array.from({ length: count }, () => randomLog(random, unit))
}

const literal = (value: unknown): string =>
  value === undefined || value === null ? 'NULL' : typeof value === 'string' ? `'${value}'` : String(value)

export interface MeterTypes {
  readonly double: string
  readonly date: string
  readonly integer: string
  readonly boolean: string
  readonly engine: string
}

/** The statements that make the tables `readings` and `services` of these logs, a service for each record and one for first use. */
export function* meterTables(
  logs: readonly MachineLog[],
  { double, date, integer, boolean, engine }: MeterTypes,
): Generator<string> {
  const readings: string[] = []
  const services: string[] = []
  let service = 0
  for (const [machine, { meters, records, events = [] }] of logs.entries()) {
    const { readings: list = [], rollover } = meters.hours ?? meters.distance ?? {}
    const add = (...values: readonly unknown[]) =>
      readings.push(`(${[machine, ...values, rollover].map(literal).join(', ')})`)
    for (const { date: day, value } of list) add(day, value, null, null)
    for (const { date: day, readings: own } of records) {
      const value = (own.hours ?? own.distance)?.value
      if (value !== undefined) add(day, value, null, null)
      services.push(`(${service++}, ${machine}, '${day}', ${literal(value)}, false)`)
    }
    services.push(`(${service++}, ${machine}, '${addDays(TODAY, -1000)}', NULL, true)`)
    for (const [position, event] of events.entries()) {
      if (event.kind === 'meter rollover') add(event.date, null, 0, position)
      else if (event.kind === 'meter reset') add(event.date, event.oldReading, 0, position)
      else if (event.kind === 'meter swap') add(event.date, event.oldReading, event.newReading, position)
    }
  }
  yield `CREATE TABLE readings (machine ${integer}, date ${date}, value ${double}, new_value ${double}, position ${integer}, rollover ${double})${engine}`
  yield `CREATE TABLE services (n ${integer}, machine ${integer}, last_date ${date}, last_reading ${double}, never_serviced ${boolean})${engine}`
  for (const [table, rows] of [
    ['readings', readings],
    ['services', services],
  ] as const)
    for (let start = 0; start < rows.length; start += 2000)
      yield `INSERT INTO ${table} VALUES ${rows.slice(start, start + 2000).join(', ')}`
}

/** What the library finds for each machine that has a total, by machine; and for each service, in the order of the table. */
export function expectTotals(logs: readonly MachineLog[], unit: Unit) {
  const today = dayNumberOf(TODAY)
  const machines: string[] = []
  const services: string[] = []
  const perUnit = countsPerUnit(unit)
  let service = 0
  for (const [machine, machineLog] of logs.entries()) {
    const points = accumulateMeter(machineLog, unit === 'h' ? 'hours' : 'distance', today)?.points ?? []
    const now = points.at(-1)
    if (now) machines.push(writeAnswer([machine, now.count / perUnit, now.date, now.stretch]))
    const add = (start: ReturnType<typeof findPoint>) => {
      const last = start !== undefined && start.stretch === now?.stretch ? start.count / perUnit : null
      services.push(
        writeAnswer([service++, last, now === undefined ? null : now.count / perUnit, now?.date ?? null]),
      )
    }
    for (const [record, { date }] of machineLog.records.entries())
      add(findPoint(points, { since: 'last service', day: dayNumberOf(date), date, record }))
    add(findPoint(points, { since: 'first use', day: 0, date: '', record: -1 }))
  }
  return { machines, services }
}

/** One row as a text that compares exactly. */
export const writeAnswer = (row: readonly unknown[]): string =>
  row.map((value) => (value === null ? 'null' : String(value))).join(' ')
