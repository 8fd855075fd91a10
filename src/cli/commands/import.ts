import type { Finding } from '../../base/index.js'
import { type ImportedMachine, importReadings } from '../../exchange/index.js'
import type { MachineLog } from '../../spec/index.js'
import { type AddedReadings, addReadings } from '../addReadings.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { findNewMistakes } from '../findNewMistakes.js'
import { plural } from '../plural.js'
import { readDocuments, readWhole } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { exitCodeOf, locateFindings, renderFindings } from '../renderFindings.js'
import { safeLine } from '../safeLine.js'
import { saveLog } from '../saveLog.js'

/** `import`: adds the readings from a maker's telematics file to a log. */
export async function runImport(options: Options, io: CliIo): Promise<ExitCode> {
  const [answer, file] = options.paths
  if (answer === undefined || file === undefined || options.paths.length > 2)
    throw new UsageError('import: name the telematics file and the log, in this order')
  const report = options.format === 'text' ? io.print : io.printError
  const sets = await readDocuments([file], io)
  const reading = sets.flatMap(({ findings }) => findings)
  const [log] = sets.flatMap(({ set }) => set.logs)
  const read = importReadings(await readJson(answer, io), { edition: options.telematics })
  const sent = read.findings.map((finding) => ({
    ...finding,
    document: { ...finding.document, name: answer },
  }))
  const refuse = (findings: readonly Finding[]): ExitCode => {
    io.print(renderFindings(locateFindings(findings, sets), options.format))
    report('Nothing is written.')
    return 1
  }
  if (!read.ok || reading.some(isError)) return refuse([...sent, ...reading])
  if (log === undefined) throw new UsageError(`import: expected a machine log, found ${file}`)
  const machine = chooseEquipment(read.value.machines, log.document, options)
  const added = addReadings(log.document, machine)
  // Without its sheet: only the readings are new.
  const alone = (document: MachineLog) => ({ ...NO_DOCUMENTS, logs: [{ name: file, document }] })
  const wrong = findNewMistakes(alone(log.document), added.log, options)
  if (wrong.some(isError)) return refuse([...sent, ...wrong])
  const findings = locateFindings([...sent, ...reading, ...wrong], sets)
  if (findings.length > 0 || options.format !== 'text') io.print(renderFindings(findings, options.format))
  for (const line of describeAdded(added)) report(line)
  if (options.out === undefined) report('Nothing is written: name the file for the log with --out LOG.')
  else {
    const extend = (current: MachineLog): MachineLog | undefined => {
      const extended = addReadings(current, machine).log
      const isWrong = findNewMistakes(alone(current), extended, options).some(isError)
      return isWrong ? undefined : extended
    }
    if ((await saveLog(options.out, log.document, extend, io)) === undefined) {
      report('Nothing is written: the log was changed meanwhile, and the readings do not fit it any more.')
      return 1
    }
    report(`Written: ${options.out}`)
  }
  return exitCodeOf(findings, options.level)
}

const NO_DOCUMENTS = { sheets: [], toolboxes: [], stocks: [], procedures: [], records: [] }

const isError = ({ severity }: Finding): boolean => severity === 'error'

async function readJson(path: string, io: CliIo): Promise<unknown> {
  const text = await readWhole(path, io)
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch {
    throw new UsageError(`${path}: not JSON`)
  }
}

/** The machine with the given number, else with the log's serial number, else the only machine without numbers. */
function chooseEquipment(
  machines: readonly ImportedMachine[],
  log: MachineLog,
  { equipment }: Options,
): ImportedMachine {
  const numbers = ({ header }: ImportedMachine) => [header.equipmentId, header.serial, header.pin]
  const known = machines.map((machine) => numbers(machine).find((one) => one !== undefined) ?? 'no number')
  const number = equipment ?? log.identity.serial
  const named = machines.filter((machine) => number !== undefined && numbers(machine).includes(number))
  const [found] = named
  if (found !== undefined && named.length === 1) return found
  const [only] = machines
  const isUnnamed = only !== undefined && only.header.serial === undefined && only.header.pin === undefined
  if (equipment === undefined && isUnnamed && machines.length === 1) return only
  throw new UsageError(
    named.length > 1
      ? `import: ${named.length} machines have the number ${number}`
      : `import: ${number === undefined ? 'the log has no serial number' : `no machine has the number ${number}`} (${known.join(', ')}); choose one with --equipment`,
  )
}

function describeAdded({ added, kept, missingMeters }: AddedReadings): readonly string[] {
  return [
    `${plural(added.hours, 'reading')} of hours and ${plural(added.distance, 'reading')} of distance added; ${kept} skipped, already in the log.`,
    ...missingMeters.map((meter) => safeLine(`The log has no meter for ${meter}: readings skipped.`)),
  ]
}
