import { isDate } from '../../calendar/index.js'
import type { ImportedMachine } from '../../exchange/index.js'
import type { DistanceUnit } from '../../quantity/index.js'
import type { MeterReading } from '../../spec/index.js'
import type { LocatedFinding } from '../makeLocator.js'
import { createCellReporter, readCellText, readTable, type TableRow } from './readTable.js'

export type DecimalMark = 'point' | 'comma'

/** The facts of a new log in a table of machines. */
export type NewLog = {
  readonly [Key in 'name' | 'sheet' | 'revision' | 'variant' | 'serial' | 'commissioned']?: string
}

/** A machine of a table: its readings, and the facts of its log if the table has them. */
export interface TableMachine extends ImportedMachine {
  readonly newLog?: NewLog
}

export interface ReadingTable {
  readonly machines: readonly TableMachine[]
  readonly findings: readonly LocatedFinding[]
}

const NEW_LOG_COLUMNS = ['name', 'sheet', 'revision', 'variant', 'serial', 'commissioned'] as const
const MACHINE_COLUMNS: readonly string[] = ['machine', 'id']
const UNITS: Readonly<Record<string, 'h' | DistanceUnit>> = { h: 'h', km: 'km', mi: 'mi' }

/** What the rows of one machine say. */
interface MachineRows {
  readonly hours: MeterReading[]
  readonly distance: Map<DistanceUnit, MeterReading[]>
  readonly newLog: { -readonly [Key in keyof NewLog]: NewLog[Key] }
}

/** A column of readings. */
interface MeterColumn {
  readonly column: string
  readonly unit: 'h' | DistanceUnit
}

/**
 * Reads meter readings, one machine and day a row: `machine`, `date`, `hours` and `distance [km]`. The unit is in
 * the name of the column or in a second header row. Columns of a new log (`name`, `sheet`, `revision`, `variant`,
 * `serial`, `commissioned`) may stand beside them. Each bad cell is a finding.
 */
export function readReadingTable(
  text: string,
  name: string,
  decimal: DecimalMark,
  onlyMachine?: string,
): ReadingTable {
  const table = readTable(text, name)
  const findings = [...table.findings]
  const report = createCellReporter(name)
  const add = (code: string, line: number, column: string, message: string) =>
    void findings.push(report(code, line, column, message))
  const { columns } = table
  const findColumn = (names: readonly string[]) =>
    columns.find((column) => names.includes(column.toLowerCase()))
  const machineColumn = findColumn(MACHINE_COLUMNS)
  const dateColumn = findColumn(['date'])
  const [firstRow] = table.rows
  const unitRow = firstRow !== undefined && isUnitRow(firstRow) ? firstRow : undefined
  const meterColumns = columns.flatMap((column) => readMeterColumn(column, unitRow) ?? [])
  const newLogColumns = NEW_LOG_COLUMNS.flatMap((key) => {
    const column = findColumn([key])
    return column === undefined ? [] : [[key, column] as const]
  })
  if (findings.length === 0 && machineColumn === undefined && onlyMachine === undefined)
    add('column-missing', 1, 'machine', 'expected a column machine with the id or serial number')
  if (meterColumns.length > 0 && dateColumn === undefined)
    add('column-missing', 1, 'date', 'expected a column date')
  if (meterColumns.length === 0 && newLogColumns.length === 0)
    add('column-missing', 1, '', 'expected a column hours, distance [km] or sheet')
  const used = new Set([
    machineColumn,
    dateColumn,
    ...newLogColumns.map(([, column]) => column),
    ...meterColumns.map(({ column }) => column),
  ])
  const note = createCellReporter(name, 'info')
  for (const column of columns)
    if (!used.has(column))
      findings.push(
        /^(hours|distance)\b/i.test(column)
          ? report('unit-missing', 1, column, 'expected a unit, such as distance [km] or hours [h]')
          : note('column-ignored', 1, column, 'the column is not used'),
      )

  const machines = new Map<string, MachineRows>()
  for (const row of table.rows) {
    if (row === unitRow) continue
    const id = machineColumn === undefined ? onlyMachine : row.cells.get(machineColumn)?.trim()
    if (id === undefined) {
      add('cell-missing', row.line, machineColumn ?? 'machine', 'which machine is this?')
      continue
    }
    const key = readCellText(id)
    const machine: MachineRows = machines.get(key) ?? { hours: [], distance: new Map(), newLog: {} }
    machines.set(key, machine)
    for (const [logKey, column] of newLogColumns) {
      const cell = readCellText(row.cells.get(column)?.trim() ?? '')
      const known = machine.newLog[logKey]
      if (cell === '') continue
      if (known !== undefined && known !== cell)
        add('cell-contradicts', row.line, column, `"${cell}" contradicts "${known}" in an earlier row`)
      else if (logKey === 'commissioned' && !isDate(cell))
        add('date-unreadable', row.line, column, `expected a date such as 2023-10-06, found "${cell}"`)
      else machine.newLog[logKey] = cell
    }
    const cells = meterColumns.flatMap((meterColumn) => {
      const cell = row.cells.get(meterColumn.column)?.trim()
      return cell === undefined ? [] : [{ ...meterColumn, cell }]
    })
    if (cells.length === 0) continue
    const date: string = row.cells.get(dateColumn ?? '')?.trim() ?? ''
    const isDay: boolean = isDate(date)
    if (!isDay)
      add(
        'date-unreadable',
        row.line,
        dateColumn ?? 'date',
        `expected a date such as 2023-10-06, found "${date.slice(0, 40)}"`,
      )
    for (const { column, unit, cell } of cells) {
      const value = readFigure(cell, decimal)
      if (value === undefined)
        add(
          'number-unreadable',
          row.line,
          column,
          `expected a number with a decimal ${decimal}, found "${cell.slice(0, 40)}"`,
        )
      else if (isDay) {
        if (unit === 'h') machine.hours.push({ date, value })
        else {
          const readings = machine.distance.get(unit) ?? []
          readings.push({ date, value })
          machine.distance.set(unit, readings)
        }
      }
    }
  }
  const result = [...machines].map(([id, { hours, distance, newLog }]): TableMachine => {
    const [first, ...more] = [...distance]
    if (more.length > 0)
      add('several-units', 1, 'distance', `${id} has distances in ${[...distance.keys()].join(' and ')}`)
    return {
      path: '',
      header: { equipmentId: id },
      hours,
      ...(first && { distance: { unit: first[0], readings: first[1] } }),
      ...(newLog['sheet'] !== undefined && { newLog }),
    }
  })
  const byLine = findings.toSorted(
    (first, second) => (first.position?.line ?? 0) - (second.position?.line ?? 0),
  )
  return { machines: result, findings: byLine }
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
