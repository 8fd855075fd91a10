import type { Finding } from '../../finding.js'
import { en } from '../../message/en/index.js'
import { formatQuantity } from '../../quantity/index.js'
import { groupKits, kitContents, leaveStock, orderList, planVisit } from '../../service/index.js'
import type { Stock } from '../../spec/index.js'
import { chooseDueOptions, chooseShelf, listMachines } from '../chooseMachine.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { locateFindings, renderFindings } from '../renderFindings.js'
import type { ExitCode } from '../runCommand.js'
import { safeLine } from '../safeLine.js'
import { UsageError } from '../usageError.js'
import type { World } from '../world.js'

/** `kits`: what to take along for each machine with something due, and one order list for all. */
export async function runKits(options: Options, world: World): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('kits: name logs and their sheets, or folders of them')
  const sets = await readDocuments(options.paths, world)
  const reading = sets.flatMap(({ findings }) => findings)
  if (reading.some(({ severity }) => severity === 'error')) {
    world.complain(renderFindings(locateFindings(reading, sets), 'text'))
    return 1
  }
  const findings: Finding[] = []
  // Machines take from one shelf in turn, so that nothing is promised twice.
  const shelves = new Map<string, Stock>()
  const kits = listMachines(sets, options).flatMap(({ log, sheet, read }) => {
    const { toolbox, stock: given } = chooseShelf(read)
    const stock = given === undefined ? undefined : (shelves.get(`${read.name} ${given.id}`) ?? given)
    const planned = planVisit({
      sheet,
      log,
      services: options.services,
      today: options.today,
      due: chooseDueOptions(options, log),
      edition: options.edition,
      ...(options.ambient === undefined ? {} : { ambient: options.ambient }),
      ...(toolbox === undefined ? {} : { toolbox }),
      ...(stock === undefined ? {} : { stock }),
    })
    if (!planned.ok) findings.push(...planned.findings)
    if (planned.ok && stock !== undefined)
      shelves.set(`${read.name} ${stock.id}`, leaveStock(stock, planned.value))
    return planned.ok && planned.value.work.length > 0 ? [kitContents(planned.value)] : []
  })
  const order = orderList(kits)
  if (findings.length > 0) world.complain(renderFindings(locateFindings(findings, sets), 'text'))
  const code = findings.length > 0 ? 1 : 0
  if (options.format === 'json') {
    world.print(JSON.stringify({ kits, groups: groupKits(kits), order }, null, 2))
    return code
  }
  for (const { machines, kit } of groupKits(kits)) {
    world.print(safeLine(`Kit for ${machines.map(({ name }) => name).join(', ')}`))
    for (const { oil, volume } of kit.oil)
      world.print(`  ${formatQuantity(volume, en.marks, { atMost: 0 })}  ${safeLine(oil)}`)
    for (const { name, count } of kit.seals) world.print(safeLine(`  ${count} ×  ${name}`))
    for (const { name } of kit.tools) world.print(safeLine(`  ${name}`))
  }
  world.print(kits.length === 0 ? 'Nothing is due.' : 'To order, for all kits')
  for (const { oil, volume } of order.oil)
    world.print(`  ${formatQuantity(volume, en.marks, { atMost: 0 })}  ${safeLine(oil)}`)
  for (const { name, count } of order.seals) world.print(safeLine(`  ${count} ×  ${name}`))
  return code
}
