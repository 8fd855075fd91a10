import { isSameJson, refuse, splitPointer } from '../base/index.js'
import type { MachineLog, Parsed, ParseOptions, SpecCodes } from '../spec/index.js'
import { parseMachineLog } from './parseKinds.js'
import { readName } from './readDocument.js'
import { createMistakeReporter } from './reportMistake.js'
import { scanJsonText } from './scanJsonText.js'
import { HISTORY_LISTS } from './writeHistory.js'

/** The keys that identify a log. No line can change them. */
const FIXED_PATHS = ['/kind', '/version', '/id']

/**
 * Parses the history of one machine, lines of a file (JSON Lines) or rows of a table, as its log. The first
 * line is the log with empty lists. Each further line adds a reading, event, record, top-up or pause, or a
 * new fact. Such a line is a JSON Patch operation `add`; no line removes or changes a list item of an earlier
 * line.
 *
 * @param lines The lines in order; empty lines are skipped.
 * @param options `name`: the history's name in findings, such as a file name.
 * @returns The log, or all findings: those of `parseMachineLog`, with pointers into the log, and
 * `spec/history-line-unreadable`. If the last line is cut off, as after a power failure, it is skipped with the warning
 * `spec/history-cut-off`.
 * @throws TypeError if `lines` is not a list of strings, `options` is not an object or has an unknown key, or
 * `options.name` is not a string.
 *
 * Source: RFC 6902 (2013), section 4.1, for the lines. House rule for what a line may add.
 * @example
 * ```ts
 * import { parseHistory } from 'drivetrain-service/v1/spec'
 * const head = {
 *   kind: 'machine-log', version: '1.0', id: 'two', name: 'Two', sheet: { id: 'tind', revision: '1' }, identity: {},
 *   meters: { hours: { unit: 'h', readings: [] } }, records: [],
 * }
 * const reading = { op: 'add', path: '/meters/hours/readings/-', value: { date: '2031-03-02', value: 519.4 } }
 * // Which reading does this history have?
 * const read = parseHistory([JSON.stringify(head), JSON.stringify(reading)])
 * if (read.ok) console.log(read.value.meters.hours?.readings[0]?.value) // => 519.4
 * ```
 */
export function parseHistory(lines: Iterable<string>, options: ParseOptions = {}): Parsed<MachineLog> {
  const report = createMistakeReporter({ kind: 'machine-log', ...readName(options) })
  // A string would be read character by character.
  if (typeof lines === 'string' || typeof lines?.[Symbol.iterator] !== 'function')
    throw refuse('lines', lines, 'a list of strings')
  const numberedLines = [...lines].map((line, place) => {
    if (typeof line !== 'string') throw refuse(`lines[${place}]`, line, 'a string')
    return { line: line.replace(/^\uFEFF/, ''), number: place + 1 }
  })
  const [first, ...others] = numberedLines.filter(({ line }) => line.trim() !== '')
  if (first === undefined) return parseMachineLog(undefined, options)
  const findings: Parsed<MachineLog>['findings'][number][] = []
  const parseLine = ({ line, number }: typeof first): unknown => {
    const { syntaxError, repeatedKeys, tooDeep } = scanJsonText(line)
    if (syntaxError === undefined && repeatedKeys.length === 0 && tooDeep === undefined)
      return JSON.parse(line)
    const isCutOff = syntaxError?.offset === line.length && number === others.at(-1)?.number
    if (isCutOff)
      findings.push({ ...report('', 'spec/history-cut-off', { line: number }), severity: 'warning' })
    else {
      const problem =
        syntaxError === undefined ? (repeatedKeys.length > 0 ? 'repeated-key' : 'too-deep') : 'not-json'
      findings.push(report('', 'spec/history-line-unreadable', { line: number, problem }))
    }
    return undefined
  }
  const log = parseLine(first)
  for (const addition of others) {
    const operation = parseLine(addition)
    if (operation === undefined) continue
    const problem = applyLine(log, operation)
    if (problem !== undefined)
      findings.push(report('', 'spec/history-line-unreadable', { line: addition.number, problem }))
  }
  const parsed = parseMachineLog(log, options)
  const allFindings = [...findings, ...parsed.findings]
  return parsed.ok && findings.every(({ severity }) => severity !== 'error')
    ? { ...parsed, findings: allFindings }
    : { ok: false, findings: allFindings }
}

type LineProblem = SpecCodes['spec/history-line-unreadable']['problem']

/** Applies a line to the log; or returns the problem. */
function applyLine(log: unknown, operation: unknown): LineProblem | undefined {
  if (!isObject(operation) || !isSameJson(Object.keys(operation).sort(), ['op', 'path', 'value']))
    return 'not-an-addition'
  const { op, path, value } = operation
  if (op !== 'add' || typeof path !== 'string') return 'not-an-addition'
  const tokens = splitPointer(path) ?? []
  const last = tokens.at(-1)
  if (last === undefined || last === '__proto__' || FIXED_PATHS.includes(path)) return 'no-such-place'
  let at: unknown = log
  for (const [depth, token] of tokens.slice(0, -1).entries()) {
    if (!isObject(at)) return 'no-such-place'
    // A log may start without top-ups or pauses.
    if (!Object.hasOwn(at, token) && depth === tokens.length - 2 && HISTORY_LISTS.includes(path.slice(0, -2)))
      at[token] = []
    at = Object.hasOwn(at, token) ? at[token] : undefined
  }
  if (Array.isArray(at)) {
    if (last !== '-') return 'not-at-the-end'
    at.push(value)
    return undefined
  }
  if (!isObject(at)) return 'no-such-place'
  if (Object.hasOwn(at, last) && typeof at[last] === 'object') return 'replaces-a-part'
  at[last] = value
  return undefined
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
