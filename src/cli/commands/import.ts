import type { Finding } from '../../base/index.js'
import { type ImportedMachine, importReadings } from '../../exchange/index.js'
import type { MachineLog } from '../../spec/index.js'
import { type AddedReadings, addReadings } from '../addReadings.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import type { ReportTexts } from '../message/reportTexts.js'
import { readDocuments, readWholeText } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { chooseExitCode, locateFindings, renderFindings } from '../renderFindings.js'
import { findNewMistakes, saveLog } from '../saveLog.js'

/** `import`: adds readings from telematics files or tables to a log, or to the logs of a fleet. */
export async function runImport(options: Options, io: CommandIo): Promise<ExitCode> {
  const { importFleet, isFleetImport } = await import('../importFleet.js')
  if (await isFleetImport(options.paths, io)) return importFleet(options, io)
  const [telematicsPath, logPath] = options.paths
  if (telematicsPath === undefined || logPath === undefined || options.paths.length > 2)
    throw new UsageError('nameTelematics')
  const { reports } = io.words
  const report = options.format === 'text' ? io.print : io.printError
  const sets = await readDocuments([logPath], io)
  const readFindings = sets.flatMap(({ findings }) => findings)
  const [log] = sets.flatMap(({ set }) => set.logs)
  const imported = importReadings(await readJson(telematicsPath, io), { edition: options.telematics })
  const importFindings = imported.findings.map((finding) => ({
    ...finding,
    document: { ...finding.document, name: telematicsPath },
  }))
  const refuse = (findings: readonly Finding[]): ExitCode => {
    io.print(renderFindings(locateFindings(findings, sets, io), options.format, io))
    report(io.words.reports.nothingWritten)
    return 1
  }
  if (!imported.ok || readFindings.some(isError)) return refuse([...importFindings, ...readFindings])
  if (log === undefined) throw new UsageError('notALog', { path: logPath })
  const machine = chooseEquipment(imported.value.machines, log.document, options, reports)
  const added = addReadings(log.document, machine)
  // The sheet is not needed: only readings are new.
  const makeLogSet = (document: MachineLog) => ({ ...EMPTY_SET, logs: [{ name: logPath, document }] })
  const newMistakes = findNewMistakes(makeLogSet(log.document), added.log, options)
  if (newMistakes.some(isError)) return refuse([...importFindings, ...newMistakes])
  const findings = locateFindings([...importFindings, ...readFindings, ...newMistakes], sets, io)
  if (findings.length > 0 || options.format !== 'text') io.print(renderFindings(findings, options.format, io))
  for (const line of describeAddedReadings(added, reports)) report(line)
  if (options.out === undefined) report(reports.nameLogFile)
  else {
    const extend = (current: MachineLog): MachineLog | undefined => {
      const extended = addReadings(current, machine).log
      const hasErrors = findNewMistakes(makeLogSet(current), extended, options).some(isError)
      return hasErrors ? undefined : extended
    }
    if ((await saveLog(options.out, log.document, extend, io)) === undefined) {
      report(reports.logChanged)
      return 1
    }
    report(io.words.reports.written({ path: options.out }))
  }
  return chooseExitCode(findings, options.level)
}

const EMPTY_SET = { sheets: [], toolboxes: [], stocks: [], procedures: [], records: [] }

const isError = ({ severity }: Finding): boolean => severity === 'error'

async function readJson(path: string, io: CommandIo): Promise<unknown> {
  const text = await readWholeText(path, io)
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch {
    throw new UsageError('notJson', { path })
  }
}

/**
 * The machine with the number from `--equipment`, else with the log's serial number, else the only one if it
 * has no number.
 */
function chooseEquipment(
  machines: readonly ImportedMachine[],
  log: MachineLog,
  { equipment }: Options,
  { noNumber }: ReportTexts,
): ImportedMachine {
  const listNumbers = ({ header }: ImportedMachine) => [header.equipmentId, header.serial, header.pin]
  const knownNumbers = machines.map(
    (machine) => listNumbers(machine).find((number) => number !== undefined) ?? noNumber,
  )
  const number = equipment ?? log.identity.serial
  const matches = machines.filter((machine) => number !== undefined && listNumbers(machine).includes(number))
  const [found] = matches
  if (found !== undefined && matches.length === 1) return found
  const [only] = machines
  const hasNoNumber = only !== undefined && only.header.serial === undefined && only.header.pin === undefined
  if (equipment === undefined && hasNoNumber && machines.length === 1) return only
  const known = knownNumbers.join(', ')
  if (number === undefined) throw new UsageError('noSerial', { known })
  throw matches.length > 1
    ? new UsageError('severalMachines', { number, count: matches.length })
    : new UsageError('noMachine', { number, known })
}

function describeAddedReadings(
  { added, keptDays, newMeters }: AddedReadings,
  { readingsAdded, meterAdded }: ReportTexts,
): readonly string[] {
  return [readingsAdded({ ...added, kept: keptDays }), ...newMeters.map((meter) => meterAdded({ meter }))]
}
