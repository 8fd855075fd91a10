import { en } from '../../message/en/index.js'
import { explain } from '../../message/index.js'
import { type ListedDue, listDue } from '../../service/index.js'
import { chooseDueOptions, listMachines } from '../chooseMachine.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { locateFindings, renderFindings } from '../renderFindings.js'
import type { ExitCode } from '../runCommand.js'
import { UsageError } from '../usageError.js'
import type { World } from '../world.js'

/** `due`: every service of every machine, with its state and why. */
export async function runDue(options: Options, world: World): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('due: name logs and their sheets, or a folder of them')
  const sets = await readDocuments(options.paths, world)
  const reading = sets.flatMap(({ findings }) => findings)
  if (reading.length > 0) world.complain(renderFindings(locateFindings(reading, sets), 'text'))
  if (reading.some(({ severity }) => severity === 'error')) return 1
  const machines = listMachines(sets, options).map(({ log, sheet }) => ({
    machine: log.id,
    name: log.name,
    due: listDue({ sheet, log, today: options.today, options: chooseDueOptions(options, log) }),
  }))
  if (options.format === 'json') {
    world.print(JSON.stringify({ today: options.today, machines }, null, 2))
    return 0
  }
  for (const { name, due } of machines) world.print(`${name}\n${due.map(describe).join('\n')}\n`)
  return 0
}

function describe(line: ListedDue): string {
  const where = [line.part.gearcase, line.part.instance?.name].filter(Boolean).join(', ')
  const reasons = explain({ reasons: line.reasons }, en).map((text) => `    ${text}`)
  return [`  ${line.state.toUpperCase()}  ${line.serviceName}, ${where}`, ...reasons].join('\n')
}
