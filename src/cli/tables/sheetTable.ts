import { joinPointer, splitPointer } from '../../base/index.js'
import { writeCsv } from '../../exchange/index.js'
import type { LocatedFinding } from '../makeLocator.js'
import type { ReportTexts } from '../message/reportTexts.js'
import { createCellReporter, readCellText, readTable } from './readTable.js'

type JsonObject = { readonly [key: string]: unknown }

/** A sheet as data, in short or full form. */
export type SheetData = JsonObject

const isObject = (value: unknown): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** The columns that name a row. A path of the sheet never has these names, since it starts with a slash. */
const HEAD = ['gearcase', 'opening'] as const

/**
 * A sheet as a table for a spreadsheet: one row for the sheet, then one for each gearcase and one for each of its
 * openings. A column is the path of a value in its row, such as `/oilSpace/oils`. A list, number or empty part is
 * JSON; a text is the text.
 */
export function writeSheetTable(sheet: SheetData): string {
  const { gearcases, ...head } = sheet
  const rows: { readonly names: readonly string[]; readonly cells: ReadonlyMap<string, string> }[] = []
  const addRow = (names: readonly string[], part: JsonObject) => rows.push({ names, cells: flatten(part) })
  const isListed = isObject(gearcases) && Object.values(gearcases).every(isRow)
  addRow(['', ''], isListed ? head : sheet)
  for (const [id, gearcase] of isListed ? Object.entries(gearcases) : []) {
    const { openings, ...rest } = gearcase as JsonObject
    const hasRows =
      isObject(openings) && Object.keys(openings).length > 0 && Object.values(openings).every(isRow)
    addRow([id, ''], hasRows ? rest : (gearcase as JsonObject))
    if (hasRows)
      for (const [name, opening] of Object.entries(openings)) addRow([id, name], opening as JsonObject)
  }
  const columns = [...new Set(rows.flatMap(({ cells }) => [...cells.keys()]))]
  return writeCsv([
    [...HEAD, ...columns],
    ...rows.map(({ names, cells }) => [...names, ...columns.map((column) => cells.get(column))]),
  ])
}

/** Cells by path, for each value that is not a part with keys. */
function flatten(part: JsonObject, path: readonly string[] = []): Map<string, string> {
  const cells = new Map<string, string>()
  for (const [key, value] of Object.entries(part)) {
    const place = [...path, key]
    const isPart = isObject(value) && Object.keys(value).length > 0 && Object.keys(value).every(isColumnName)
    if (!isPart) cells.set(joinPointer(place), encodeCell(value))
    else for (const [inner, cell] of flatten(value, place)) cells.set(inner, cell)
  }
  return cells
}

/** Whether a part can be a row: each of its keys is the name of a column. */
const isRow = (part: unknown): boolean => isObject(part) && Object.keys(part).every(isColumnName)

/** Spaces at the ends of a column's name would be lost. */
const isColumnName = (key: string): boolean => key !== '' && key.trim() === key

function encodeCell(value: unknown): string {
  if (typeof value !== 'string') return JSON.stringify(value)
  const isPlain =
    value !== '' && value.trim() === value && !/^["[{']/.test(value) && decodeCell(value) === value
  return isPlain ? value : JSON.stringify(value)
}

/** JSON if it is, else the text. */
function decodeCell(cell: string): unknown {
  try {
    return JSON.parse(cell)
  } catch {
    return cell
  }
}

export interface SheetTable {
  readonly data: SheetData
  readonly findings: readonly LocatedFinding[]
  /** The cell of a value in the sheet, or of its nearest parent. */
  readonly findCell: (path: string) => { readonly line: number; readonly column: string } | undefined
}

/** A part of a sheet while its cells are read. */
type Node = Map<string, Node | { readonly value: unknown }>

/** Reads a table of a sheet. A cell that has no place is a finding. */
export function readSheetTable(text: string, name: string, reports: ReportTexts): SheetTable {
  const table = readTable(text, name, reports)
  const findings = [...table.findings]
  const report = createCellReporter(name, reports)
  const places = new Map<string, { readonly line: number; readonly column: string }>()
  const root: Node = new Map()
  const columns = table.columns.filter((column) => !HEAD.some((headColumn) => headColumn === column))
  for (const column of columns)
    if (!column.startsWith('/')) findings.push(report('column-unknown', 1, column, reports.unknownColumn))
  const rowNames = new Set<string>()
  for (const { line, cells } of table.rows) {
    const [gearcase = '', opening = ''] = HEAD.map((column) => readCellText(cells.get(column)?.trim() ?? ''))
    const rowPath = [
      ...(gearcase === '' ? [] : ['gearcases', gearcase]),
      ...(opening === '' ? [] : ['openings', opening]),
    ]
    const rowName = joinPointer(rowPath)
    if (gearcase === '' && opening !== '')
      findings.push(report('cell-missing', line, 'gearcase', reports.whichGearcase))
    if (rowNames.has(rowName)) findings.push(report('row-repeated', line, '', reports.rowRepeated))
    rowNames.add(rowName)
    places.set(rowName, { line, column: '' })
    const part = openPart(root, rowPath)
    for (const column of columns) {
      const cell = cells.get(column)
      const path = splitPointer(column)
      if (cell === undefined || path === undefined) continue
      const place = joinPointer([...rowPath, ...path])
      const parent = part && openPart(part, path.slice(0, -1))
      const key = path.at(-1) ?? ''
      if (parent === undefined || parent.has(key))
        findings.push(report('cell-contradicts', line, column, reports.cellContradictsRow))
      else parent.set(key, { value: decodeCell(readCellText(cell)) })
      places.set(place, { line, column })
    }
  }
  const findCell = (path: string) => {
    for (let place = path; ; place = place.slice(0, place.lastIndexOf('/'))) {
      const found = places.get(place)
      if (found !== undefined || place === '') return found
    }
  }
  return { data: toData(root) as SheetData, findings, findCell }
}

/** The part at a path, made if it is missing; undefined if a value is there. */
function openPart(root: Node, path: readonly string[]): Node | undefined {
  let node = root
  for (const key of path) {
    const next = node.get(key) ?? new Map()
    if (!(next instanceof Map)) return undefined
    node.set(key, next)
    node = next
  }
  return node
}

function toData(node: Node): unknown {
  return Object.fromEntries(
    [...node].map(([key, child]) => [key, child instanceof Map ? toData(child) : child.value]),
  )
}
