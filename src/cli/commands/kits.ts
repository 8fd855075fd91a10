import type { Finding, Reason } from '../../base/index.js'
import { en } from '../../message/en/index.js'
import { renderMessage } from '../../message/index.js'
import { formatQuantity } from '../../quantity/index.js'
import { groupKits, type Kit, kitContents, leaveStock, orderList, planVisit } from '../../service/index.js'
import type { Stock } from '../../spec/index.js'
import { chooseDueOptions, chooseShelf, listMachines } from '../chooseMachine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { locateFindings, renderFindings } from '../renderFindings.js'
import { safeLine } from '../safeLine.js'

/** A machine with a service that cannot be judged: no kit, and no all-clear either. */
interface Open {
  readonly machine: Kit['machine']
  readonly reasons: readonly Reason[]
}

/** `kits`: what to take along for each machine with something due, and one order list for all. */
export async function runKits(options: Options, io: CliIo): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('kits: name logs and their sheets, or folders of them')
  const sets = await readDocuments(options.paths, io)
  const reading = sets.flatMap(({ findings }) => findings)
  if (reading.some(({ severity }) => severity === 'error')) {
    io.printError(renderFindings(locateFindings(reading, sets), 'text'))
    return 1
  }
  const findings: Finding[] = []
  const open: Open[] = []
  // Machines take from one shelf in turn, so that nothing is promised twice.
  const shelves = new Map<string, Stock>()
  const kits = listMachines(sets, options).flatMap(({ log, sheet, read }) => {
    const { toolbox, stock: given } = chooseShelf(read)
    const stock = given === undefined ? undefined : (shelves.get(`${read.name} ${given.id}`) ?? given)
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
    if (!planned.ok) {
      findings.push(...planned.findings)
      return []
    }
    const { missing, work } = planned.value
    const reasons = missing.map(({ reason }) => reason).filter(({ code }) => code === 'service/due-open')
    if (reasons.length > 0) open.push({ machine: { id: log.id, name: log.name }, reasons })
    if (stock !== undefined) shelves.set(`${read.name} ${stock.id}`, leaveStock(stock, planned.value))
    return work.length > 0 ? [kitContents(planned.value)] : []
  })
  const order = orderList(kits)
  if (findings.length > 0) io.printError(renderFindings(locateFindings(findings, sets), 'text'))
  const code = findings.length > 0 ? 1 : 0
  if (options.format === 'json') {
    io.print(JSON.stringify({ kits, groups: groupKits(kits), order, open }, null, 2))
    return code
  }
  printKits(kits, open, order, io)
  return code
}

function printKits(kits: readonly Kit[], open: readonly Open[], order: Kit['buy'], io: CliIo): void {
  const oil = (volumes: Kit['oil']) => {
    for (const { oil: name, volume } of volumes)
      io.print(`  ${formatQuantity(volume, en.marks, { atMost: 0 })}  ${safeLine(name)}`)
  }
  const seals = (counts: Kit['seals']) => {
    for (const { name, count } of counts) io.print(safeLine(`  ${count} ×  ${name}`))
  }
  for (const { machines, kit } of groupKits(kits)) {
    io.print(safeLine(`Kit for ${machines.map(({ name }) => name).join(', ')}`))
    oil(kit.oil)
    seals(kit.seals)
    for (const { name } of kit.tools) io.print(safeLine(`  ${name}`))
  }
  for (const { machine, reasons } of open) {
    io.print(safeLine(`Cannot tell for ${machine.name}`))
    for (const reason of reasons) io.print(safeLine(`  ${renderMessage(reason, en)}`))
  }
  if (kits.length > 0) {
    io.print('To order, for all kits')
    oil(order.oil)
    seals(order.seals)
  } else if (open.length === 0) io.print('Nothing is due.')
}
