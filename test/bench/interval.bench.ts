import { once } from 'node:events'
import { createReadStream, createWriteStream, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { finished } from 'node:stream/promises'
import { Temporal } from 'temporal-polyfill'
import { judgeRowLines } from '../../src/cli/judgeRowLines.js'
import { en } from '../../src/message/en/index.js'
import {
  computeDueColumns,
  createDueColumns,
  DUE_STATES,
  type DueColumns,
  type DueRow,
  NO_DAY,
  writeDueRow,
} from '../../src/v1/interval/fleet.js'
import { computeDue, type DueOptions, type IntervalFacts } from '../../src/v1/interval.js'
import type { BenchResult, BenchRow, SizeRow } from './benchResult.js'
import { measureInTurns } from './measureInTurns.js'
import { measureProcess } from './measureProcess.js'

/**
 * Speed of the interval module in one run: the fleet columns compared with a typed loop written by hand, `computeDue`
 * with an object loop written by hand, JSON Lines with parse, judge, print and write. It also shows how each time
 * grows. The goals are ratios within this run; times depend on the machine.
 */

const TODAY = '2031-10-06'
const OPTIONS: DueOptions = { soon: { hours: 20, days: 30 }, staleAfter: { days: 30 }, severity: 'normal' }
const MILLION = 1_000_000
const SIZES = [1000, 10_000, 100_000, MILLION]

function random(seed: number): () => number {
  let state = seed
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0
    return (state >>> 0) / 4_294_967_296
  }
}

const padToTwo = (value: number): string => (value < 10 ? `0${value}` : String(value))

function makeRow(next: () => number, index: number): DueRow {
  const used = next() * 320
  const hours = Math.floor(next() * 90_000) / 10
  const km = Math.floor(next() * 900_000) / 10
  return {
    id: `machine-${index}`,
    lastDate: `${2030 + Math.floor(next() * 1.5)}-${padToTwo(1 + Math.floor(next() * 9))}-${padToTwo(1 + Math.floor(next() * 28))}`,
    lastHours: hours,
    lastDistance: km,
    hours: Math.floor((hours + used) * 10) / 10,
    hoursDate: `2031-10-0${1 + Math.floor(next() * 5)}`,
    distance: Math.floor((km + used * 15) * 10) / 10,
    distanceDate: '2031-10-05',
    distanceUnit: 'km',
    everyHours: 250,
    everyDistance: 4000,
    everyDistanceUnit: 'km',
    everyMonths: 12,
  }
}

const trace = { path: '/services/change', reasons: [] }
const sheet = { id: 'tind', revision: '1' }

function makeQuestion(row: DueRow): IntervalFacts {
  return {
    intervals: {
      repeat: {
        kind: 'stated',
        value: { kind: 'interval', hours: '250', distance: { value: '4000', unit: 'km' }, period: 'P12M' },
        trace,
      },
      countFrom: 'completion',
    },
    log: {
      kind: 'machine-log',
      version: '1.0',
      id: String(row.id),
      name: 'Bench',
      sheet,
      identity: {},
      meters: {
        hours: { unit: 'h', readings: [{ date: row.hoursDate ?? '', value: row.hours ?? 0 }] },
        distance: { unit: 'km', readings: [{ date: row.distanceDate ?? '', value: row.distance ?? 0 }] },
      },
      records: [
        {
          kind: 'service-record',
          version: '1.0',
          id: 'r',
          machine: String(row.id),
          sheet,
          detail: 'date and meters only',
          date: row.lastDate ?? '',
          readings: {
            hours: { value: row.lastHours ?? 0, unit: 'h' },
            distance: { value: row.lastDistance ?? 0, unit: 'km' },
          },
          entries: [{ service: 'change', gearcase: 'rear', opened: [], tightened: [], seals: [] }],
        },
      ],
    },
    service: 'change',
    gearcase: 'rear',
    today: TODAY,
  }
}

