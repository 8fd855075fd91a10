import type { Finding, Reason } from '../../base/index.js'
import { en } from '../../message/en/index.js'
import { renderMessage } from '../../message/index.js'
import { formatQuantity } from '../../quantity/index.js'
import { groupKits, type Kit, kitContents, orderList, remainingStock } from '../../service/index.js'
import type { Stock } from '../../spec/index.js'
import { chooseToolboxAndStock, listMachines, planMachine } from '../chooseMachine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { type ReadSet, readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { locateFindings, renderFindings, reportReading } from '../renderFindings.js'
import { safeLine } from '../safeLine.js'

/** A machine with a service that may be due. */
interface UndecidedMachine {
  readonly machine: Kit['machine']
  readonly reasons: readonly Reason[]
}

/** `kits`: prints a kit for each machine with a service due, and one order list for all. */
export async function runKits(options: Options, io: CliIo): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('kits: name logs and their sheets, or folders of them')
  const sets = await readDocuments(options.paths, io)
  if (reportReading(sets, io)) return 1
  const findings: Finding[] = []
  const undecided: UndecidedMachine[] = []
  // Each machine gets the stock that the machines before it left.
  const stocks = new Map<ReadSet, Stock>()
  const kits = listMachines(sets, options).flatMap((machine) => {
    const { log, read } = machine
    const shelf = chooseToolboxAndStock(read)
    const stock = stocks.get(read) ?? shelf.stock
    const planned = planMachine(machine, options, stock === undefined ? shelf : { ...shelf, stock })
    if (!planned.ok) {
      findings.push(...planned.findings)
      return []
    }
    const { missing, work } = planned.value
    const reasons = missing.map(({ reason }) => reason).filter(({ code }) => code === 'service/due-open')
    if (reasons.length > 0) undecided.push({ machine: { id: log.id, name: log.name }, reasons })
    if (stock !== undefined) stocks.set(read, remainingStock(stock, planned.value))
    return work.length > 0 ? [kitContents(planned.value)] : []
  })
  const order = orderList(kits)
  if (findings.length > 0) io.printError(renderFindings(locateFindings(findings, sets), 'text'))
  const code = findings.length > 0 ? 1 : 0
  if (options.format === 'json')
    io.print(JSON.stringify({ kits, groups: groupKits(kits), order, open: undecided }, null, 2))
  else printKits(kits, undecided, order, io)
  return code
}

type Undecided = readonly UndecidedMachine[]

function printKits(kits: readonly Kit[], undecided: Undecided, order: Kit['buy'], io: CliIo): void {
  const oil = (volumes: Kit['oil']) => {
    for (const { oil: name, volume } of volumes)
      io.print(`  ${formatQuantity(volume, en.marks, { atMost: 0 })}  ${safeLine(name)}`)
  }
  const pieces = (counts: readonly { readonly name: string; readonly count: number }[]) => {
    for (const { name, count } of counts) io.print(safeLine(`  ${count} ×  ${name}`))
  }
  for (const { machines, kit } of groupKits(kits)) {
    io.print(safeLine(`Kit for ${machines.map(({ name }) => name).join(', ')}`))
    oil(kit.oil)
    pieces(kit.seals)
    pieces(kit.filters ?? [])
    if (kit.sampleBottles !== undefined)
      io.print(`  ${kit.sampleBottles} ×  clean sample bottle with a label`)
    for (const { name } of kit.tools) io.print(safeLine(`  ${name}`))
  }
  for (const { machine, reasons } of undecided) {
    io.print(safeLine(`Not known for ${machine.name}`))
    for (const reason of reasons) io.print(safeLine(`  ${renderMessage(reason, en)}`))
  }
  if (kits.length > 0) {
    io.print('To order, for all kits')
    oil(order.oil)
    pieces(order.seals)
    pieces(order.filters ?? [])
  } else if (undecided.length === 0) io.print('Nothing is due.')
}
