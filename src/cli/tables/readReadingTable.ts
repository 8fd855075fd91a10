import { isDate } from '../../calendar/index.js'
import type { ImportedMachine } from '../../exchange/index.js'
import type { DistanceUnit } from '../../quantity/index.js'
import type { MeterReading } from '../../spec/index.js'
import type { LocatedFinding } from '../makeLocator.js'
import type { ReportTexts } from '../message/reportTexts.js'
import { createCellReporter, readCellText, readTable, type TableRow } from './readTable.js'

export type DecimalMark = 'point' | 'comma'

/** The facts of a new log in a table of machines. */
export type NewLog = {
  readonly [Key in 'name' | 'sheet' | 'revision' | 'variant' | 'serial' | 'commissioned']?: string
}

/** The work of one day, with the line of its first row. */
export interface TableRecord {
  readonly line: number
  readonly date: string
  readonly readings: {
    readonly hours?: number
    readonly distance?: MeterReading & { readonly unit: DistanceUnit }
  }
  readonly by?: string
  /** Texts in short notation, such as `gear-oil-change of front`. */
  readonly entries: readonly string[]
}

/** A machine of a table: its readings and records, and the facts of its log if the table has them. */
export interface TableMachine extends ImportedMachine {
  readonly newLog?: NewLog
  readonly records?: readonly TableRecord[]
}

export interface ReadingTable {
  readonly machines: readonly TableMachine[]
  readonly findings: readonly LocatedFinding[]
}

const NEW_LOG_COLUMNS = ['name', 'sheet', 'revision', 'variant', 'serial', 'commissioned'] as const
const UNITS: Readonly<Record<string, 'h' | DistanceUnit>> = { h: 'h', km: 'km', mi: 'mi' }

/** What the rows of one machine say. */
interface MachineRows {
  readonly hours: MeterReading[]
  readonly distance: Map<DistanceUnit, MeterReading[]>
  readonly newLog: { -readonly [Key in keyof NewLog]: NewLog[Key] }
  readonly records: Map<string, WrittenRecord>
}

type WrittenRecord = { -readonly [Key in keyof TableRecord]: TableRecord[Key] } & {
  readonly entries: string[]
}

/** A column of readings. */
interface MeterColumn {
  readonly column: string
  readonly unit: 'h' | DistanceUnit
}

/** The columns of a table. */
interface Columns {
  readonly machine: string | undefined
  readonly date: string | undefined
  readonly entry: string | undefined
  readonly by: string | undefined
  readonly meters: readonly MeterColumn[]
  readonly newLog: readonly (readonly [key: keyof NewLog, column: string])[]
}

/** Adds one finding. */
type Report = (code: string, line: number, column: string, message: string) => void

/**
 * Reads meter readings, one machine and day a row: `machine`, `date`, `hours` and `distance [km]`. The unit is in
 * the name of the column or in a second header row. Columns of a new log (`name`, `sheet`, `revision`, `variant`,
 * `serial`, `commissioned`) or a record (`entry` in short notation, `by`) may be beside them; the entries of one day
 * are one record. Each bad cell is a finding.
 */
export function readReadingTable(
  text: string,
  name: string,
  decimal: DecimalMark,
  reports: ReportTexts,
  onlyMachine?: string,
): ReadingTable {
  const table = readTable(text, name, reports)
  const findings = [...table.findings]
  const makeError = createCellReporter(name, reports)
  const report: Report = (...mistake) => void findings.push(makeError(...mistake))
  const [firstRow] = table.rows
  const unitRow = firstRow !== undefined && isUnitRow(firstRow) ? firstRow : undefined
  const columns = findColumns(table.columns, unitRow)
  if (findings.length === 0) reportMissingColumns(columns, onlyMachine, report, reports)
  findings.push(...listUnusedColumns(table.columns, columns, name, reports))
  const machines = new Map<string, MachineRows>()
  for (const row of table.rows) {
    if (row === unitRow) continue
    const id = columns.machine === undefined ? onlyMachine : readCell(row, columns.machine)
    if (id === undefined || id === '') {
      report('cell-missing', row.line, columns.machine ?? 'machine', reports.whichMachine)
      continue
    }
    let machine = machines.get(id)
    if (machine === undefined) {
      machine = { hours: [], distance: new Map(), newLog: {}, records: new Map() }
      machines.set(id, machine)
    }
    readNewLog(row, columns, machine, report, reports)
    readDay(row, columns, decimal, machine, report, reports)
  }
  const result = [...machines].map(([id, { hours, distance, newLog, records }]): TableMachine => {
    const [first, ...more] = [...distance]
    if (more.length > 0)
      report(
        'several-units',
        1,
        'distance',
        reports.severalUnits({ machine: id, units: [...distance.keys()].join(', ') }),
      )
    return {
      path: '',
      header: { equipmentId: id },
      hours,
      ...(first && { distance: { unit: first[0], readings: first[1] } }),
      ...(newLog['sheet'] !== undefined && { newLog }),
      ...(records.size > 0 && { records: [...records.values()] }),
    }
  })
  const byLine = findings.toSorted(
    (first, second) => (first.position?.line ?? 0) - (second.position?.line ?? 0),
  )
  return { machines: result, findings: byLine }
}

function findColumns(names: readonly string[], unitRow: TableRow | undefined): Columns {
  const find = (...expected: readonly string[]) =>
    names.find((column) => expected.includes(column.toLowerCase()))
  return {
    machine: find('machine', 'id'),
    date: find('date'),
    entry: find('entry'),
    by: find('by'),
    meters: names.flatMap((column) => readMeterColumn(column, unitRow) ?? []),
    newLog: NEW_LOG_COLUMNS.flatMap((key) => {
      const column = find(key)
      return column === undefined ? [] : [[key, column] as const]
    }),
  }
}

