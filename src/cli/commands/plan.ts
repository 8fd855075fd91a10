import { cardModel, renderText } from '../../card/index.js'
import { en } from '../../message/en/index.js'
import { planFiles } from '../chooseMachine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { isAtLevel, locateFindings, renderFindings } from '../renderFindings.js'

/** `plan`: one visit, printed; the findings behind it. */
export async function runPlan(options: Options, io: CliIo): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('plan: name the files or the folder of one machine')
  const sets = await readDocuments(options.paths, io)
  const { plan, findings } = planFiles(sets, options)
  const located = locateFindings(findings, sets)
  const count = located.filter((finding) => isAtLevel(finding, options.level)).length
  if (options.format === 'json') io.print(JSON.stringify({ plan: plan ?? null, findings: located }, null, 2))
  else if (options.format === 'sarif') io.print(renderFindings(located, 'sarif'))
  else {
    if (plan !== undefined) io.print(renderText(cardModel(plan, en)))
    if (located.length > 0) io.print(`Findings\n\n${renderFindings(located, 'text')}`)
  }
  return count > 0 ? 1 : 0
}
