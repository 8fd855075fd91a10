import { dropUndefined, type Finding } from '../base/index.js'
import type { PlannedVisit } from '../card/index.js'
import type { DueOptions } from '../interval/index.js'
import { openFaults } from '../record/index.js'
import { checkDocuments } from '../rules/index.js'
import { planVisit } from '../service/index.js'
import type { MachineLog, ProcedureDocument, SpecSheet, Stock, Toolbox } from '../spec/index.js'
import { cleanLine } from './cleanLine.js'
import { type CommandIo, type ExitCode, UsageError } from './cliIo.js'
import type { LocatedFinding } from './makeLocator.js'
import { type FileSet, findSheet, listDocuments, readDocuments, readProcedure } from './readDocuments.js'
import type { Options } from './readOptions.js'
import { chooseExitCode, locateFindings } from './renderFindings.js'

/** A log and its sheet, from the same closed set. */
export interface MachineFiles {
  readonly fileSet: FileSet
  readonly log: MachineLog
  readonly sheet: SpecSheet
}

/** The logs selected by the options, each with its sheet. */
export function listMachines(sets: readonly FileSet[], { machine }: Options): readonly MachineFiles[] {
  const machines = sets.flatMap((fileSet) =>
    fileSet.set.logs
      .filter(({ document }) => machine === undefined || document.id === machine)
      .map(({ name, document }) => ({
        fileSet,
        log: document,
        sheet: requireSheet(fileSet, document, name ?? document.id),
      })),
  )
  if (machines.length === 0)
    throw machine === undefined ? new UsageError('noLog') : new UsageError('noLogWithId', { id: machine })
  return machines
}

/** The only log selected by the options, with its sheet. */
export function requireOneMachine(sets: readonly FileSet[], options: Options): MachineFiles {
  const machines = listMachines(sets, options)
  const [machine] = machines
  if (machine === undefined || machines.length > 1)
    throw new UsageError('severalLogs', {
      ids: machines.map(({ log }) => log.id).join(', '),
      count: machines.length,
    })
  return machine
}

function requireSheet({ set }: FileSet, { sheet: { id, revision } }: MachineLog, name: string): SpecSheet {
  const sheets = set.sheets.map(({ document }) => document)
  const found = findSheet(sheets, { id, revision })
  if (found !== undefined) return found
  const others = sheets.map((sheet) => `${sheet.id} revision ${sheet.revision}`).join(', ')
  throw new UsageError('sheetNotFound', { name, id, revision, found: others })
}

/** The due options for one machine: severity from `--severity`, else from `use` in its log, else normal. */
export function chooseDueOptions(options: Options, log: MachineLog): DueOptions {
  return { ...options.due, severity: options.severity ?? log.use ?? 'normal' }
}

/** The toolbox and the stock of a closed set; more than one of either is an error. */
export function chooseToolboxAndStock({ set }: FileSet): {
  readonly toolbox?: Toolbox
  readonly stock?: Stock
} {
  const { toolboxes, stocks } = set
  if (toolboxes.length > 1) throw new UsageError('severalToolboxes')
  if (stocks.length > 1) throw new UsageError('severalStocks')
  return dropUndefined({ toolbox: toolboxes[0]?.document, stock: stocks[0]?.document })
}

/** Plans a visit to one machine. */
export function planMachine(
  { log, sheet: sheetOnFile, fileSet }: MachineFiles,
  options: Options,
  toolboxAndStock: ReturnType<typeof chooseToolboxAndStock>,
  procedure?: ProcedureDocument,
  otherLogs?: readonly MachineLog[],
): ReturnType<typeof planVisit> {
  const { services, today, iso6789, tolerancePercent, ambient, labourRate, raiseOn } = options
  const sheet = options.samples.reduce(addSample, sheetOnFile)
  const faults = openFaults({ document: log }, fileSet.set, { today })
  const facts = dropUndefined({
    sheet,
    log,
    today,
    ambient,
    procedure,
    ...toolboxAndStock,
    faults,
    otherLogs,
  })
  const due = chooseDueOptions(options, log)
  return planVisit(facts, dropUndefined({ services, due, iso6789, tolerancePercent, labourRate, raiseOn }))
}

