import type { Finding, Reason } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import { renderMessage } from '../message/index.js'
import { type Kit, kitContents, remainingStock, type VisitPlan } from '../service/index.js'
import type { Stock } from '../spec/index.js'
import { chooseToolboxAndStock, listMachines, planMachine } from './chooseMachine.js'
import { cleanLine } from './cleanLine.js'
import type { CommandIo } from './cliIo.js'
import type { FileSet } from './readDocuments.js'
import type { Options } from './readOptions.js'

/** A machine with a service that may be due. */
export interface UndecidedMachine {
  readonly machine: Kit['machine']
  readonly reasons: readonly Reason[]
}

/** The kits that one van needs on one day. */
export interface Load {
  /** The first day on which a service of its machines is due; today if it is overdue. */
  readonly day: DateText
  /** The name of the toolbox, else of the stock, else the folder or files. */
  readonly van: string
  readonly kits: readonly Kit[]
}

/** The kits of the machines. */
export interface DayKits {
  readonly kits: readonly Kit[]
  /** The kits by day and van, in this order. */
  readonly loads: readonly Load[]
  readonly undecidedMachines: readonly UndecidedMachine[]
  /** Findings of machines that cannot be planned, and so have no kit. */
  readonly findings: readonly Finding[]
}

/** Plans every machine among the files. Each gets the stock that remains after the machines before it. */
export function collectKits(sets: readonly FileSet[], options: Options): DayKits {
  const findings: Finding[] = []
  const undecidedMachines: UndecidedMachine[] = []
  const stockBySet = new Map<FileSet, Stock>()
  const loads = new Map<string, Load & { readonly kits: Kit[] }>()
  const kits = listMachines(sets, options).flatMap((machine) => {
    const { log, fileSet } = machine
    const toolboxAndStock = chooseToolboxAndStock(fileSet)
    const stock = stockBySet.get(fileSet) ?? toolboxAndStock.stock
    const planned = planMachine(
      machine,
      options,
      stock === undefined ? toolboxAndStock : { ...toolboxAndStock, stock },
    )
    if (!planned.ok) {
      findings.push(...planned.findings)
      return []
    }
    const { missing, work } = planned.value
    const reasons = missing.map(({ reason }) => reason).filter(({ code }) => code === 'service/due-not-known')
    if (reasons.length > 0) undecidedMachines.push({ machine: { id: log.id, name: log.name }, reasons })
    if (stock !== undefined) stockBySet.set(fileSet, remainingStock(stock, planned.value))
    if (work.length === 0) return []
    const kit = kitContents(planned.value)
    const van = toolboxAndStock.toolbox?.name ?? toolboxAndStock.stock?.name ?? fileSet.name
    const day = findDueDay(planned.value)
    const key = JSON.stringify([day, van])
    const load = loads.get(key) ?? { day, van, kits: [] }
    load.kits.push(kit)
    loads.set(key, load)
    return [kit]
  })
  const inOrder = [...loads].sort(([first], [second]) => (first < second ? -1 : 1)).map(([, load]) => load)
  return { kits, loads: inOrder, undecidedMachines, findings }
}

/** The first day on which a service of the visit is due, at the earliest today. */
function findDueDay({ due, today }: VisitPlan): DateText {
  const days = due.flatMap(({ taken, dueOn }) => (taken ? [dueOn ?? today] : [])).sort()
  const [first = today] = days
  return first < today ? today : first
}

/** The lines that name the undecided machines, with the reasons. */
export const writeUndecided = (
  machines: readonly UndecidedMachine[],
  { words, catalogue }: CommandIo,
): readonly string[] =>
  machines.flatMap(({ machine, reasons }) => [
    cleanLine(words.reports.notKnownFor({ machine: machine.name })),
    ...reasons.map((reason) => cleanLine(`  ${renderMessage(reason, catalogue)}`)),
  ])
