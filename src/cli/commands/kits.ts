import type { Finding, Reason } from '../../base/index.js'
import { en } from '../../message/en/index.js'
import { renderMessage } from '../../message/index.js'
import { formatQuantity } from '../../quantity/index.js'
import { groupKits, type Kit, kitContents, orderList, remainingStock } from '../../service/index.js'
import type { Stock } from '../../spec/index.js'
import { chooseToolboxAndStock, listMachines, planMachine } from '../chooseMachine.js'
import { cleanLine } from '../cleanLine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { type FileSet, readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { locateFindings, renderFindings, reportReadErrors } from '../renderFindings.js'

/** A machine with a service that may be due. */
interface UndecidedMachine {
  readonly machine: Kit['machine']
  readonly reasons: readonly Reason[]
}

/** `kits`: prints a kit for each machine with a due service, and one order list for all. */
export async function runKits(options: Options, io: CliIo): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('kits: name logs and their sheets, or folders of them')
  const sets = await readDocuments(options.paths, io)
  if (reportReadErrors(sets, io)) return 1
  const findings: Finding[] = []
  const undecidedMachines: UndecidedMachine[] = []
  // Each machine gets the stock that remains after the machines before it.
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
  const order = orderList(kits)
  if (findings.length > 0) io.printError(renderFindings(locateFindings(findings, sets), 'text'))
  const exitCode = findings.length > 0 ? 1 : 0
  if (options.format === 'json')
    io.print(JSON.stringify({ kits, groups: groupKits(kits), order, open: undecidedMachines }, null, 2))
  else printKits(kits, undecidedMachines, order, io)
  return exitCode
}

type UndecidedMachines = readonly UndecidedMachine[]

function printKits(
  kits: readonly Kit[],
  undecidedMachines: UndecidedMachines,
  orders: Kit['buy'],
  io: CliIo,
): void {
  const printOil = (oils: Kit['oil']) => {
    for (const { oil: name, volume } of oils)
      io.print(`  ${formatQuantity(volume, en.marks, { atMost: 0 })}  ${cleanLine(name)}`)
  }
  const printPieces = (items: readonly { readonly name: string; readonly count: number }[]) => {
    for (const { name, count } of items) io.print(cleanLine(`  ${count} ×  ${name}`))
  }
  for (const { machines, kit } of groupKits(kits)) {
    io.print(cleanLine(`Kit for ${machines.map(({ name }) => name).join(', ')}`))
    printOil(kit.oil)
    printPieces(kit.seals)
    printPieces(kit.filters ?? [])
    if (kit.sampleBottles !== undefined)
      io.print(`  ${kit.sampleBottles} ×  clean sample bottle with a label`)
    for (const supply of kit.supplies ?? []) io.print(cleanLine(`  ${supply}`))
    for (const part of kit.toCount ?? [])
      io.print(cleanLine(`  Count the fasteners (${part}): the manual does not state their number.`))
    for (const { name } of kit.tools) io.print(cleanLine(`  ${name}`))
  }
  for (const { machine, reasons } of undecidedMachines) {
    io.print(cleanLine(`Not known for ${machine.name}`))
    for (const reason of reasons) io.print(cleanLine(`  ${renderMessage(reason, en)}`))
  }
  if (kits.length > 0) {
    io.print('To order, for all kits')
    printOil(orders.oil)
    printPieces(orders.seals)
    printPieces(orders.filters ?? [])
  } else if (undecidedMachines.length === 0) io.print('Nothing is due.')
}
