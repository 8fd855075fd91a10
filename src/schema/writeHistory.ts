import { type JsonPointer, readPointer } from '../base/index.js'
import { type MachineLog, requireDocument } from '../spec/index.js'
import { copyPlainData } from './copyPlainData.js'
import { createMistakeReporter } from './reportMistake.js'

/**
 * Writes a log as the lines of a history, for an append-only file (JSON Lines) or a table with one row for
 * each line. To add a record later, append one line: `{"op":"add","path":"/records/-","value":{…}}`. To read
 * the lines, use {@link parseHistory}.
 *
 * @param log The log; it is not changed.
 * @returns One string for each line, without line ends: the log with empty lists, then readings, events,
 * records, top-ups and pauses, each list in its own order.
 * @throws TypeError if `log` was not parsed.
 *
 * Source: RFC 6902 (2013), section 4.1, for the lines.
 * @example
 * ```ts
 * import { writeHistory } from 'drivetrain-service/v1/spec'
 * const log = {
 *   kind: 'machine-log', version: '1.0', id: 'two', name: 'Two', sheet: { id: 'tind', revision: '1' }, identity: {},
 *   meters: { hours: { unit: 'h', readings: [{ date: '2031-03-02', value: 519.4 }] } }, records: [],
 * } as const
 * // What is the line of its reading?
 * writeHistory(log)[1] // => '{"op":"add","path":"/meters/hours/readings/-","value":{"date":"2031-03-02","value":519.4}}'
 * ```
 */
export function writeHistory(log: MachineLog): readonly string[] {
  requireDocument('log', log, 'machine-log')
  const { value: head, findings } = copyPlainData(log, createMistakeReporter({ kind: 'machine-log' }))
  if (findings[0]) throw new TypeError(`log${findings[0].path} must be plain data; parse the document first`)
  const additions = HISTORY_LISTS.flatMap((list) => {
    const items = readPointer(head, list)
    if (!Array.isArray(items)) return []
    const removedItems = items.splice(0)
    return removedItems.map((value: unknown) => JSON.stringify({ op: 'add', path: `${list}/-`, value }))
  })
  return [JSON.stringify(head), ...additions]
}

/** The growing lists of a log: each line of a history adds one item to one list. */
export const HISTORY_LISTS: readonly JsonPointer[] = [
  '/meters/hours/readings',
  '/meters/distance/readings',
  '/events',
  '/records',
  '/topUps',
  '/pauses',
]