/** The plan of one visit with all findings; no plan if a document has errors. */
export interface FilePlan {
  readonly planned?: PlannedVisit
  /** The sheet of the planned machine. */
  readonly sheet?: SpecSheet
  readonly findings: readonly LocatedFinding[]
  readonly exitCode: ExitCode
}

/** Plans a visit to the machine selected by the files and options. */
export async function planFromFiles(command: string, options: Options, io: CommandIo): Promise<FilePlan> {
  if (options.paths.length === 0) throw new UsageError('nameMachine', { command })
  const sets = await readDocuments(options.paths, io)
  const path = options.procedure
  const ownProcedure = path === undefined ? undefined : await readProcedure('--procedure', path, io)
  const times = options.timesFrom.length === 0 ? [] : await readDocuments(options.timesFrom, io)
  const allSets = [...sets, ...(ownProcedure?.sets ?? []), ...times]
  const readFindings = allSets.flatMap(({ findings }) => findings)
  const hasErrors = readFindings.some(({ severity }) => severity === 'error')
  const { planned, sheet, findings } = hasErrors
    ? { planned: undefined, sheet: undefined, findings: [] }
    : planFromSets(
        sets,
        options,
        ownProcedure?.procedure,
        listDocuments(times, ({ logs }) => logs),
      )
  if (planned?.value.procedure)
    io.printError(cleanLine(io.words.reports.steps({ name: planned.value.procedure.name, path: path ?? '' })))
  const locatedFindings = locateFindings([...readFindings, ...findings], allSets, io)
  return dropUndefined({
    planned,
    sheet,
    findings: locatedFindings,
    exitCode: chooseExitCode(locatedFindings, options.level),
  })
}

function planFromSets(
  sets: readonly FileSet[],
  options: Options,
  ownProcedure: ProcedureDocument | undefined,
  otherLogs: readonly MachineLog[],
): { readonly planned: PlannedVisit | undefined; sheet: SpecSheet; readonly findings: readonly Finding[] } {
  const machine = requireOneMachine(sets, options)
  const { set } = machine.fileSet
  const planned = planMachine(
    machine,
    options,
    chooseToolboxAndStock(machine.fileSet),
    ownProcedure,
    otherLogs,
  )
  const documents = [...set.sheets, ...set.logs, ...set.toolboxes, ...set.stocks]
  // Findings of the plan give only the id of a document: add the file name.
  const namedFindings = planned.findings.map((finding): Finding => {
    const { kind, id } = finding.document
    const file = documents.findLast(({ document }) => document.kind === kind && document.id === id)
    const name = kind === 'procedure' && id === ownProcedure?.id ? options.procedure : file?.name
    return { ...finding, document: dropUndefined({ ...finding.document, name }) }
  })
  return {
    planned: planned.ok ? planned : undefined,
    sheet: machine.sheet,
    // The plan has already checked the writer's procedure for this machine.
    findings: [
      ...checkDocuments(removeProcedure(set, ownProcedure), { today: options.today }),
      ...namedFindings,
    ],
  }
}

const removeProcedure = (
  set: FileSet['set'],
  ownProcedure: ProcedureDocument | undefined,
): FileSet['set'] => ({
  ...set,
  procedures: set.procedures.filter(({ document }) => document.id !== ownProcedure?.id),
})

/** The sheet with an oil sample at each oil change of this gearcase. */
function addSample(sheet: SpecSheet, gearcase: string): SpecSheet {
  if (!Object.hasOwn(sheet.gearcases, gearcase))
    throw new UsageError('notOneOf', {
      given: `--sample ${gearcase}`,
      expected: Object.keys(sheet.gearcases).join(', '),
    })
  const isOilChange = ({ task, gearcases }: SpecSheet['services'][string]) =>
    task === 'change' && gearcases.includes(gearcase)
  if (!Object.values(sheet.services).some(isOilChange))
    throw new UsageError('noOilChange', { given: `--sample ${gearcase}` })
  const services = Object.entries(sheet.services).map(([id, service]) => {
    const { samples = [] } = service
    const needsSample = isOilChange(service) && !samples.includes(gearcase)
    return [id, needsSample ? { ...service, samples: [...samples, gearcase] } : service]
  })
  return { ...sheet, services: Object.fromEntries(services) }
}
