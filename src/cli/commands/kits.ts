import { en } from '../../message/en/index.js'
import { formatQuantity } from '../../quantity/index.js'
import { groupKits, type Kit, orderList } from '../../service/index.js'
import { cleanLine } from '../cleanLine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { collectKits, type DayKits, writeUndecided } from '../collectKits.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { locateFindings, renderFindings, reportReadErrors } from '../renderFindings.js'

/** `kits`: prints a kit for each machine with a due service, and one order list for all. */
export async function runKits(options: Options, io: CliIo): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('kits: name logs and their sheets, or folders of them')
  const sets = await readDocuments(options.paths, io)
  if (reportReadErrors(sets, io)) return 1
  const { kits, undecidedMachines, findings } = collectKits(sets, options)
  const order = orderList(kits)
  if (findings.length > 0) io.printError(renderFindings(locateFindings(findings, sets), 'text'))
  const exitCode = findings.length > 0 ? 1 : 0
  if (options.format === 'json')
    io.print(JSON.stringify({ kits, groups: groupKits(kits), order, open: undecidedMachines }, null, 2))
  else printKits(kits, undecidedMachines, order, io)
  return exitCode
}

function printKits(
  kits: readonly Kit[],
  undecidedMachines: DayKits['undecidedMachines'],
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
  for (const line of writeUndecided(undecidedMachines)) io.print(line)
  if (kits.length > 0) {
    io.print('To order, for all kits')
    printOil(orders.oil)
    printPieces(orders.seals)
    printPieces(orders.filters ?? [])
  } else if (undecidedMachines.length === 0) io.print('Nothing is due.')
}
