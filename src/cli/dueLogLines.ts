import { once } from 'node:events'
import type { Readable, Writable } from 'node:stream'
import type { Finding } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import type { DueOptions, DueState } from '../interval/index.js'
import { en } from '../message/en/index.js'
import { renderMessage } from '../message/index.js'
import { type OpenFault, openFaults } from '../record/index.js'
import { parseDocumentText } from '../schema/index.js'
import { judgeOilLoss, listDue, type OilLoss, type ServiceDue } from '../service/index.js'
import type { MachineLog, SpecSheet } from '../spec/index.js'
import { findSheet } from './readDocuments.js'
import { MAX_LINE_LENGTH, readLines, type TextLine } from './readLines.js'
import { withLosses } from './withLosses.js'

export interface DueLogLinesOptions {
  /** JSON Lines: one machine log on each line; blank lines are skipped. */
  readonly input: Readable
  /** Gets one line of JSON for each log, in the same order. */
  readonly output: Writable
  readonly sheets: readonly SpecSheet[]
  readonly today: DateText
  /** The options that decide what is due for one machine. */
  readonly chooseOptions: (log: MachineLog) => DueOptions
  /** Only this machine is judged. */
  readonly machine?: string
  /** Called after every thousand lines. */
  readonly onProgress?: (lines: number) => void
}

export interface DueLogLinesSummary {
  readonly lines: number
  /** Number of lines without a log that can be judged. */
  readonly refused: number
  /** Number of machines that are not to be used. */
  readonly withFaults: number
  readonly verdicts: ReadonlySet<DueState>
}

/** The answer to one line: a machine with its services, or the findings. */
export interface DueAnswer {
  readonly line: number
  readonly machine?: string
  readonly name?: string
  readonly due?: readonly ServiceDue[]
  /** While the machine has one, it is not to be used. */
  readonly faults?: readonly OpenFault[]
  /** The gearcases to which oil was added since their last change. */
  readonly oilLoss?: readonly OilLoss[]
  readonly findings?: readonly (Finding & { readonly message: string })[]
}

const PROGRESS = 1000

/**
 * Judges machine logs, one on each line, with one log in memory at a time. A line that cannot be read gives its findings.
 */
export async function dueLogLines(options: DueLogLinesOptions): Promise<DueLogLinesSummary> {
  const { input, output, onProgress } = options
  let lines = 0
  let refused = 0
  let withFaults = 0
  const verdicts = new Set<DueState>()
  for await (const one of readLines(input)) {
    lines += 1
    const answer = judgeLine(one, options)
    if (lines % PROGRESS === 0) onProgress?.(lines)
    if (answer === undefined) continue
    if (answer.due === undefined) refused += 1
    else for (const { verdict } of answer.due) verdicts.add(verdict)
    if (answer.faults !== undefined) withFaults += 1
    if (!output.write(`${JSON.stringify(answer)}\n`)) await once(output, 'drain')
  }
  return { lines, refused, withFaults, verdicts }
}

function judgeLine({ line, text, length }: TextLine, options: DueLogLinesOptions): DueAnswer | undefined {
  const { sheets, today, chooseOptions, machine } = options
  const name = `line ${line}`
  if (text === undefined) return { line, findings: withTexts([tooLong(name, length)]) }
  const read = parseDocumentText('machine-log', text, { name })
  if (!read.ok) return { line, findings: withTexts(read.findings) }
  const log = read.value
  if (machine !== undefined && log.id !== machine) return undefined
  const about = { line, machine: log.id, name: log.name }
  const sheet = findSheet(sheets, log.sheet)
  if (sheet === undefined)
    return { ...about, findings: withTexts([...read.findings, noSheet(log, sheets, name)]) }
  const due = listDue({ sheet, log, today }, chooseOptions(log))
  const set = {
    sheets: [{ document: sheet }],
    logs: [],
    toolboxes: [],
    stocks: [],
    procedures: [],
    records: [],
  }
  const faults = openFaults({ document: log }, set, { today })
  return {
    ...about,
    due,
    ...(faults.length > 0 && { faults }),
    ...withLosses(judgeOilLoss({ sheet, log, today })),
    ...(read.findings.length === 0 ? {} : { findings: withTexts(read.findings) }),
  }
}

function withTexts(findings: readonly Finding[]): NonNullable<DueAnswer['findings']> {
  return findings.map((finding) => ({ ...finding, message: renderMessage(finding, en) }))
}

function tooLong(name: string, length: number): Finding {
  const params = { found: '', length, limit: MAX_LINE_LENGTH }
  return { code: 'spec/too-long', severity: 'error', document: { kind: 'text', name }, path: '', params }
}

function noSheet({ id, sheet }: MachineLog, sheets: readonly SpecSheet[], name: string): Finding {
  const given = sheets.map((one) => one.id).join(', ')
  const givenRevision = sheets.map(({ revision }) => revision).join(', ')
  const document = { kind: 'machine-log', id, name } as const
  const params = { required: sheet.id, revision: sheet.revision, given, givenRevision }
  return { code: 'service/wrong-sheet', severity: 'error', document, path: '/sheet', params }
}
