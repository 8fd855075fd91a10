import { dropUndefined, type Finding } from '../base/index.js'
import type { PlannedVisit } from '../card/index.js'
import type { DueOptions } from '../interval/index.js'
import { openFaults } from '../record/index.js'
import { checkDocuments } from '../rules/index.js'
import { planVisit } from '../service/index.js'
import type { MachineLog, ProcedureDocument, SpecSheet, Stock, Toolbox } from '../spec/index.js'
import { type CliIo, type ExitCode, UsageError } from './cliIo.js'
import type { LocatedFinding } from './locatedFinding.js'
import { documentsOf, findSheet, type ReadSet, readDocuments } from './readDocuments.js'
import type { Options } from './readOptions.js'
import { readProcedure } from './readProcedure.js'
import { exitCodeOf, locateFindings } from './renderFindings.js'
import { safeLine } from './safeLine.js'

/** A log and its sheet, from one closed set. */
export interface MachineFiles {
  readonly read: ReadSet
  readonly log: MachineLog
  readonly sheet: SpecSheet
}

/** The logs that the options choose, each with its sheet. */
export function listMachines(sets: readonly ReadSet[], { machine }: Options): readonly MachineFiles[] {
  const machines = sets.flatMap((read) =>
    read.set.logs
      .filter(({ document }) => machine === undefined || document.id === machine)
      .map(({ name, document }) => ({
        read,
        log: document,
        sheet: requireSheet(read, document, name ?? document.id),
      })),
  )
  if (machines.length === 0)
    throw new UsageError(
      machine === undefined
        ? 'no machine log among the files'
        : `no log with the id ${machine} among the files`,
    )
  return machines
}

function requireSheet({ set }: ReadSet, { sheet: { id, revision } }: MachineLog, name: string): SpecSheet {
  const sheets = set.sheets.map(({ document }) => document)
  const found = findSheet(sheets, { id, revision })
  if (found !== undefined) return found
  const others = sheets.map((sheet) => `${sheet.id} revision ${sheet.revision}`).join(', ')
  throw new UsageError(
    `${name}: its sheet ${id} revision ${revision} is not among the files (${others || 'no sheet'})`,
  )
}

/** The options that decide what is due for one machine: `--severity`, else the `use` in its log, else normal. */
export function chooseDueOptions(options: Options, log: MachineLog): DueOptions {
  return { ...options.due, severity: options.severity ?? log.use ?? 'normal' }
}

/** The toolbox and the stock of a closed set; two of a kind are refused. */
export function chooseToolboxAndStock({ set }: ReadSet): {
  readonly toolbox?: Toolbox
  readonly stock?: Stock
} {
  const { toolboxes, stocks } = set
  if (toolboxes.length > 1) throw new UsageError('more than one toolbox among the files')
  if (stocks.length > 1) throw new UsageError('more than one stock among the files')
  return dropUndefined({ toolbox: toolboxes[0]?.document, stock: stocks[0]?.document })
}

/** Plans the visit to one machine with the options. */
export function planMachine(
  { log, sheet: stated, read }: MachineFiles,
  options: Options,
  shelf: ReturnType<typeof chooseToolboxAndStock>,
  procedure?: ProcedureDocument,
  otherLogs?: readonly MachineLog[],
): ReturnType<typeof planVisit> {
  const { services, today, iso6789, tolerancePercent, ambient, labourRate } = options
  const sheet = options.samples.reduce(withSample, stated)
  const faults = openFaults({ document: log }, read.set, { today })
  const facts = dropUndefined({ sheet, log, today, ambient, procedure, ...shelf, faults, otherLogs })
  const due = chooseDueOptions(options, log)
  return planVisit(facts, dropUndefined({ services, due, iso6789, tolerancePercent, labourRate }))
}

