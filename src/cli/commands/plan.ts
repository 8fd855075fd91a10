import { cardModel, renderText } from '../../card/index.js'
import { en } from '../../message/en/index.js'
import { planFiles } from '../chooseMachine.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { isAtLevel, locateFindings, renderFindings } from '../renderFindings.js'
import type { ExitCode } from '../runCommand.js'
import { UsageError } from '../usageError.js'
import type { World } from '../world.js'

/** `plan`: one visit, printed; the findings behind it. */
export async function runPlan(options: Options, world: World): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('plan: name the files or the folder of one machine')
  const sets = await readDocuments(options.paths, world)
  const { plan, findings } = planFiles(sets, options)
  const located = locateFindings(findings, sets)
  const count = located.filter((finding) => isAtLevel(finding, options.level)).length
  if (options.format === 'json')
    world.print(JSON.stringify({ plan: plan ?? null, findings: located }, null, 2))
  else if (options.format === 'sarif') world.print(renderFindings(located, 'sarif'))
  else {
    if (plan !== undefined) world.print(renderText(cardModel(plan, en)))
    if (located.length > 0) world.print(`Findings\n\n${renderFindings(located, 'text')}`)
  }
  return count > 0 ? 1 : 0
}
