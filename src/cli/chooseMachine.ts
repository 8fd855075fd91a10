import type { Finding } from '../base/index.js'
import type { DueOptions } from '../interval/index.js'
import { checkDocuments } from '../rules/index.js'
import { planVisit, type VisitPlan } from '../service/index.js'
import type { MachineLog, SpecSheet, Stock, Toolbox } from '../spec/index.js'
import { UsageError } from './cliIo.js'
import type { ReadSet } from './readDocuments.js'
import type { Options } from './readOptions.js'

/** A log with the sheet that it names, from one closed set. */
export interface MachineFiles {
  readonly read: ReadSet
  readonly log: MachineLog
  readonly logName?: string
  readonly sheet: SpecSheet
  readonly sheetName?: string
}

/** Every log that has its sheet among the files; usage errors say what is lacking. */
export function listMachines(sets: readonly ReadSet[], options: Options): readonly MachineFiles[] {
  const machines = sets.flatMap((read) =>
    read.set.logs.flatMap(({ name, document: log }): MachineFiles[] => {
      if (options.machine !== undefined && log.id !== options.machine) return []
      const partner = read.set.sheets.find(
        ({ document }) => document.id === log.sheet.id && document.revision === log.sheet.revision,
      )
      if (partner === undefined) {
        const given = read.set.sheets.map(({ document }) => `${document.id} revision ${document.revision}`)
        throw new UsageError(
          `${name ?? log.id}: its sheet ${log.sheet.id} revision ${log.sheet.revision} is not among the files (${
            given.length === 0 ? 'there is no sheet' : `there is ${given.join(', ')}`
          })`,
        )
      }
      return [
        {
          read,
          log,
          ...(name === undefined ? {} : { logName: name }),
          sheet: partner.document,
          ...(partner.name === undefined ? {} : { sheetName: partner.name }),
        },
      ]
    }),
  )
  if (machines.length === 0)
    throw new UsageError(
      options.machine === undefined
        ? 'no machine log among the files'
        : `no log with the id ${options.machine} among the files`,
    )
  return machines
}

/** What was read for one machine and the plan of its visit; the plan is absent where a document could not be read. */
export interface PlannedFiles {
  readonly sets: readonly ReadSet[]
  readonly findings: readonly Finding[]
  readonly plan?: VisitPlan
}

/** The due options for one machine: `--severity`, else what its log says of its use, else normal. */
export function chooseDueOptions(options: Options, log: MachineLog): DueOptions {
  return { ...options.due, severity: options.severity ?? log.use ?? 'normal' }
}

/** The toolbox and the stock of a closed set; which of two is meant nobody guesses. */
export function chooseShelf({ set }: ReadSet): { readonly toolbox?: Toolbox; readonly stock?: Stock } {
  const { toolboxes, stocks } = set
  if (toolboxes.length > 1) throw new UsageError('there is more than one toolbox among the files')
  if (stocks.length > 1) throw new UsageError('there is more than one stock among the files')
  const [toolbox] = toolboxes
  const [stock] = stocks
  return {
    ...(toolbox === undefined ? {} : { toolbox: toolbox.document }),
    ...(stock === undefined ? {} : { stock: stock.document }),
  }
}

/** Plans the visit to the one machine that the files and options name. */
export function planFiles(sets: readonly ReadSet[], options: Options): PlannedFiles {
  const reading = sets.flatMap(({ findings }) => findings)
  if (reading.some(({ severity }) => severity === 'error')) return { sets, findings: reading }
  const machines = listMachines(sets, options)
  const [machine] = machines
  if (machine === undefined || machines.length > 1)
    throw new UsageError(
      `there are ${machines.length} logs: choose one with --machine ${machines.map(({ log }) => log.id).join(' or ')}`,
    )
  const { read, log, sheet } = machine
  const { toolbox, stock } = chooseShelf(read)
  const planned = planVisit(
    {
      sheet,
      log,
      today: options.today,
      ...(options.ambient === undefined ? {} : { ambient: options.ambient }),
      ...(toolbox === undefined ? {} : { toolbox }),
      ...(stock === undefined ? {} : { stock }),
    },
    { services: options.services, due: chooseDueOptions(options, log), iso6789: options.iso6789 },
  )
  const names = new Map(
    [...read.set.sheets, ...read.set.logs, ...read.set.toolboxes, ...read.set.stocks].map(
      ({ name, document }) => [`${document.kind} ${document.id}`, name],
    ),
  )
  // The plan knows documents by id; the command line knows their files.
  const named = planned.findings.map((finding): Finding => {
    const name = names.get(`${finding.document.kind} ${finding.document.id}`)
    return name === undefined ? finding : { ...finding, document: { ...finding.document, name } }
  })
  const checked = checkDocuments(read.set, { today: options.today })
  const findings = [...reading, ...checked, ...named]
  return planned.ok ? { sets, findings, plan: planned.value } : { sets, findings }
}
