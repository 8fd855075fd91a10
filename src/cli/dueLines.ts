import type { Readable, Writable } from 'node:stream'
import { type DateText, dateFromDay } from '../calendar/index.js'
import {
  computeDueColumns,
  createDueColumns,
  DUE_LIMITS,
  DUE_STATES,
  type DueOptions,
  type DueRow,
  type DueState,
  NO_DAY,
  writeDueRow,
} from '../interval/index.js'
import { readLines } from './readLines.js'

export interface DueLinesOptions {
  /** JSON Lines: one flat row (`DueRow`) a line; blank lines are skipped. */
  readonly input: Readable
  /** Gets one line of JSON for each row, in the same order. */
  readonly output: Writable
  readonly today: DateText
  readonly soon: DueOptions['soon']
  readonly staleAfter: DueOptions['staleAfter']
  /** Called after every batch with the number of lines so far. */
  readonly onProgress?: (lines: number) => void
}

export interface DueLinesSummary {
  readonly lines: number
  readonly states: Readonly<Record<DueState, number>>
  /** Lines without a JSON object. */
  readonly unreadable: number
  /** Rows with a field that could not be used. */
  readonly withUnusableFields: number
}

interface Row {
  readonly id: string
  readonly unusable: readonly string[]
}

/** Rows judged together; memory stays at one batch, however long the input. */
const BATCH = 4096

/**
 * Judges a stream of JSON Lines, row by row, in constant memory. Each row is answered by
 * `{ "id", "verdict", "dueBy", "dueOn" }`, with `"unusable": [fields]` where a field has no usable value; a line without a
 * JSON object by `{ "line", "error" }`.
 */
export async function dueLines(options: DueLinesOptions): Promise<DueLinesSummary> {
  const { input, output, today, soon, staleAfter, onProgress } = options
  // Throws for a wrong option now, not in the middle of the stream.
  computeDueColumns(createDueColumns(0), today, { soon, staleAfter })
  const columns = createDueColumns(BATCH)
  /** In the order of the lines; a text is the answer to a line without a row. */
  let batch: (Row | string)[] = []
  let rows = 0
  const states = { overdue: 0, due: 0, 'cannot tell': 0, 'due soon': 0, 'not due': 0 }
  let lines = 0
  let unreadable = 0
  let withUnusableFields = 0

  const addLine = (text: string | undefined): void => {
    const row = text === undefined ? undefined : readObject(text)
    if (row === undefined) {
      unreadable += 1
      const error = text === undefined ? 'line too long' : 'not a JSON object'
      batch.push(`${JSON.stringify({ line: lines, error })}\n`)
      return
    }
    const unusable = writeDueRow(columns, rows, row)
    rows += 1
    if (unusable.length > 0) withUnusableFields += 1
    const { id } = row
    batch.push({
      id: typeof id === 'string' || typeof id === 'number' ? JSON.stringify(id) : 'null',
      unusable,
    })
  }

  const judgeBatch = (): string => {
    const verdicts = computeDueColumns(columns, today, { soon, staleAfter })
    let place = 0
    let text = ''
    for (const entry of batch) {
      if (typeof entry === 'string') {
        text += entry
        continue
      }
      const verdict = DUE_STATES[verdicts.verdict[place] ?? 2] ?? 'cannot tell'
      const dueBy = DUE_LIMITS[verdicts.dueBy[place] ?? 0]
      const day = verdicts.dueDay[place] ?? NO_DAY
      states[verdict] += 1
      text += `{"id":${entry.id},"verdict":"${verdict}"`
      if (dueBy !== undefined) text += `,"dueBy":"${dueBy}"`
      if (dueBy !== undefined && day !== NO_DAY) text += `,"dueOn":"${dateFromDay(day)}"`
      text += entry.unusable.length === 0 ? '}\n' : `,"unusable":${JSON.stringify(entry.unusable)}}\n`
      place += 1
    }
    batch = []
    rows = 0
    onProgress?.(lines)
    return text
  }

  for await (const { line, text } of readLines(input)) {
    lines = line
    addLine(text)
    if (batch.length === BATCH) await write(output, judgeBatch())
  }
  await write(output, judgeBatch())
  return { lines, states, unreadable, withUnusableFields }
}

function readObject(line: string): DueRow | undefined {
  try {
    const value: unknown = JSON.parse(line)
    return typeof value === 'object' && value !== null && !Array.isArray(value)
      ? (value as DueRow)
      : undefined
  } catch {
    return undefined
  }
}

/** Resolves once the output has taken the text. */
function write(output: Writable, text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    output.once('error', reject)
    output.write(text, (error) => {
      // A failed write also emits its error, which must find a listener.
      if (error) return reject(error)
      output.off('error', reject)
      resolve()
    })
  })
}