/** A loop over typed arrays as written by hand: three limits, correct month ends, state and due day. */
function typedLoop(columns: DueColumns, today: number, states: Uint8Array, days: Int32Array): void {
  const {
    length,
    lastDay,
    lastHours,
    hours,
    hoursDay,
    everyHours,
    lastDistance,
    distance,
    everyDistance,
    everyMonths,
  } = columns
  for (let row = 0; row < length; row++) {
    const from = lastDay[row] as number
    const hoursLeft = (lastHours[row] as number) + (everyHours[row] as number) - (hours[row] as number)
    const distanceLeft =
      (lastDistance[row] as number) + (everyDistance[row] as number) - (distance[row] as number)
    const due = addMonthsByHand(from, everyMonths[row] as number)
    const isPast = hoursLeft < 0 || distanceLeft < 0 || today > due
    const isReached = hoursLeft <= 0 || distanceLeft <= 0 || today >= due
    const unknown = today - (hoursDay[row] as number) > 30
    const soon = hoursLeft <= 20_000 || due - today <= 30
    states[row] = isPast ? 0 : isReached ? 1 : unknown ? 2 : soon ? 3 : 4
    const dailyRate =
      ((hours[row] as number) - (lastHours[row] as number)) / ((hoursDay[row] as number) - from)
    const hoursDue = (hoursDay[row] as number) + Math.ceil(hoursLeft / dailyRate)
    days[row] = Math.min(hoursDue, due)
  }
}

const MONTH_DAYS = new Uint8Array([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31])

/** The well-known days-from-civil formula, as a programmer would copy it into such a loop. */
function addMonthsByHand(day: number, months: number): number {
  const z = day + 719_468
  const era = Math.floor(z / 146_097)
  const doe = z - era * 146_097
  const yoe = Math.floor(
    (doe - Math.floor(doe / 1460) + Math.floor(doe / 36_524) - Math.floor(doe / 146_096)) / 365,
  )
  const doy = doe - (365 * yoe + Math.floor(yoe / 4) - Math.floor(yoe / 100))
  const mp = Math.floor((5 * doy + 2) / 153)
  const d = doy - Math.floor((153 * mp + 2) / 5) + 1
  const m = mp < 10 ? mp + 3 : mp - 9
  const y = yoe + era * 400 + (m <= 2 ? 1 : 0)
  const total = y * 12 + m - 1 + months
  const year = Math.floor(total / 12)
  const month = (total % 12) + 1
  const isLeapYear = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)
  const last = month === 2 && isLeapYear ? 29 : (MONTH_DAYS[month - 1] as number)
  const dayOfMonth = Math.min(d, last)
  const yy = month <= 2 ? year - 1 : year
  const era2 = Math.floor(yy / 400)
  const yoe2 = yy - era2 * 400
  const doy2 = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + dayOfMonth - 1
  return era2 * 146_097 + yoe2 * 365 + Math.floor(yoe2 / 4) - Math.floor(yoe2 / 100) + doy2 - 719_468
}

const dayByHand = (text: string): number =>
  Date.UTC(+text.slice(0, 4), +text.slice(5, 7) - 1, +text.slice(8)) / 86_400_000

interface ByHand {
  readonly state: string
  readonly dueBy: string
  readonly hoursLeft: number
  readonly distanceLeft: number
  readonly dueOn: number
}

/**
 * A loop over the same documents as written by hand: last service, last readings, state, first limit, the rest of the
 * interval.
 */
function judgeByHand(question: IntervalFacts, today: number): ByHand | undefined {
  const { log, service, gearcase, intervals } = question
  const record = log.records.findLast(({ entries }) =>
    entries.some((entry) => entry.service === service && entry.gearcase === gearcase),
  )
  const hours = log.meters.hours?.readings.at(-1)
  const distance = log.meters.distance?.readings.at(-1)
  if (
    record === undefined ||
    hours === undefined ||
    distance === undefined ||
    intervals.repeat.kind !== 'stated'
  )
    return undefined
  const everyInterval = intervals.repeat.value
  const everyHours = Number(everyInterval.hours)
  const hoursLeft = Math.round(((record.readings.hours?.value ?? 0) + everyHours - hours.value) * 1000) / 1000
  const distanceLeft =
    Math.round(
      ((record.readings.distance?.value ?? 0) + Number(everyInterval.distance?.value) - distance.value) *
        1000,
    ) / 1000
  const from = dayByHand(record.date)
  const months = Number(/^P([0-9]+)M$/.exec(everyInterval.period ?? '')?.[1])
  return judgeFacts(hoursLeft, distanceLeft, everyHours, from, months, dayByHand(hours.date), today)
}

