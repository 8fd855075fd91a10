import type { Readable, Writable } from 'node:stream'
import { wrapText } from '../../card/index.js'
import { DUE_STATES, type DueState } from '../../interval/index.js'
import { explain } from '../../message/index.js'
import { listOpenSamples, type OpenSample, openFaults } from '../../record/index.js'
import { judgeOilLoss, listDue, type ServiceDue } from '../../service/index.js'
import { listBriefDue, writeBriefHead, writeBriefLines, writeBriefRows } from '../briefDue.js'
import { chooseDueOptions, listMachines } from '../chooseMachine.js'
import { cleanLine } from '../cleanLine.js'
import {
  type CommandIo,
  type ExitCode,
  INPUT_NAME,
  makeReadError,
  requireReadable,
  UsageError,
} from '../cliIo.js'
import { describeFaults, describeLosses, describeSamples, selectLosses } from '../describeState.js'
import { createDueSummary } from '../dueSummary.js'
import { STANDARD_INPUT } from '../findFiles.js'
import { judgeLogLines, type LineAnswer, type LogLinesOptions } from '../judgeLogLines.js'
import { judgeRowLines } from '../judgeRowLines.js'
import { isHistoryPath, listDocuments, readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { reportReadErrors } from '../renderFindings.js'

/** A JSON Lines file or standard input. */
const JSON_LINES_PATH = /(^-|\.(jsonl|ndjson))$/i

/** `due`: prints every service of every machine with its verdict and reasons. */
export async function runDue(options: Options, io: CommandIo): Promise<ExitCode> {
  const linePaths = options.paths.filter((path) => JSON_LINES_PATH.test(path) && !isHistoryPath(path))
  if (options.sheets.length > 0 || linePaths.length > 0) return judgeLines(options, linePaths, io)
  if (options.paths.length === 0) throw new UsageError('nameLogsOrRows')
  const sets = await readDocuments(options.paths, io)
  if (reportReadErrors(sets, io)) return 1
  const { today } = options
  const logs = listMachines(sets, options)
  const machines = logs.map(({ log, sheet, fileSet }) => ({
    machine: log.id,
    name: log.name,
    faults: openFaults({ document: log }, fileSet.set, { today }),
    due: listDue({ sheet, log, today }, chooseDueOptions(options, log)),
    ...selectLosses(judgeOilLoss({ sheet, log, today })),
    ...selectSamples(listOpenSamples(log)),
  }))
  if (options.format === 'summary') {
    const summary = createDueSummary(today)
    for (const [index, { log }] of logs.entries()) {
      const { due = [], faults = [] } = machines[index] ?? {}
      summary.add(log.place, due, faults.length)
    }
    io.print(summary.write().trimEnd())
  } else if (options.brief || options.format === 'csv') {
    const rows = machines.flatMap(({ machine, due, faults }) => listBriefDue(machine, due, faults.length))
    const text = options.format === 'csv' ? writeBriefHead() + writeBriefRows(rows) : writeBriefLines(rows)
    if (text !== '') io.print(text.trimEnd())
  } else if (options.format === 'json') io.print(JSON.stringify({ today, machines }, null, 2))
  else if (machines.length > 1 && options.full !== true)
    io.print(
      listByUrgency(machines, io)
        .flatMap((line) => fitLine(line, io))
        .join('\n'),
    )
  else
    for (const { name, faults, due, oilLoss = [], samples = [] } of machines) {
      const notices = [
        ...describeFaults(faults, io),
        ...describeLosses(oilLoss, io),
        ...describeSamples(samples, io),
      ].map((line) => `  ${line}`)
      const lines = [cleanLine(name), ...notices, ...due.flatMap((service) => describeService(service, io))]
      io.print(`${lines.flatMap((line) => fitLine(line, io)).join('\n')}\n`)
    }
  const verdicts = new Set(machines.flatMap(({ due }) => due.map(({ verdict }) => verdict)))
  return chooseExitCode(
    verdicts,
    options,
    machines.some(({ faults }) => faults.length > 0),
  )
}

const selectSamples = (samples: readonly OpenSample[]) => (samples.length === 0 ? {} : { samples })

/**
 * 3 if a service is due or a machine must not be used; 4 if a service cannot be judged or the input has no
 * service.
 */
function chooseExitCode(verdicts: ReadonlySet<DueState>, { exitCode }: Options, hasFaults = false): ExitCode {
  if (exitCode !== true) return 0
  if (hasFaults || verdicts.has('overdue') || verdicts.has('due')) return 3
  return verdicts.has('cannot tell') || verdicts.size === 0 ? 4 : 0
}

interface MachineDue {
  readonly name: string
  readonly faults: readonly unknown[]
  readonly due: readonly ServiceDue[]
}

/** Wraps a line for a terminal, but not for a pipe. */
function fitLine(line: string, { columns }: CommandIo): string[] {
  if (columns === undefined) return [line]
  const indent = / */.exec(line)?.[0] ?? ''
  return wrapText(line.trimStart(), columns, indent, `${indent}  `)
}

/** One line per machine, most urgent first: machines that must not be used, then by verdict and date. */
function listByUrgency(machines: readonly MachineDue[], { words }: CommandIo): string[] {
  const { reports, dueStates } = words
  const rankService = ({ verdict, dueOn = '9999' }: ServiceDue) => `${DUE_STATES.indexOf(verdict)} ${dueOn}`
  const compareText = (candidate: string, other: string) =>
    candidate < other ? -1 : candidate > other ? 1 : 0
  const rows = machines.map(({ name, faults, due }) => {
    const [first, ...others] = [...due].sort((item, other) =>
      compareText(rankService(item), rankService(other)),
    )
    const state =
      faults.length > 0 ? reports.notToBeUsed : first ? dueStates[first.verdict] : reports.noService
    const gearcase = [first?.part.gearcase, first?.part.instance?.name].filter(Boolean).join(', ')
    const date = first?.dueOn === undefined ? '' : `, ${first.dueOn}`
    const label = cleanLine(name)
    const value = first && cleanLine(`${first.serviceName}, ${gearcase}${date}`)
    const text = value === undefined ? label : reports.labelled({ label, value })
    const more = others.filter(({ verdict }) => verdict === 'overdue' || verdict === 'due').length
    const rank = `${faults.length > 0 ? 0 : 1} ${first === undefined ? '9' : rankService(first)} ${name}`
    return {
      rank,
      text: `${state.toUpperCase()} · ${text}${more > 0 ? ` ${reports.moreDue({ count: more })}` : ''}`,
    }
  })
  const sorted = rows.sort((row, other) => compareText(row.rank, other.rank))
  return sorted.map(({ text }) => text)
}

function describeService(line: ServiceDue, { words, catalogue }: CommandIo): string[] {
  const gearcaseText = [line.part.gearcase, line.part.instance?.name].filter(Boolean).join(', ')
  const reasons = explain({ reasons: line.reasons }, catalogue).map((text) => `    ${text}`)
  const heading = `  ${words.dueStates[line.verdict].toUpperCase()}  ${cleanLine(`${line.serviceName}, ${gearcaseText}`)}`
  return [heading, ...reasons]
}

interface AnswerText extends Pick<LogLinesOptions, 'writeAnswer'> {
  /** The text after the last line. */
  readonly end?: () => string
}

/** The share of a file that is read, if its size is known. */
function describeShare(input: Readable, size: number | undefined): string {
  const bytesRead = 'bytesRead' in input ? Number(input.bytesRead) : undefined
  return bytesRead === undefined || !size ? '' : `${Math.floor((100 * bytesRead) / size)} %`
}

/**
 * How the answer to a line is written: whole, its services in short, or only counted. Findings of a table go to standard
 * error.
 */
function chooseAnswerText({ brief, format, today }: Options, io: CommandIo, output: Writable): AnswerText {
  const isTable = format === 'csv'
  const printFindings = ({ line, findings = [] }: LineAnswer): void => {
    for (const { message } of findings) io.printError(cleanLine(io.words.reports.line({ line, message })))
  }
  if (format === 'summary') {
    const summary = createDueSummary(today)
    return {
      writeAnswer: (answer, place) => {
        printFindings(answer)
        const { due, faults = [] } = answer
        if (due !== undefined) summary.add(place, due, faults.length)
        return ''
      },
      end: summary.write,
    }
  }
  if (!brief && !isTable) return {}
  if (isTable) output.write(writeBriefHead())
  const writeRows = isTable ? writeBriefRows : writeBriefLines
  return {
    writeAnswer: (answer) => {
      const { line, machine, due = [], faults, findings = [] } = answer
      const rows = writeRows(listBriefDue(machine ?? '', due, faults?.length))
      if (findings.length === 0) return rows
      if (!isTable) return `${rows}${JSON.stringify({ line, machine, findings })}\n`
      printFindings(answer)
      return rows
    },
  }
}

/** Judges JSON Lines: machine logs if there is a sheet, else flat rows with their limits. */
async function judgeLines(options: Options, linePaths: readonly string[], io: CommandIo): Promise<ExitCode> {
  const sheetPaths = [...options.sheets, ...options.paths.filter((path) => !JSON_LINES_PATH.test(path))]
  const path = linePaths[0] === '-' ? undefined : linePaths[0]
  if (linePaths.length > 1) throw new UsageError('oneLinesFile', { count: linePaths.length })
  if (path === undefined && sheetPaths.includes(STANDARD_INPUT)) throw new UsageError('inputTwice')
  const sets = sheetPaths.length === 0 ? [] : await readDocuments(sheetPaths, io)
  if (reportReadErrors(sets, io)) return 1
  const sheets = listDocuments(sets, (set) => set.sheets)
  if (sheetPaths.length > 0 && sheets.length === 0) throw new UsageError('noSheet', { command: 'due' })
  const input = await requireReadable(path ?? INPUT_NAME, io.openInput(path))
  const output = io.openOutput()
  const { today } = options
  const { reports } = io.words
  try {
    if (sheets.length === 0) {
      if (options.brief || options.format === 'csv' || options.format === 'summary')
        throw new UsageError('rowsAreShort')
      const { soon, staleAfter } = options.due
      const summary = await judgeRowLines({ input, output, today, soon, staleAfter, catalogue: io.catalogue })
      const errorCount = summary.unreadableLines + summary.rowsWithUnusableFields
      io.printError(reports.linesRead({ lines: summary.lines, errors: errorCount }))
      if (summary.unreadColumns.length > 0)
        io.printError(cleanLine(reports.columnsNotRead({ columns: summary.unreadColumns.join(', ') })))
      const verdicts = DUE_STATES.filter((dueState) => summary.countByState[dueState] > 0)
      return errorCount > 0 ? 1 : chooseExitCode(new Set(verdicts), options)
    }
    const size = path === undefined ? undefined : await io.sizeOf(path)
    const answerText = chooseAnswerText(options, io, output)
    const summary = await judgeLogLines({
      input,
      output,
      sheets,
      today,
      catalogue: io.catalogue,
      chooseOptions: (log) => chooseDueOptions(options, log),
      ...(options.machine === undefined ? {} : { machine: options.machine }),
      ...answerText,
      onProgress: (count) =>
        io.printError(reports.progress({ lines: count, share: describeShare(input, size) })),
    })
    if (answerText.end !== undefined) output.write(answerText.end())
    io.printError(reports.linesRead({ lines: summary.lines, errors: summary.refusedLines }))
    return summary.refusedLines > 0
      ? 1
      : chooseExitCode(summary.verdicts, options, summary.machinesWithFaults > 0)
  } catch (error) {
    if (error instanceof Error && 'code' in error && 'syscall' in error)
      throw makeReadError(path ?? INPUT_NAME, error)
    throw error
  }
}
