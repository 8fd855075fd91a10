import { createInterface } from 'node:readline'
import type { Readable, Writable } from 'node:stream'
import { type DateText, dateOfDay } from '../calendar/index.js'
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

export interface DueLinesOptions {
  /** JSON Lines: one flat row (`DueRow`) a line; blank lines are passed over. */
  readonly input: Readable
  /** Gets one line of JSON for each row, in the same order. */
  readonly output: Writable
  readonly today: DateText
  readonly soon: DueOptions['soon']
  readonly staleAfter: DueOptions['staleAfter']
  /** Told after every batch how many lines have been judged. */
  readonly onProgress?: (lines: number) => void
}

export interface DueLinesSummary {
  readonly lines: number
  readonly states: Readonly<Record<DueState, number>>
  /** Lines that hold no JSON object. */
  readonly unreadable: number
  /** Rows with a field that could not be used. */
  readonly withUnusableFields: number
}

/** Rows judged together; memory stays at one batch however long the input is. */
const BATCH = 4096

/**
 * Judges a stream of JSON Lines, row by row, in constant memory, for fleets that come as files or pipes.
 *
 * Each row answers as `{ "id", "state", "dueBy", "dueOn" }`, with `"unusable": [fields]` where a field holds no usable
 * value; a line that holds no JSON object answers `{ "line", "error" }`.
 *
 * @param options - streams, today, what counts as soon, how old a reading may be
 * @returns how many lines were judged and how they came out, once the output has taken everything
 */
export async function dueLines(options: DueLinesOptions): Promise<DueLinesSummary> {
  const { input, output, today, soon, staleAfter, onProgress } = options
  // Throws for a wrong option now, not in the middle of the stream.
  computeDueColumns(createDueColumns(0), today, { soon, staleAfter })
  const columns = createDueColumns(BATCH)
  const ids: string[] = []
  const refused = new Map<number, readonly string[]>()
  /** Answers that stand before the row of that place in the batch. */
  const errors: { readonly before: number; readonly text: string }[] = []
  const states: Record<DueState, number> = {
    overdue: 0,
    due: 0,
    'cannot tell': 0,
    'due soon': 0,
    'not due': 0,
  }
  let lines = 0
  let unreadable = 0
  let withUnusableFields = 0

  const judgeBatch = (): string => {
    const verdicts = computeDueColumns(columns, today, { soon, staleAfter })
    let text = ''
    let nextError = 0
    const flushErrors = (row: number): void => {
      for (
        let error = errors[nextError];
        error !== undefined && error.before <= row;
        error = errors[nextError]
      ) {
        text += error.text
        nextError += 1
      }
    }
    for (let row = 0; row < ids.length; row++) {
      if (errors.length > 0) flushErrors(row)
      const state = DUE_STATES[verdicts.state[row] ?? 2] ?? 'cannot tell'
      states[state] += 1
      text += `{"id":${ids[row]},"state":"${state}"`
      const dueBy = DUE_LIMITS[verdicts.dueBy[row] ?? 0]
      if (dueBy !== undefined) text += `,"dueBy":"${dueBy}"`
      const day = verdicts.dueDay[row] ?? NO_DAY
      if (dueBy !== undefined && day !== NO_DAY) text += `,"dueOn":"${dateOfDay(day)}"`
      const unusable = refused.get(row)
      text += unusable === undefined ? '}\n' : `,"unusable":${JSON.stringify(unusable)}}\n`
    }
    flushErrors(ids.length)
    ids.length = 0
    errors.length = 0
    refused.clear()
    onProgress?.(lines)
    return text
  }

  const takeLine = (line: string): void => {
    lines += 1
    let row: unknown
    try {
      row = JSON.parse(line)
    } catch {
      row = undefined
    }
    if (typeof row !== 'object' || row === null || Array.isArray(row)) {
      unreadable += 1
      errors.push({ before: ids.length, text: `{"line":${lines},"error":"not a JSON object"}\n` })
      return
    }
    const unusable = writeDueRow(columns, ids.length, row as DueRow)
    if (unusable.length > 0) {
      withUnusableFields += 1
      refused.set(ids.length, unusable)
    }
    const id = (row as DueRow).id
    ids.push(typeof id === 'string' || typeof id === 'number' ? JSON.stringify(id) : 'null')
  }

  const reader = createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY })
  await new Promise<void>((resolve, reject) => {
    let waiting = false
    let failed = false
    const fail = (error: unknown): void => {
      failed = true
      reader.close()
      reject(error)
    }
    const write = (text: string): void => {
      if (output.write(text) || waiting) return
      waiting = true
      reader.pause()
      output.once('drain', () => {
        waiting = false
        reader.resume()
      })
    }
    reader.on('line', (line) => {
      if (failed) return
      if (line.trim() === '') {
        lines += 1
        return
      }
      takeLine(line)
      if (ids.length === BATCH || errors.length === BATCH) write(judgeBatch())
    })
    // The reader passes on what its input reports.
    reader.once('error', fail)
    output.once('error', fail)
    reader.once('close', () => {
      if (failed) return
      // The callback tells when the sink has taken the last line.
      output.write(judgeBatch(), (error) => {
        if (!error) resolve()
      })
    })
  })
  return { lines, states, unreadable, withUnusableFields }
}