/** The plan of one visit with all findings; no plan if a document has errors. */
export interface PlannedFiles {
  readonly planned?: PlannedVisit
  readonly findings: readonly LocatedFinding[]
  readonly code: ExitCode
}

/** Plans the visit to the machine that the files and options name. */
export async function planFiles(command: string, options: Options, io: CliIo): Promise<PlannedFiles> {
  if (options.paths.length === 0)
    throw new UsageError(`${command}: name the files or the folder of one machine`)
  const sets = await readDocuments(options.paths, io)
  const path = options.procedure
  const own = path === undefined ? undefined : await readProcedure('--procedure', path, io)
  const times = options.timesFrom.length === 0 ? [] : await readDocuments(options.timesFrom, io)
  const allSets = [...sets, ...(own?.sets ?? []), ...times]
  const reading = allSets.flatMap(({ findings }) => findings)
  const failed = reading.some(({ severity }) => severity === 'error')
  const { planned, findings } = failed
    ? { planned: undefined, findings: [] }
    : planSets(
        sets,
        options,
        own?.procedure,
        documentsOf(times, ({ logs }) => logs),
      )
  if (planned?.value.procedure)
    io.printError(safeLine(`Steps: ${planned.value.procedure.name}, from ${path}`))
  const located = locateFindings([...reading, ...findings], allSets)
  return dropUndefined({ planned, findings: located, code: exitCodeOf(located, options.level) })
}

function planSets(
  sets: readonly ReadSet[],
  options: Options,
  own: ProcedureDocument | undefined,
  otherLogs: readonly MachineLog[],
): { readonly planned: PlannedVisit | undefined; readonly findings: readonly Finding[] } {
  const machines = listMachines(sets, options)
  const [machine] = machines
  if (machine === undefined || machines.length > 1)
    throw new UsageError(
      `found ${machines.length} logs: choose one with --machine ${machines.map(({ log }) => log.id).join(' or ')}`,
    )
  const { set } = machine.read
  const planned = planMachine(machine, options, chooseToolboxAndStock(machine.read), own, otherLogs)
  const documents = [...set.sheets, ...set.logs, ...set.toolboxes, ...set.stocks]
  // Findings of the plan name documents by id: add the file name.
  const named = planned.findings.map((finding): Finding => {
    const { kind, id } = finding.document
    const file = documents.findLast(({ document }) => document.kind === kind && document.id === id)
    const name = kind === 'procedure' && id === own?.id ? options.procedure : file?.name
    return { ...finding, document: dropUndefined({ ...finding.document, name }) }
  })
  return {
    planned: planned.ok ? planned : undefined,
    // The writer's procedure is checked for this machine; in the folder it is not checked again.
    findings: [...checkDocuments(withoutProcedure(set, own), { today: options.today }), ...named],
  }
}

const withoutProcedure = (set: ReadSet['set'], own: ProcedureDocument | undefined): ReadSet['set'] => ({
  ...set,
  procedures: set.procedures.filter(({ document }) => document.id !== own?.id),
})

/** The sheet as if its changes of this gearcase asked for an oil sample. */
function withSample(sheet: SpecSheet, gearcase: string): SpecSheet {
  if (!Object.hasOwn(sheet.gearcases, gearcase))
    throw new UsageError(`--sample ${gearcase}: expected one of ${Object.keys(sheet.gearcases).join(', ')}`)
  const isChange = ({ task, gearcases }: SpecSheet['services'][string]) =>
    task === 'change' && gearcases.includes(gearcase)
  if (!Object.values(sheet.services).some(isChange))
    throw new UsageError(`--sample ${gearcase}: the sheet has no oil change of this gearcase`)
  const services = Object.entries(sheet.services).map(([id, service]) => {
    const { samples = [] } = service
    const isAdded = isChange(service) && !samples.includes(gearcase)
    return [id, isAdded ? { ...service, samples: [...samples, gearcase] } : service]
  })
  return { ...sheet, services: Object.fromEntries(services) }
}
