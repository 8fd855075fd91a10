import { nameSeal } from '../../card/index.js'
import { formatQuantity, type Quantity, type VolumeUnit } from '../../quantity/index.js'
import { groupKits, type Kit, orderList } from '../../service/index.js'
import { cleanLine } from '../cleanLine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import { collectKits, writeUndecided } from '../collectKits.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { locateFindings, renderFindings, reportReadErrors } from '../renderFindings.js'

/** `kits`: prints a kit for each machine with a due service, and order lists by day and van. */
export async function runKits(options: Options, io: CommandIo): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('nameLogsAndSheets', { command: 'kits' })
  const sets = await readDocuments(options.paths, io)
  if (reportReadErrors(sets, io)) return 1
  const { kits, loads, undecidedMachines, findings } = collectKits(sets, options)
  const order = orderList(kits)
  const orders = loads.map(({ day, van, kits: ownKits }) => ({
    day,
    van,
    machines: ownKits.map(({ machine }) => machine.id),
    order: orderList(ownKits),
  }))
  if (findings.length > 0) io.printError(renderFindings(locateFindings(findings, sets, io), 'text', io))
  const exitCode = findings.length > 0 ? 1 : 0
  if (options.format === 'json') {
    const groups = groupKits(kits)
    io.print(JSON.stringify({ kits, groups, orders, order, open: undecidedMachines }, null, 2))
    return exitCode
  }
  const { reports } = io.words
  const isOneLoad = loads.length <= 1
  for (const { day, van, kits: ownKits } of loads) {
    if (!isOneLoad)
      io.print(
        cleanLine(
          reports.load({ day, van, machines: ownKits.map(({ machine }) => machine.name).join(', ') }),
        ),
      )
    printKits(ownKits, io)
  }
  for (const line of writeUndecided(undecidedMachines, io)) io.print(line)
  if (kits.length > 0) {
    if (!isOneLoad)
      for (const { day, van, order: ownOrder } of orders)
        printOrder(reports.toOrderFor({ day, van }), ownOrder, io)
    printOrder(reports.toOrder, order, io)
  } else if (undecidedMachines.length === 0) io.print(reports.nothingDue)
  return exitCode
}

type Order = ReturnType<typeof orderList>

const writeVolume = (volume: Quantity<VolumeUnit>, { catalogue }: CommandIo): string =>
  formatQuantity(volume, catalogue.marks, { atMost: 0 })

function printSeals(seals: Kit['seals'], { catalogue, print }: CommandIo): void {
  for (const { seal, count } of seals) print(cleanLine(`  ${count} ×  ${nameSeal(seal, catalogue)}`))
}

function printFilters(filters: NonNullable<Kit['filters']>, { catalogue, print }: CommandIo): void {
  for (const { part, kind, count } of filters)
    print(cleanLine(`  ${count} ×  ${part} ${catalogue.card.filters[kind]}`))
}

function printKits(kits: readonly Kit[], io: CommandIo): void {
  const { reports } = io.words
  for (const { machines, kit } of groupKits(kits)) {
    io.print(cleanLine(reports.kitFor({ machines: machines.map(({ name }) => name).join(', ') })))
    for (const { oil, volume } of kit.oil) io.print(cleanLine(`  ${writeVolume(volume, io)}  ${oil}`))
    printSeals(kit.seals, io)
    for (const { seal, count } of kit.spares ?? [])
      io.print(cleanLine(`  ${count} ×  ${reports.spare({ name: nameSeal(seal, io.catalogue) })}`))
    printFilters(kit.filters ?? [], io)
    if (kit.sampleBottles !== undefined) io.print(`  ${kit.sampleBottles} ×  ${reports.sampleBottle}`)
    for (const supply of kit.supplies ?? []) io.print(cleanLine(`  ${supply}`))
    for (const part of kit.toCount ?? []) io.print(cleanLine(`  ${reports.countFasteners({ part })}`))
    for (const { name } of kit.tools) io.print(cleanLine(`  ${name}`))
  }
}

function printOrder(heading: string, { oil: oils, seals, filters = [] }: Order, io: CommandIo): void {
  const { reports } = io.words
  const isEmpty = oils.length + seals.length + filters.length === 0
  io.print(cleanLine(isEmpty ? reports.nothing({ heading }) : heading))
  for (const { oil, volume, containers = [], leftOver } of oils) {
    const sold = containers.map(
      ({ name, size, count }) => `${count} × ${name} (${formatQuantity(size, io.catalogue.marks)})`,
    )
    const left = leftOver === undefined ? '' : `, ${reports.leftOver({ volume: writeVolume(leftOver, io) })}`
    const packages = sold.length === 0 ? reports.noContainer : `${sold.join(', ')}${left}`
    io.print(cleanLine(`  ${writeVolume(volume, io)}  ${reports.packages({ oil, packages })}`))
  }
  printSeals(seals, io)
  printFilters(filters, io)
}
