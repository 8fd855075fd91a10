import type { BenchResult, BenchRow, SizeRow } from './benchResult.js'

/** The results of all benchmarks by name. */
export type BenchResults = ReadonlyMap<string, BenchResult>

export interface Spread {
  readonly median: number
  /** A quarter of the values is below it. */
  readonly low: number
  /** A quarter of the values is above it. */
  readonly high: number
}

export function findSpread(values: readonly number[]): Spread {
  if (values.length === 0) throw new RangeError('no values')
  const sorted = values.toSorted((first, second) => first - second)
  const at = (part: number): number => sorted[Math.round((sorted.length - 1) * part)] as number
  return { median: at(0.5), low: at(0.25), high: at(0.75) }
}

/** The ratio of each round, since both sides of a round met the same load. */
export function findRatio({ what, times, peer }: BenchRow): Spread | undefined {
  if (peer === undefined) return undefined
  if (peer.times.length !== times.length) throw new RangeError(`${what}: rounds differ`)
  return findSpread(times.map((time, round) => time / (peer.times[round] as number)))
}

/** Whether the median is within the goal; undefined without a goal. */
export function isReached(row: BenchRow): boolean | undefined {
  const { goal, goalMicros, times } = row
  const ratio = findRatio(row)
  if (goal !== undefined && ratio !== undefined) return ratio.median <= goal
  return goalMicros === undefined ? undefined : findSpread(times).median <= goalMicros
}

const showNumber = (value: number): string =>
  value >= 99.5 ? value.toFixed(0) : value.toPrecision(value < 0.995 ? 2 : 3)

/** 1.23 ms. */
export function showTime(micros: number): string {
  const [value, unit] =
    micros >= 1e6
      ? [micros / 1e6, 's']
      : micros >= 1000
        ? [micros / 1000, 'ms']
        : micros >= 1
          ? [micros, 'µs']
          : [micros * 1000, 'ns']
  return `${showNumber(value)} ${unit}`
}

/** Lines of one Markdown table with columns of equal width, so that a terminal shows it too. */
function writeTable(rows: readonly (readonly string[])[]): readonly string[] {
  const [head = []] = rows
  const widths = head.map((_cell, column) => Math.max(...rows.map((row) => (row[column] ?? '').length), 3))
  const writeRow = (row: readonly string[]): string =>
    `| ${widths.map((width, column) => (row[column] ?? '').padEnd(width)).join(' | ')} |`
  return [
    writeRow(head),
    `| ${widths.map((width) => '-'.repeat(width)).join(' | ')} |`,
    ...rows.slice(1).map(writeRow),
  ]
}

function writeRow(name: string, row: BenchRow): readonly string[] {
  const ratio = findRatio(row)
  const reached = isReached(row)
  const goal =
    row.goal !== undefined ? String(row.goal) : row.goalMicros !== undefined ? showTime(row.goalMicros) : ''
  return [
    name,
    row.what,
    showTime(findSpread(row.times).median),
    row.peer?.name ?? '',
    ratio === undefined ? '' : showNumber(ratio.median),
    ratio === undefined ? '' : `${showNumber(ratio.low)}–${showNumber(ratio.high)}`,
    goal,
    reached === undefined ? '' : reached ? 'reached' : 'not reached',
  ]
}

/** All comparisons as one table. */
export function writeComparisons(results: BenchResults): readonly string[] {
  const rows = [...results].flatMap(([name, { rows: found }]) => found.map((row) => writeRow(name, row)))
  return writeTable([['bench', 'what', 'time', 'peer', 'ratio', 'middle half', 'goal', ''], ...rows])
}

/** One line for each subject, also if its sizes were measured in several runs. */
function writeSizes(rows: readonly SizeRow[], show: (value: number) => string): readonly string[] {
  const valuesOf = new Map<string, Map<number, number>>()
  for (const { what, item, sizes } of rows) {
    const name = `${what}, ${item}`
    valuesOf.set(name, new Map([...(valuesOf.get(name) ?? []), ...sizes]))
  }
  const counts = [...new Set([...valuesOf.values()].flatMap((values) => [...values.keys()]))].sort(
    (first, second) => first - second,
  )
  const lines = [...valuesOf].map(([name, values]) => [
    name,
    ...counts.map((count) => {
      const value = values.get(count)
      return value === undefined ? '' : show(value)
    }),
  ])
  return lines.length === 0
    ? []
    : writeTable([['what', ...counts.map((count) => count.toLocaleString('en'))], ...lines])
}

/** The time of one item by the number of items: it should not grow. */
export const writeGrowth = (results: BenchResults): readonly string[] =>
  writeSizes(
    [...results.values()].flatMap(({ growth = [] }) => growth),
    showTime,
  )

/** The most memory of a process by the number of items. */
export const writeMemory = (results: BenchResults): readonly string[] =>
  writeSizes(
    [...results.values()].flatMap(({ memory = [] }) => memory),
    (value) => `${value.toFixed(0)} MiB`,
  )

export const writeNotes = (results: BenchResults): readonly string[] =>
  [...results].flatMap(([name, { notes = [] }]) => notes.map((note) => `- ${name}: ${note}`))
