import { once } from 'node:events'
import type { Readable, Writable } from 'node:stream'
import type { Finding } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import type { DueOptions, DueState } from '../interval/index.js'
import { type Catalogue, renderMessage } from '../message/index.js'
import { type OpenFault, openFaults, resolveParsedLog } from '../record/index.js'
import type { DocumentSet } from '../rules/index.js'
import { createLogReader } from '../schema/index.js'
import { createDueLister, judgeOilLoss, type OilLoss, type ServiceDue } from '../service/index.js'
import type { MachineLog, SheetReference, SpecSheet } from '../spec/index.js'
import { selectLosses } from './describeState.js'
import { MAX_LINE_LENGTH, readLineGroups, type TextLine } from './readLines.js'

export interface LogLinesOptions {
  /** JSON Lines: one machine log on each line; blank lines are skipped. */
  readonly input: Readable
  /** Receives one line of JSON for each log, in the same order. */
  readonly output: Writable
  readonly sheets: readonly SpecSheet[]
  readonly today: DateText
  /** The due options for one machine. */
  readonly chooseOptions: (log: MachineLog) => DueOptions
  /** Only this machine is judged. */
  readonly machine?: string
  /** The text of an answer, with its line ends; one line of JSON if absent. */
  readonly writeAnswer?: (answer: LineAnswer, place?: string) => string
  /** The language of the findings' messages. */
  readonly catalogue: Catalogue
  /** Called after each thousand lines, later after each ten thousand, and so on. */
  readonly onProgress?: (lines: number) => void
}

export interface LogLinesSummary {
  readonly lines: number
  /** Number of lines without a log that can be judged. */
  readonly refusedLines: number
  /** Number of machines that must not be used. */
  readonly machinesWithFaults: number
  readonly verdicts: ReadonlySet<DueState>
}

/** The answer to one line: a machine with its services, or the findings. */
export interface LineAnswer {
  readonly line: number
  readonly machine?: string
  readonly name?: string
  readonly due?: readonly ServiceDue[]
  /** A machine with an open fault must not be used. */
  readonly faults?: readonly OpenFault[]
  /** Gearcases to which oil was added since their last oil change. */
  readonly oilLoss?: readonly OilLoss[]
  readonly findings?: readonly (Finding & { readonly message: string })[]
}

const FIRST_PROGRESS = 1000

/**
 * Judges machine logs, one on each line, with one chunk of the stream in memory at a time. A line that cannot be read gives
 * its findings.
 */
export async function judgeLogLines(options: LogLinesOptions): Promise<LogLinesSummary> {
  const { input, output, onProgress, writeAnswer = (answer) => `${JSON.stringify(answer)}\n` } = options
  let lines = 0
  let refusedLines = 0
  let machinesWithFaults = 0
  const verdicts = new Set<DueState>()
  const judgeLine = createLineJudge(options)
  for await (const group of readLineGroups(input)) {
    let text = ''
    for (const textLine of group) {
      lines += 1
      const judged = judgeLine(textLine)
      if (lines >= FIRST_PROGRESS && lines % 10 ** Math.floor(Math.log10(lines)) === 0) onProgress?.(lines)
      if (judged === undefined) continue
      const { answer, place } = judged
      if (answer.due === undefined) refusedLines += 1
      else for (const { verdict } of answer.due) verdicts.add(verdict)
      if (answer.faults !== undefined) machinesWithFaults += 1
      text += writeAnswer(answer, place)
    }
    if (text !== '' && !output.write(text)) await once(output, 'drain')
  }
  return { lines, refusedLines, machinesWithFaults, verdicts }
}

type LineJudge = (line: TextLine) => JudgedLine | undefined

interface JudgedLine {
  readonly answer: LineAnswer
  /** Where the machine is kept. */
  readonly place?: string | undefined
}

/** What the logs of one sheet share is resolved once. */
function createLineJudge({ sheets, today, catalogue, chooseOptions, machine }: LogLinesOptions): LineJudge {
  const readLog = createLogReader()
  const listers = new Map<SpecSheet, ReturnType<typeof createDueLister>>()
  const getLister = (sheet: SpecSheet) => {
    const lister = listers.get(sheet) ?? createDueLister(sheet)
    listers.set(sheet, lister)
    return lister
  }
  const sheetByName = new Map<string, SpecSheet>()
  const nameSheet = ({ id, revision }: SheetReference) => `${id} ${revision}`
  // The first of two equal sheets counts, as in findSheet.
  for (const sheet of sheets.toReversed()) sheetByName.set(nameSheet(sheet), sheet)
  return ({ line, text, length }) => {
    const name = `line ${line}`
    if (text === undefined)
      return { answer: { line, findings: addMessages([makeTooLongFinding(name, length)], catalogue) } }
    const parsed = readLog(text, { name })
    if (!parsed.ok) return { answer: { line, findings: addMessages(parsed.findings, catalogue) } }
    const log = parsed.value
    if (machine !== undefined && log.id !== machine) return undefined
    const machineFields = { line, machine: log.id, name: log.name }
    const sheet = sheetByName.get(nameSheet(log.sheet))
    if (sheet === undefined)
      return {
        answer: {
          ...machineFields,
          findings: addMessages([...parsed.findings, makeNoSheetFinding(log, sheets, name)], catalogue),
        },
      }
    const due = getLister(sheet)(resolveParsedLog(log, sheet), today, chooseOptions(log))
    const faults = mayHaveFaults(log) ? openFaults({ document: log }, makeSet(sheet), { today }) : []
    const answer = {
      ...machineFields,
      due,
      ...(faults.length > 0 && { faults }),
      ...(mayLoseOil(log) && selectLosses(judgeOilLoss({ sheet, log, today }))),
      ...(parsed.findings.length > 0 && { findings: addMessages(parsed.findings, catalogue) }),
    }
    return { answer, place: log.place }
  }
}

const makeSet = (sheet: SpecSheet): DocumentSet => ({
  sheets: [{ document: sheet }],
  logs: [],
  toolboxes: [],
  stocks: [],
  procedures: [],
  records: [],
})

// Most logs have no such record, so most are not judged for faults and losses.

const mayHaveFaults = ({ records }: MachineLog): boolean =>
  records.some(({ detail, shields }) => detail === 'full' || shields !== undefined)

const mayLoseOil = ({ topUps, records }: MachineLog): boolean =>
  topUps !== undefined ||
  records.some(({ entries }) => entries.some(({ refilled }) => refilled !== undefined))

function addMessages(
  findings: readonly Finding[],
  catalogue: Catalogue,
): NonNullable<LineAnswer['findings']> {
  return findings.map((finding) => ({ ...finding, message: renderMessage(finding, catalogue) }))
}

function makeTooLongFinding(name: string, length: number): Finding {
  const params = { found: '', length, limit: MAX_LINE_LENGTH }
  return { code: 'spec/too-long', severity: 'error', document: { kind: 'text', name }, path: '', params }
}

function makeNoSheetFinding({ id, sheet }: MachineLog, sheets: readonly SpecSheet[], name: string): Finding {
  const given = sheets.map((known) => known.id).join(', ')
  const givenRevision = sheets.map(({ revision }) => revision).join(', ')
  const document = { kind: 'machine-log', id, name } as const
  const params = { required: sheet.id, revision: sheet.revision, given, givenRevision }
  return { code: 'service/wrong-sheet', severity: 'error', document, path: '/sheet', params }
}
