import type { Finding } from '../base/index.js'
import type { PlannedVisit } from '../card/index.js'
import type { DueOptions } from '../interval/index.js'
import { checkDocuments } from '../rules/index.js'
import { planVisit } from '../service/index.js'
import type { MachineLog, SpecSheet, Stock, Toolbox } from '../spec/index.js'
import { type CliIo, type ExitCode, UsageError } from './cliIo.js'
import { type ReadSet, readDocuments } from './readDocuments.js'
import type { Options } from './readOptions.js'
import { exitCodeOf, type LocatedFinding, locateFindings } from './renderFindings.js'

/** A log with the sheet that it names, from one closed set. */
export interface MachineFiles {
  readonly read: ReadSet
  readonly log: MachineLog
  readonly sheet: SpecSheet
}

/** Every log of the files that the options choose, each with its sheet. */
export function listMachines(sets: readonly ReadSet[], { machine }: Options): readonly MachineFiles[] {
  const machines = sets.flatMap((read) =>
    read.set.logs
      .filter(({ document }) => machine === undefined || document.id === machine)
      .map(({ name, document }) => ({ read, log: document, sheet: findSheet(read, document, name) })),
  )
  if (machines.length === 0)
    throw new UsageError(
      machine === undefined
        ? 'no machine log among the files'
        : `no log with the id ${machine} among the files`,
    )
  return machines
}

function findSheet({ set }: ReadSet, log: MachineLog, name = log.id): SpecSheet {
  const { id, revision } = log.sheet
  const found = set.sheets.find(({ document }) => document.id === id && document.revision === revision)
  if (found !== undefined) return found.document
  const others = set.sheets.map(({ document }) => `${document.id} revision ${document.revision}`)
  throw new UsageError(
    `${name}: its sheet ${id} revision ${revision} is not among the files (${others.join(', ') || 'no sheet'})`,
  )
}

/** The due options for one machine: `--severity`, else what its log says of its use, else normal. */
export function chooseDueOptions(options: Options, log: MachineLog): DueOptions {
  return { ...options.due, severity: options.severity ?? log.use ?? 'normal' }
}

/** The toolbox and the stock of a closed set; which of two is meant is never guessed. */
export function chooseShelf({ set }: ReadSet): { readonly toolbox?: Toolbox; readonly stock?: Stock } {
  const { toolboxes, stocks } = set
  if (toolboxes.length > 1) throw new UsageError('more than one toolbox among the files')
  if (stocks.length > 1) throw new UsageError('more than one stock among the files')
  const [toolbox] = toolboxes
  const [stock] = stocks
  return {
    ...(toolbox === undefined ? {} : { toolbox: toolbox.document }),
    ...(stock === undefined ? {} : { stock: stock.document }),
  }
}

/** Plans one machine's visit as the options say. */
export function planMachine(
  { log, sheet }: MachineFiles,
  options: Options,
  shelf: ReturnType<typeof chooseShelf>,
): ReturnType<typeof planVisit> {
  const { services, today, iso6789, ambient } = options
  return planVisit(
    { sheet, log, today, ...(ambient === undefined ? {} : { ambient }), ...shelf },
    { services, due: chooseDueOptions(options, log), iso6789 },
  )
}

/** The plan of one visit with all findings; no plan where a document has errors. */
export interface PlannedFiles {
  readonly planned?: PlannedVisit
  readonly findings: readonly LocatedFinding[]
  readonly code: ExitCode
}

/** Plans the visit to the one machine that the files and options name. */
export async function planFiles(command: string, options: Options, io: CliIo): Promise<PlannedFiles> {
  if (options.paths.length === 0)
    throw new UsageError(`${command}: name the files or the folder of one machine`)
  const sets = await readDocuments(options.paths, io)
  const reading = sets.flatMap(({ findings }) => findings)
  const failed = reading.some(({ severity }) => severity === 'error')
  const { planned, findings } = failed ? { planned: undefined, findings: [] } : planSets(sets, options)
  const located = locateFindings([...reading, ...findings], sets)
  return {
    ...(planned === undefined ? {} : { planned }),
    findings: located,
    code: exitCodeOf(located, options.level),
  }
}

function planSets(
  sets: readonly ReadSet[],
  options: Options,
): { readonly planned: PlannedVisit | undefined; readonly findings: readonly Finding[] } {
  const machines = listMachines(sets, options)
  const [machine] = machines
  if (machine === undefined || machines.length > 1)
    throw new UsageError(
      `there are ${machines.length} logs: choose one with --machine ${machines.map(({ log }) => log.id).join(' or ')}`,
    )
  const { set } = machine.read
  const planned = planMachine(machine, options, chooseShelf(machine.read))
  const names = new Map(
    [...set.sheets, ...set.logs, ...set.toolboxes, ...set.stocks].map(({ name, document }) => [
      `${document.kind} ${document.id}`,
      name,
    ]),
  )
  // The plan knows documents by id; the command line knows their files.
  const named = planned.findings.map((finding): Finding => {
    const name = names.get(`${finding.document.kind} ${finding.document.id}`)
    return name === undefined ? finding : { ...finding, document: { ...finding.document, name } }
  })
  return {
    planned: planned.ok ? planned : undefined,
    findings: [...checkDocuments(set, { today: options.today }), ...named],
  }
}