/** The same, written by hand, over flat rows. */
function judgeRowByHand(row: DueRow, today: number): ByHand {
  const hoursLeft =
    Math.round(((row.lastHours ?? 0) + (row.everyHours ?? 0) - (row.hours ?? 0)) * 1000) / 1000
  const distanceLeft =
    Math.round(((row.lastDistance ?? 0) + (row.everyDistance ?? 0) - (row.distance ?? 0)) * 1000) / 1000
  const from = dayByHand(row.lastDate ?? '')
  const readOn = dayByHand(row.hoursDate ?? '')
  return judgeFacts(hoursLeft, distanceLeft, row.everyHours ?? 1, from, row.everyMonths ?? 0, readOn, today)
}

function judgeFacts(
  hoursLeft: number,
  distanceLeft: number,
  everyHours: number,
  from: number,
  months: number,
  readOn: number,
  today: number,
): ByHand {
  const dueOn = addMonthsByHand(from, months)
  const isPast = hoursLeft < 0 || distanceLeft < 0 || today > dueOn
  const isReached = hoursLeft <= 0 || distanceLeft <= 0 || today >= dueOn
  const soon = hoursLeft <= 20 || dueOn - today <= 30
  const state = isPast
    ? 'overdue'
    : isReached
      ? 'due'
      : today - readOn > 30
        ? 'cannot tell'
        : soon
          ? 'due soon'
          : 'not due'
  const dueBy = 1 - hoursLeft / everyHours > (today - from) / (dueOn - from) ? 'hours' : 'period'
  return { state, dueBy, hoursLeft, distanceLeft, dueOn }
}

function rowsOf(count: number): DueRow[] {
  const next = random(5)
  return Array.from({ length: count }, (_, index) => makeRow(next, index))
}

function columnsOf(rows: readonly DueRow[]): DueColumns {
  const columns = createDueColumns(rows.length)
  for (const [index, row] of rows.entries()) writeDueRow(columns, index, row)
  return columns
}

async function compareColumns(rows: readonly DueRow[], today: number): Promise<BenchResult> {
  const growth: SizeRow[] = []
  const found: BenchRow[] = []
  for (const count of SIZES) {
    const columns = columnsOf(rows.slice(0, count))
    const states = new Uint8Array(count)
    const days = new Int32Array(count)
    const times = await measureInTurns(
      {
        hand: () => typedLoop(columns, today, states, days),
        own: () => computeDueColumns(columns, TODAY, OPTIONS),
      },
      { rounds: count === MILLION ? 15 : 5 },
    )
    growth.push({ what: 'computeDueColumns', item: 'row', sizes: [[count, Math.min(...times.own) / count]] })
    if (count === MILLION)
      found.push({
        what: 'computeDueColumns, 1,000,000 rows',
        times: times.own,
        peer: { name: 'a loop over typed arrays', times: times.hand },
        goal: 1.3,
      })
  }
  return { rows: found, growth }
}

async function compareObjects(rows: readonly DueRow[], today: number): Promise<BenchResult> {
  const questions = rows.slice(0, 100_000).map(makeQuestion)
  let sink = 0
  const judge = (count: number) => () => {
    for (let at = 0; at < count; at++)
      sink += computeDue(questions[at % questions.length] as IntervalFacts, OPTIONS).lines.length
  }
  const times = await measureInTurns(
    {
      hand: () => {
        for (const question of questions) sink += judgeByHand(question, today)?.state.length ?? 0
      },
      own: judge(questions.length),
    },
    { rounds: 9 },
  )
  const dates = rows.slice(0, 20_000)
  const temporal = await measureInTurns(
    {
      own: judge(dates.length),
      polyfill: () => {
        for (const row of dates) {
          const due = Temporal.PlainDate.from(row.lastDate ?? '').add({ months: 12 })
          sink += Temporal.PlainDate.compare(due, TODAY)
        }
      },
    },
    { rounds: 3 },
  )
  const sizes: (readonly [number, number])[] = []
  for (const count of SIZES) {
    const { micros } = await measureInTurns({ micros: judge(count) }, { rounds: 3 })
    sizes.push([count, Math.min(...micros) / count])
  }
  if (sink === 0) throw new Error('nothing was judged')
  return {
    rows: [
      {
        what: 'computeDue, all lines and reasons, 100,000 records',
        times: times.own,
        peer: { name: 'a loop over objects', times: times.hand },
        goal: 4,
      },
      {
        what: 'computeDue, all lines and reasons, 20,000 records',
        times: temporal.own,
        peer: { name: 'their dates by a Temporal polyfill', times: temporal.polyfill },
      },
    ],
    growth: [{ what: 'computeDue, all lines and reasons', item: 'record', sizes }],
    notes: ['`computeDue` at 1,000,000 records judges 100,000 logs ten times.'],
  }
}

