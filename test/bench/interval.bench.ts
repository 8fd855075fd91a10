import { once } from 'node:events'
import { createReadStream, createWriteStream, mkdtempSync, rmSync, statSync } from 'node:fs'
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

/**
 * Speed of the interval module in one run: the fleet columns compared with a typed loop written by hand, `computeDue`
 * with an object loop written by hand, JSON Lines with parse, judge, print and write. It also shows how each time
 * grows. The goals are ratios within this run; times depend on the machine.
 */

const TODAY = '2031-10-06'
const OPTIONS: DueOptions = { soon: { hours: 20, days: 30 }, staleAfter: { days: 30 }, severity: 'normal' }
const MILLION = 1_000_000

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

/** Best of some runs, in ms. */
function time(runs: number, work: () => void): number {
  let best = Number.POSITIVE_INFINITY
  for (let run = 0; run < runs; run++) {
    const start = performance.now()
    work()
    best = Math.min(best, performance.now() - start)
  }
  return best
}

const line = (name: string, ms: number, note: string): void =>
  console.log(`${name.padEnd(46)} ${ms.toFixed(ms < 10 ? 2 : 0).padStart(8)} ms  ${note}`)
const ratio = (own: number, other: number, targetText: string): string =>
  `${(own / other).toFixed(2)}× (goal ${targetText})`

function rowsOf(count: number): DueRow[] {
  const next = random(5)
  return Array.from({ length: count }, (_, index) => makeRow(next, index))
}

function columnsOf(rows: readonly DueRow[]): DueColumns {
  const columns = createDueColumns(rows.length)
  for (const [index, row] of rows.entries()) writeDueRow(columns, index, row)
  return columns
}

function benchColumns(rows: readonly DueRow[], today: number): void {
  const columns = columnsOf(rows)
  const states = new Uint8Array(rows.length)
  const days = new Int32Array(rows.length)
  // In turns, so that the load of the machine affects both equally.
  let byHand = Number.POSITIVE_INFINITY
  let own = Number.POSITIVE_INFINITY
  for (let turn = 0; turn < 9; turn++) {
    byHand = Math.min(
      byHand,
      time(1, () => typedLoop(columns, today, states, days)),
    )
    own = Math.min(
      own,
      time(1, () => void computeDueColumns(columns, TODAY, OPTIONS)),
    )
  }
  line('typed arrays, loop by hand', byHand, '1,000,000 rows')
  line('computeDueColumns', own, ratio(own, byHand, '1.3×'))
  for (const count of [1000, 10_000, 100_000]) {
    const part = columnsOf(rows.slice(0, count))
    const ms = time(20, () => void computeDueColumns(part, TODAY, OPTIONS))
    line(`computeDueColumns, ${count} rows`, ms, `${((ms / count) * 1e6).toFixed(0)} ns a row`)
  }
  line('computeDueColumns, 1000000 rows', own, `${own.toFixed(0)} ns a row`)
}

function benchObjects(rows: readonly DueRow[], today: number): void {
  const part = rows.slice(0, 100_000)
  const questions = part.map(makeQuestion)
  let sink = 0
  const passes = MILLION / part.length
  let byHand = Number.POSITIVE_INFINITY
  let own = Number.POSITIVE_INFINITY
  for (let turn = 0; turn < 6; turn++) {
    byHand = Math.min(
      byHand,
      time(1, () => {
        for (let pass = 0; pass < passes; pass++)
          for (const question of questions) sink += judgeByHand(question, today)?.state.length ?? 0
      }),
    )
    own = Math.min(
      own,
      time(1, () => {
        for (let pass = 0; pass < passes; pass++)
          for (const question of questions) sink += computeDue(question, OPTIONS).lines.length
      }),
    )
  }
  line(
    'plain objects, loop by hand',
    byHand,
    '1,000,000 records (100,000 logs, ten times), state and what is left',
  )
  line(
    'computeDue, all lines and reasons',
    own,
    `${ratio(own, byHand, '4×')}${sink === 0 ? ' (nothing judged)' : ''}`,
  )
  for (const count of [1000, 10_000, 100_000]) {
    const ms = time(3, () => {
      for (let index = 0; index < count; index++) {
        const question = questions[index]
        if (question !== undefined) sink += computeDue(question, OPTIONS).lines.length
      }
    })
    line(`computeDue, ${count} records`, ms, `${((ms / count) * 1e6).toFixed(0)} ns a record`)
  }
  const temporal = time(1, () => {
    for (const row of part.slice(0, 20_000)) {
      const due = Temporal.PlainDate.from(row.lastDate ?? '').add({ months: 12 })
      sink += Temporal.PlainDate.compare(due, TODAY)
    }
  })
  line('a Temporal polyfill, dates alone', temporal * 50, '20,000 rows, reckoned up to 1,000,000')
}

async function benchLines(rows: readonly DueRow[], today: number): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'due-lines-'))
  try {
    const path = join(folder, 'fleet.jsonl')
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
    let byHand = Number.POSITIVE_INFINITY
    let own = Number.POSITIVE_INFINITY
    let heapGrowth = 0
    for (let turn = 0; turn < 2; turn++) {
      let start = performance.now()
      await linesByHand(path, join(folder, 'by-hand.jsonl'), today)
      byHand = Math.min(byHand, performance.now() - start)
      start = performance.now()
      const target = createWriteStream(join(folder, 'own.jsonl'))
      const before = process.memoryUsage().heapUsed
      await judgeRowLines({
        input: createReadStream(path, { highWaterMark: 1 << 18 }),
        output: target,
        today: TODAY,
        soon: OPTIONS.soon,
        staleAfter: OPTIONS.staleAfter,
        catalogue: en,
        onProgress: (count) => {
          if (count % (4096 * 16) === 0)
            heapGrowth = Math.max(heapGrowth, process.memoryUsage().heapUsed - before)
        },
      })
      target.end()
      await finished(target)
      own = Math.min(own, performance.now() - start)
    }
    const megabytes = statSync(path).size / 1e6
    line(
      'JSON Lines by hand: parse, judge, print, write',
      byHand,
      `${rows.length} lines, ${megabytes.toFixed(0)} MB`,
    )
    line(
      'dueLines',
      own,
      `${ratio(own, byHand, '1.3×')}; heap at most ${(heapGrowth / 1e6).toFixed(0)} MB above its start`,
    )
  } finally {
    rmSync(folder, { recursive: true })
  }
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

export default async function run(): Promise<void> {
  const rows = rowsOf(MILLION)
  const columns = createDueColumns(1)
  writeDueRow(columns, 0, { lastDate: TODAY })
  const today = columns.lastDay[0] ?? NO_DAY
  const verdicts = computeDueColumns(columnsOf(rows.slice(0, 100_000)), TODAY, OPTIONS)
  const counts = DUE_STATES.map(
    (state, index) => `${verdicts.verdict.filter((candidate) => candidate === index).length} ${state}`,
  )
  console.log(`Interval: one million records (first 100,000: ${counts.join(', ')})`)
  benchColumns(rows, today)
  benchObjects(rows, today)
  await benchLines(rows.slice(0, MILLION), today)
}
