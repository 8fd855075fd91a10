import { DUE_STATES, type DueState } from '../../interval/index.js'
import { en } from '../../message/en/index.js'
import { explain } from '../../message/index.js'
import { type OpenSample, openFaults, openSamples } from '../../record/index.js'
import { judgeOilLoss, listDue, type ServiceDue } from '../../service/index.js'
import { chooseDueOptions, listMachines } from '../chooseMachine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { dueLines } from '../dueLines.js'
import { dueLogLines } from '../dueLogLines.js'
import { faultLines, sampleLines } from '../faultLines.js'
import { STANDARD_INPUT } from '../findFiles.js'
import { isHistory } from '../isHistory.js'
import { lossLines } from '../lossLines.js'
import { plural } from '../plural.js'
import { documentsOf, readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { reportReading } from '../renderFindings.js'
import { safeLine } from '../safeLine.js'
import { failAsUnreadable, unreadable } from '../unreadable.js'
import { withLosses } from '../withLosses.js'

/** Matches a file of JSON Lines, or standard input. */
const LINES = /(^-|\.(jsonl|ndjson))$/i

/** `due`: prints every service of every machine, with its verdict and the reasons. */
export async function runDue(options: Options, io: CliIo): Promise<ExitCode> {
  const lines = options.paths.filter((path) => LINES.test(path) && !isHistory(path))
  if (options.sheets.length > 0 || lines.length > 0) return judgeLines(options, lines, io)
  if (options.paths.length === 0)
    throw new UsageError('due: name logs and their sheets, a folder of them, or - for rows by standard input')
  const sets = await readDocuments(options.paths, io)
  if (reportReading(sets, io)) return 1
  const { today } = options
  const machines = listMachines(sets, options).map(({ log, sheet, read }) => ({
    machine: log.id,
    name: log.name,
    faults: openFaults({ document: log }, read.set, { today }),
    due: listDue({ sheet, log, today }, chooseDueOptions(options, log)),
    ...withLosses(judgeOilLoss({ sheet, log, today })),
    ...withSamples(openSamples(log)),
  }))
  if (options.format === 'json') io.print(JSON.stringify({ today, machines }, null, 2))
  else
    for (const { name, faults, due, oilLoss = [], samples = [] } of machines) {
      const before = [...faultLines(faults), ...lossLines(oilLoss), ...sampleLines(samples)].map(
        (line) => `  ${line}`,
      )
      const lines = [safeLine(name), ...before, ...due.map(describe)]
      io.print(`${lines.join('\n')}\n`)
    }
  const verdicts = new Set(machines.flatMap(({ due }) => due.map(({ verdict }) => verdict)))
  return exitCodeOf(
    verdicts,
    options,
    machines.some(({ faults }) => faults.length > 0),
  )
}

const withSamples = (samples: readonly OpenSample[]) => (samples.length === 0 ? {} : { samples })

/** 3 if a service is due or a machine not to be used; 4 if a service cannot be judged, or if the input has no service. */
function exitCodeOf(verdicts: ReadonlySet<DueState>, { exitCode }: Options, hasFaults = false): ExitCode {
  if (exitCode !== true) return 0
  if (hasFaults || verdicts.has('overdue') || verdicts.has('due')) return 3
  return verdicts.has('cannot tell') || verdicts.size === 0 ? 4 : 0
}

function describe(line: ServiceDue): string {
  const where = [line.part.gearcase, line.part.instance?.name].filter(Boolean).join(', ')
  const reasons = explain({ reasons: line.reasons }, en).map((text) => `    ${text}`)
  const head = `  ${line.verdict.toUpperCase()}  ${safeLine(`${line.serviceName}, ${where}`)}`
  return [head, ...reasons].join('\n')
}

/** Judges JSON Lines: machine logs if there are sheets, else flat rows with their limits. */
async function judgeLines(options: Options, lines: readonly string[], io: CliIo): Promise<ExitCode> {
  const others = [...options.sheets, ...options.paths.filter((path) => !LINES.test(path))]
  const path = lines[0] === '-' ? undefined : lines[0]
  if (lines.length > 1) throw new UsageError(`due: expected one .jsonl file or -, found ${lines.length}`)
  if (path === undefined && others.includes(STANDARD_INPUT))
    throw new UsageError('due: the lines and a sheet cannot both come by standard input')
  const sets = others.length === 0 ? [] : await readDocuments(others, io)
  if (reportReading(sets, io)) return 1
  const sheets = documentsOf(sets, (set) => set.sheets)
  if (others.length > 0 && sheets.length === 0) throw new UsageError('due: no sheet among the files')
  const input = await failAsUnreadable(path ?? 'standard input', io.openInput(path))
  const output = io.openOutput()
  const { today } = options
  try {
    if (sheets.length === 0) {
      const { soon, staleAfter } = options.due
      const judged = await dueLines({ input, output, today, soon, staleAfter })
      const withErrors = judged.unreadable + judged.withUnusableFields
      io.printError(`${plural(judged.lines, 'line')}, ${withErrors} with errors.`)
      if (judged.columnsNotRead.length > 0)
        io.printError(safeLine(`Columns not read: ${judged.columnsNotRead.join(', ')}.`))
      const verdicts = DUE_STATES.filter((state) => judged.states[state] > 0)
      return withErrors > 0 ? 1 : exitCodeOf(new Set(verdicts), options)
    }
    const judged = await dueLogLines({
      input,
      output,
      sheets,
      today,
      chooseOptions: (log) => chooseDueOptions(options, log),
      ...(options.machine === undefined ? {} : { machine: options.machine }),
      onProgress: (count) => io.printError(`${count} lines`),
    })
    io.printError(`${plural(judged.lines, 'line')}, ${judged.refused} with errors.`)
    return judged.refused > 0 ? 1 : exitCodeOf(judged.verdicts, options, judged.withFaults > 0)
  } catch (error) {
    if (error instanceof Error && 'code' in error && 'syscall' in error)
      throw unreadable(path ?? 'standard input', error)
    throw error
  }
}