async function writeRows(path: string, rows: readonly DueRow[]): Promise<void> {
  const file = createWriteStream(path)
  for (let start = 0; start < rows.length; start += 5000) {
    const text = rows
      .slice(start, start + 5000)
      .map((row) => `${JSON.stringify(row)}\n`)
      .join('')
    if (!file.write(text)) await once(file, 'drain')
  }
  file.end()
  await finished(file)
}

async function judgeLines(from: string, to: string): Promise<void> {
  const output = createWriteStream(to)
  await judgeRowLines({
    input: createReadStream(from, { highWaterMark: 1 << 18 }),
    output,
    today: TODAY,
    soon: OPTIONS.soon,
    staleAfter: OPTIONS.staleAfter,
    catalogue: en,
  })
  output.end()
  await finished(output)
}

async function compareLines(rows: readonly DueRow[], today: number): Promise<BenchResult> {
  const folder = mkdtempSync(join(tmpdir(), 'due-lines-'))
  const growth: SizeRow[] = []
  const memory: SizeRow[] = []
  const found: BenchRow[] = []
  try {
    const from = join(folder, 'fleet.jsonl')
    const to = join(folder, 'due.jsonl')
    for (const count of SIZES) {
      await writeRows(from, rows.slice(0, count))
      const times = await measureInTurns(
        { hand: () => linesByHand(from, to, today), own: () => judgeLines(from, to) },
        { rounds: 3, roundMs: 1 },
      )
      growth.push({
        what: 'due over rows in JSON Lines',
        item: 'row',
        sizes: [[count, Math.min(...times.own) / count]],
      })
      const { mebibytes } = measureProcess('cli/main', ['due', from, '--today', TODAY])
      memory.push({ what: 'due over rows in JSON Lines', item: 'rows', sizes: [[count, mebibytes]] })
      if (count === MILLION)
        found.push({
          what: 'due over 1,000,000 rows in JSON Lines',
          times: times.own,
          peer: { name: 'parse, judge, print, write by hand', times: times.hand },
          goal: 1.3,
        })
    }
  } finally {
    rmSync(folder, { recursive: true })
  }
  return { rows: found, growth, memory }
}

/** JSON Lines as read by hand: events of readline, parse, judge, print, write in larger pieces. */
async function linesByHand(from: string, to: string, today: number): Promise<void> {
  const output = createWriteStream(to)
  const reader = createInterface({ input: createReadStream(from, { highWaterMark: 1 << 18 }) })
  let text = ''
  reader.on('line', (candidate) => {
    const row: DueRow = JSON.parse(candidate)
    const { state, dueBy, dueOn } = judgeRowByHand(row, today)
    const date = new Date(dueOn * 86_400_000).toISOString().slice(0, 10)
    text += `${JSON.stringify({ id: row.id, state, dueBy, dueOn: date })}\n`
    if (text.length < 300_000) return
    if (!output.write(text)) {
      reader.pause()
      output.once('drain', () => reader.resume())
    }
    text = ''
  })
  await once(reader, 'close')
  output.end(text)
  await finished(output)
}

export default async function run(): Promise<BenchResult> {
  const rows = rowsOf(MILLION)
  const columns = createDueColumns(1)
  writeDueRow(columns, 0, { lastDate: TODAY })
  const today = columns.lastDay[0] ?? NO_DAY
  const { verdict } = computeDueColumns(columnsOf(rows.slice(0, 100_000)), TODAY, OPTIONS)
  const lacking = DUE_STATES.filter((_state, index) => !verdict.includes(index))
  if (lacking.length > 0) throw new Error(`no row is ${lacking.join(' or ')}`)
  const results = [
    await compareColumns(rows, today),
    await compareObjects(rows, today),
    await compareLines(rows, today),
  ]
  return {
    rows: results.flatMap((result) => result.rows),
    growth: results.flatMap((result) => result.growth ?? []),
    memory: results.flatMap((result) => result.memory ?? []),
    notes: results.flatMap((result) => result.notes ?? []),
  }
}