function reportMissingColumns(
  { machine, date, entry, meters, newLog }: Columns,
  onlyMachine: string | undefined,
  report: Report,
  reports: ReportTexts,
): void {
  if (machine === undefined && onlyMachine === undefined)
    report('column-missing', 1, 'machine', reports.machineColumnMissing)
  if ((meters.length > 0 || entry !== undefined) && date === undefined)
    report('column-missing', 1, 'date', reports.dateColumnMissing)
  if (meters.length === 0 && newLog.length === 0 && entry === undefined)
    report('column-missing', 1, '', reports.dataColumnMissing)
}

/** A meter without a unit is an error, any other column a note. */
function listUnusedColumns(
  names: readonly string[],
  { machine, date, entry, by, meters, newLog }: Columns,
  name: string,
  reports: ReportTexts,
): readonly LocatedFinding[] {
  const used = new Set([
    ...[machine, date, entry, by],
    ...newLog.map(([, column]) => column),
    ...meters.map(({ column }) => column),
  ])
  return names
    .filter((column) => !used.has(column))
    .map((column) =>
      /^(hours|distance)\b/i.test(column)
        ? createCellReporter(name, reports)('unit-missing', 1, column, reports.unitMissing)
        : createCellReporter(name, reports, 'info')('column-ignored', 1, column, reports.columnIgnored),
    )
}

const readCell = ({ cells }: TableRow, column: string | undefined): string =>
  readCellText(cells.get(column ?? '')?.trim() ?? '')

function readNewLog(
  row: TableRow,
  { newLog }: Columns,
  machine: MachineRows,
  report: Report,
  reports: ReportTexts,
): void {
  for (const [key, column] of newLog) {
    const cell = readCell(row, column)
    const known = machine.newLog[key]
    if (cell === '') continue
    if (known !== undefined && known !== cell)
      report('cell-contradicts', row.line, column, reports.contradictsEarlier({ cell, earlier: known }))
    else if (key === 'commissioned' && !isDate(cell))
      report('date-unreadable', row.line, column, reports.badDate({ cell }))
    else machine.newLog[key] = cell
  }
}

/** The readings of one day, and an entry of its record. */
function readDay(
  row: TableRow,
  columns: Columns,
  decimal: DecimalMark,
  machine: MachineRows,
  report: Report,
  reports: ReportTexts,
): void {
  const entry = readCell(row, columns.entry)
  const by = readCell(row, columns.by)
  const meters = columns.meters.filter(({ column }) => row.cells.has(column))
  if (meters.length === 0 && entry === '') {
    if (by !== '') report('cell-without-entry', row.line, columns.by ?? '', reports.noEntry)
    return
  }
  const date = readCell(row, columns.date)
  const isDay: boolean = isDate(date)
  if (!isDay) {
    report('date-unreadable', row.line, columns.date ?? 'date', reports.badDate({ cell: date.slice(0, 40) }))
  }
  const readings: { hours?: number; distance?: MeterReading & { unit: DistanceUnit } } = {}
  for (const { column, unit } of meters) {
    const cell = row.cells.get(column)?.trim() ?? ''
    const value = readFigure(cell, decimal)
    if (value === undefined) {
      const found = reports.badNumber({ cell: cell.slice(0, 40), mark: decimal })
      report('number-unreadable', row.line, column, found)
    } else if (isDay && unit === 'h') {
      readings.hours = value
      machine.hours.push({ date, value })
    } else if (isDay && unit !== 'h') {
      readings.distance = { date, value, unit }
      const sameUnit = machine.distance.get(unit) ?? []
      sameUnit.push({ date, value })
      machine.distance.set(unit, sameUnit)
    }
  }
  if (entry === '' || !isDay) return
  const record: WrittenRecord = machine.records.get(date) ?? { line: row.line, date, readings, entries: [] }
  machine.records.set(date, record)
  record.entries.push(entry)
  record.readings = { ...record.readings, ...readings }
  if (by === '') return
  if (record.by === undefined) record.by = by
  else if (record.by !== by) {
    const found = reports.contradictsLine({ cell: by, earlier: record.by, line: record.line })
    report('cell-contradicts', row.line, columns.by ?? '', found)
  }
}

/** The meter and unit of a column such as `hours`, `distance [km]` or `distance km`; hours are always in h. */
function readMeterColumn(column: string, unitRow: TableRow | undefined): MeterColumn | undefined {
  const [, word = '', ownUnit] =
    /^(hours|distance)(?:\s*[[(]?\s*(\p{L}+)\s*[\])]?)?$/iu.exec(column.trim()) ?? []
  if (word === '') return undefined
  const isHours = word.toLowerCase() === 'hours'
  const unit = UNITS[(ownUnit ?? unitRow?.cells.get(column)?.trim() ?? (isHours ? 'h' : '')).toLowerCase()]
  return unit === undefined || isHours !== (unit === 'h') ? undefined : { column, unit }
}

/** A second header row: only units, in columns of meters. */
function isUnitRow({ cells }: TableRow): boolean {
  return [...cells].every(
    ([column, cell]) => /^(hours|distance)\b/i.test(column) && UNITS[cell.trim().toLowerCase()] !== undefined,
  )
}

function readFigure(cell: string, decimal: DecimalMark): number | undefined {
  const pattern = decimal === 'point' ? /^[0-9]{1,10}(\.[0-9]{1,6})?$/ : /^[0-9]{1,10}(,[0-9]{1,6})?$/
  return pattern.test(cell) ? Number(cell.replace(',', '.')) : undefined
}
