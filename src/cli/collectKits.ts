import type { Finding, Reason } from '../base/index.js'
import { en } from '../message/en/index.js'
import { renderMessage } from '../message/index.js'
import { type Kit, kitContents, remainingStock } from '../service/index.js'
import type { Stock } from '../spec/index.js'
import { chooseToolboxAndStock, listMachines, planMachine } from './chooseMachine.js'
import { cleanLine } from './cleanLine.js'
import type { FileSet } from './readDocuments.js'
import type { Options } from './readOptions.js'

/** A machine with a service that may be due. */
export interface UndecidedMachine {
  readonly machine: Kit['machine']
  readonly reasons: readonly Reason[]
}

/** The kits of a day's machines. */
export interface DayKits {
  readonly kits: readonly Kit[]
  readonly undecidedMachines: readonly UndecidedMachine[]
  /** Findings of machines that cannot be planned, and so have no kit. */
  readonly findings: readonly Finding[]
}

/** Plans every machine among the files. Each gets the stock that remains after the machines before it. */
export function collectKits(sets: readonly FileSet[], options: Options): DayKits {
  const findings: Finding[] = []
  const undecidedMachines: UndecidedMachine[] = []
  const stockBySet = new Map<FileSet, Stock>()
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
    return work.length > 0 ? [kitContents(planned.value)] : []
  })
  return { kits, undecidedMachines, findings }
}

/** The lines that name the undecided machines, with the reasons. */
export const writeUndecided = (machines: readonly UndecidedMachine[]): readonly string[] =>
  machines.flatMap(({ machine, reasons }) => [
    cleanLine(`Not known for ${machine.name}`),
    ...reasons.map((reason) => cleanLine(`  ${renderMessage(reason, en)}`)),
  ])
