import type { Readable, Writable } from 'node:stream'
import { joinPointer } from '../base/index.js'
import { type DateText, dateFromDay } from '../calendar/index.js'
import type { DueOptions, DueRow, DueState } from '../interval/index.js'
import {
  computeDueColumns,
  createDueColumns,
  DUE_LIMITS,
  DUE_ROW_FIELDS,
  DUE_STATES,
  NO_DAY,
  suggestFields,
  writeDueRow,
} from '../interval/index.js'
import { type Catalogue, renderMessage } from '../message/index.js'
import { readLines } from './readLines.js'

export interface RowLinesOptions {
  /** JSON Lines: one flat row (`DueRow`) on each line; blank lines are skipped. */
  readonly input: Readable
  /** Receives one line of JSON for each row, in the same order. */
  readonly output: Writable
  readonly today: DateText
  readonly soon: DueOptions['soon']
  readonly staleAfter: DueOptions['staleAfter']
  /** The language of the findings' messages. */
  readonly catalogue: Catalogue
  /** Called after each batch with the number of lines so far. */
  readonly onProgress?: (lines: number) => void
}

export interface RowLinesSummary {
  readonly lines: number
  readonly countByState: Readonly<Record<DueState, number>>
  /** Lines without a JSON object. */
  readonly unreadableLines: number
  /** Number of rows with an unusable field. */
  readonly rowsWithUnusableFields: number
  /** The first 20 keys that are not fields of a row. */
  readonly unreadColumns: readonly string[]
}

interface BatchRow {
  readonly id: string
  /** The last part of its answer: unusable fields and their findings. */
  readonly problemText: string
}

/** Number of rows judged together; only one batch is in memory. */
const BATCH_SIZE = 4096

const MAX_UNREAD_COLUMNS = 20

/**
 * Judges a stream of JSON Lines in constant memory. Each row gives `{ "id", "verdict", "dueBy", "dueOn" }`, with
 * `"unusable": [fields]` if a field is misspelt or has no usable value, and `"findings"` that suggest the right spelling. A
 * line without a JSON object gives `{ "line", "error" }`.
 */
export async function judgeRowLines(options: RowLinesOptions): Promise<RowLinesSummary> {
  const { input, output, today, soon, staleAfter, catalogue, onProgress } = options
  // Check the options now, not in the middle of the stream.
  computeDueColumns(createDueColumns(0), today, { soon, staleAfter })
  const columns = createDueColumns(BATCH_SIZE)
  /** In the order of the lines; a string is the answer to a line that is not a row. */
  let batch: (BatchRow | string)[] = []
  let rows = 0
  const countByState = { overdue: 0, due: 0, 'cannot tell': 0, 'due soon': 0, 'not due': 0 }
  let lines = 0
  let unreadableLines = 0
  let rowsWithUnusableFields = 0
  const unreadColumns = new Set<string>()

  const addLine = (text: string | undefined): void => {
    const row = text === undefined ? undefined : parseRow(text)
    if (row === undefined) {
      unreadableLines += 1
      const error = text === undefined ? 'line too long' : 'not a JSON object'
      batch.push(`${JSON.stringify({ line: lines, error })}\n`)
      return
    }
    const unusableFields = writeDueRow(columns, rows, row)
    rows += 1
    if (unusableFields.length > 0) rowsWithUnusableFields += 1
    if (unreadColumns.size < MAX_UNREAD_COLUMNS)
      for (const key in row) if (!ROW_FIELDS.has(key) && !unusableFields.includes(key)) unreadColumns.add(key)
    const { id } = row
    batch.push({
      id: typeof id === 'string' || typeof id === 'number' ? JSON.stringify(id) : 'null',
      problemText: describeProblems(row, unusableFields, lines, catalogue),
    })
  }

  const judgeBatch = (): string => {
    const verdicts = computeDueColumns(columns, today, { soon, staleAfter })
    let index = 0
    let text = ''
    for (const entry of batch) {
      if (typeof entry === 'string') {
        text += entry
        continue
      }
      const verdict = DUE_STATES[verdicts.verdict[index] ?? 2] ?? 'cannot tell'
      const dueBy = DUE_LIMITS[verdicts.dueBy[index] ?? 0]
      const day = verdicts.dueDay[index] ?? NO_DAY
      countByState[verdict] += 1
      text += `{"id":${entry.id},"verdict":"${verdict}"`
      if (dueBy !== undefined) text += `,"dueBy":"${dueBy}"`
      if (dueBy !== undefined && day !== NO_DAY) text += `,"dueOn":"${dateFromDay(day)}"`
      text += `${entry.problemText}}\n`
      index += 1
    }
    batch = []
    rows = 0
    onProgress?.(lines)
    return text
  }

  for await (const { line, text } of readLines(input)) {
    lines = line
    addLine(text)
    if (batch.length === BATCH_SIZE) await writeText(output, judgeBatch())
  }
  await writeText(output, judgeBatch())
  return {
    lines,
    countByState,
    unreadableLines,
    rowsWithUnusableFields,
    unreadColumns: [...unreadColumns].slice(0, MAX_UNREAD_COLUMNS),
  }
}

const ROW_FIELDS: ReadonlySet<string> = new Set([...DUE_ROW_FIELDS, 'id'])

function describeProblems(
  row: DueRow,
  unusableFields: readonly string[],
  line: number,
  catalogue: Catalogue,
): string {
  if (unusableFields.length === 0) return ''
  const findings = unusableFields
    .filter((key) => !ROW_FIELDS.has(key))
    .map((key) => {
      const known = suggestFields(key, row[key as keyof DueRow])
      const didYouMean = known.length === 1 ? known[0] : undefined
      const finding = {
        code: 'spec/unknown-key',
        severity: 'error',
        document: { kind: 'text', name: `line ${line}` },
        path: joinPointer([key]),
        params: { key, known, didYouMean },
      } as const
      return { ...finding, message: renderMessage(finding, catalogue) }
    })
  const findingText = findings.length === 0 ? '' : `,"findings":${JSON.stringify(findings)}`
  return `,"unusable":${JSON.stringify(unusableFields)}${findingText}`
}

function parseRow(line: string): DueRow | undefined {
  try {
    const value: unknown = JSON.parse(line)
    return typeof value === 'object' && value !== null && !Array.isArray(value)
      ? (value as DueRow)
      : undefined
  } catch {
    return undefined
  }
}

/** Resolves when the output accepts the text. */
function writeText(output: Writable, text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    output.once('error', reject)
    output.write(text, (error) => {
      // A failed write also emits an error event, so the listener stays.
      if (error) return reject(error)
      output.off('error', reject)
      resolve()
    })
  })
}
