import { isMap, isSeq, parseDocument, stringify } from 'yaml'
import type { Finding } from '../base/index.js'
import { checkDocuments, type DocumentSet } from '../rules/index.js'
import { writeHistory } from '../schema/index.js'
import type { MachineLog, MeterName } from '../spec/index.js'
import { UsageError, type WordIo } from './cliIo.js'
import { isHistoryPath, listDocuments, readDocuments } from './readDocuments.js'
import type { Options } from './readOptions.js'
import { writeOut } from './writeOut.js'

/**
 * Writes an extended log to a path. An existing file must be this log; `extend` gets its current version,
 * since another program may have extended it meanwhile. `extend` returns undefined if there is nothing to
 * write.
 */
export async function saveLog(
  path: string,
  logAsRead: MachineLog,
  extend: (log: MachineLog) => MachineLog | undefined,
  io: WordIo,
): Promise<MachineLog | undefined> {
  let saved: MachineLog | undefined
  const makeText = async (old: string | undefined): Promise<string | undefined> => {
    const before =
      old === undefined || old.trim() === '' ? logAsRead : await readLog(path, old, logAsRead, io)
    saved = extend(before)
    if (saved === undefined) return undefined
    if (isHistoryPath(path))
      return before === logAsRead
        ? `${writeHistory(saved).join('\n')}\n`
        : addToHistory(old ?? '', before, saved)
    if (!/\.ya?ml$/i.test(path)) return `${JSON.stringify(saved, null, 2)}\n`
    return before === logAsRead ? stringify(saved, { lineWidth: 0 }) : editYaml(old ?? '', before, saved)
  }
  await writeOut(path, makeText, io)
  return saved
}

/** The log in the text of a file; it must have every entry of the log as read. */
async function readLog(path: string, text: string, logAsRead: MachineLog, io: WordIo): Promise<MachineLog> {
  const sets = await readDocuments([path], { ...io, readText: async () => text, kindOf: async () => 'file' })
  const [log] = listDocuments(sets, ({ logs }) => logs)
  if (log === undefined || log.id !== logAsRead.id)
    throw new UsageError('notThisLog', { path, id: logAsRead.id })
  requireSameParts(path, logAsRead, log)
  return log
}

/** Throws if a record, top-up or reading is missing from another copy of the log. */
function requireSameParts(path: string, from: MachineLog, copy: MachineLog): void {
  const ids = new Set(copy.records.map(({ id }) => id))
  const record = from.records.find(({ id }) => !ids.has(id))
  if (record !== undefined) throw new UsageError('copyWithoutRecord', { path, id: record.id })
  const topUps = new Set(copy.topUps?.map((copiedTopUp) => JSON.stringify(copiedTopUp)))
  const topUp = from.topUps?.find((originalTopUp) => !topUps.has(JSON.stringify(originalTopUp)))
  if (topUp !== undefined) throw new UsageError('copyWithoutTopUp', { path, date: topUp.date })
  const readings = ({ meters }: MachineLog, name: MeterName) => meters[name]?.readings ?? []
  for (const name of ['hours', 'distance'] as const) {
    const days = new Set(readings(copy, name).map(({ date }) => date))
    const reading = readings(from, name).find(({ date }) => !days.has(date))
    if (reading !== undefined) throw new UsageError('copyWithoutReading', { path, date: reading.date })
  }
}

/** Adds the new entries of a log to its history, one line each, and deletes an incomplete last line. */
function addToHistory(text: string, before: MachineLog, after: MachineLog): string {
  const lines = text.split('\n').filter((line) => line.trim() !== '')
  if (!isCompleteLine(lines.at(-1))) lines.pop()
  const knownLines = new Set(writeHistory(before))
  // The first line has an empty list for each list of the log; the file keeps its own first line.
  const [, ...additions] = writeHistory(after)
  return [...lines, ...additions.filter((line) => !knownLines.has(line)), ''].join('\n')
}

function isCompleteLine(line = '{}'): boolean {
  try {
    JSON.parse(line)
    return true
  } catch {
    return false
  }
}

/** Applies the changes between two documents to the YAML text of the first; comments and order are kept. */
function editYaml(text: string, before: object, after: object): string {
  const document = parseDocument(text)
  const editNode = (path: readonly (string | number)[], from: unknown, to: unknown): void => {
    if (JSON.stringify(from) === JSON.stringify(to)) return
    const node = path.length === 0 ? document.contents : document.getIn(path)
    if (isMap(node) && isObject(from) && isObject(to)) {
      for (const key of Object.keys(from)) if (!Object.hasOwn(to, key)) document.deleteIn([...path, key])
      for (const [key, value] of Object.entries(to)) editNode([...path, key], from[key], value)
    } else if (isSeq(node) && Array.isArray(from) && Array.isArray(to) && isPrefix(from, to)) {
      if (from.length === 0) node.flow = false
      for (const item of to.slice(from.length)) document.addIn(path, document.createNode(item))
    } else document.setIn(path, document.createNode(to))
  }
  editNode([], before, after)
  return document.toString({ lineWidth: 0 })
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function isPrefix(from: readonly unknown[], to: readonly unknown[]): boolean {
  return from.every((item, index) => JSON.stringify(item) === JSON.stringify(to[index]))
}

/** Findings caused by new entries of a log; the set has the log before the change. */
export function findNewMistakes(
  before: DocumentSet,
  after: MachineLog,
  { today }: Pick<Options, 'today'>,
): readonly Finding[] {
  const logs = before.logs.map((named) =>
    named.document.id === after.id ? { ...named, document: after } : named,
  )
  const makeKey = ({ code, params }: Finding) => `${code} ${JSON.stringify(params)}`
  const known = new Set(checkDocuments(before, { today }).map(makeKey))
  return checkDocuments({ ...before, logs }, { today }).filter((finding) => !known.has(makeKey(finding)))
}
