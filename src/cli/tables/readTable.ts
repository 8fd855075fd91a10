import { CsvError, parse } from 'csv-parse/sync'
import { joinPointer } from '../../base/index.js'
import type { LocatedFinding } from '../makeLocator.js'
import type { ReportTexts } from '../message/reportTexts.js'

/** A row of a table, with the line of its text. */
export interface TableRow {
  readonly line: number
  /** Cells by column, without empty ones. */
  readonly cells: ReadonlyMap<string, string>
}

export interface Table {
  readonly columns: readonly string[]
  readonly rows: readonly TableRow[]
  readonly findings: readonly LocatedFinding[]
}

/** Reports one mistake in a table. */
export type ReportCell = (code: string, line: number, column: string, message: string) => LocatedFinding

export const createCellReporter =
  (name: string, reports: ReportTexts, severity: LocatedFinding['severity'] = 'error'): ReportCell =>
  (code, line, column, message) => ({
    code: `import/${code}`,
    severity,
    message: column === '' ? message : reports.column({ column, message }),
    document: { kind: 'text', name },
    path: joinPointer([String(line), column]),
    params: { line, column },
    position: { line, column: 1 },
  })

/**
 * Reads a table (CSV, RFC 4180 from memory) with a header row. The separator is the one of comma, semicolon and
 * tab that the first line has most often. A cell is never dropped: one without a column is a finding.
 */
export function readTable(text: string, name: string, reports: ReportTexts): Table {
  const report = createCellReporter(name, reports)
  const [firstLine = ''] = text.split(/\r?\n/, 1)
  const count = (separator: string): number => firstLine.split(separator).length
  const delimiter = [',', ';', '\t'].toSorted((first, second) => count(second) - count(first))[0] ?? ','
  let records: readonly { readonly record: readonly string[]; readonly info: { readonly lines: number } }[]
  try {
    const options = { bom: true, delimiter, info: true, relax_column_count: true, skip_empty_lines: true }
    records = parse(text, options) as unknown as typeof records
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    const line = Number((error as { lines?: unknown }).lines ?? 1)
    return {
      columns: [],
      rows: [],
      findings: [report('not-a-table', line, '', reports.notATable({ problem: error.message }))],
    }
  }
  const [head, ...others] = records
  const columns = (head?.record ?? []).map((column) => column.trim())
  const findings: LocatedFinding[] = []
  const repeated = columns.filter((column, index) => column !== '' && columns.indexOf(column) !== index)
  for (const column of repeated) findings.push(report('repeated-column', 1, column, reports.repeatedColumn))
  const rows = others.map(({ record, info }): TableRow => {
    // A cell over several lines ends on the line that the reader gives.
    const line = info.lines - record.join('').split('\n').length + 1
    const cells = new Map<string, string>()
    for (const [index, cell] of record.entries()) {
      const column = columns[index] ?? ''
      if (cell.trim() === '') continue
      if (column === '')
        findings.push(
          report('cell-without-column', line, '', reports.cellWithoutColumn({ cell: cell.slice(0, 40) })),
        )
      else cells.set(column, cell)
    }
    return { line, cells }
  })
  return {
    columns: columns.filter((column) => column !== ''),
    rows: rows.filter(({ cells }) => cells.size > 0),
    findings,
  }
}

/** A text of a cell without the apostrophe that `writeCsv` puts in front of what looks like a formula. */
export const readCellText = (cell: string): string =>
  /^'\s*[=+\-@\t\r＝＋－＠]/u.test(cell) ? cell.slice(1) : cell
