import { cardModel, renderText } from '../../card/index.js'
import { en } from '../../message/en/index.js'
import { planFiles } from '../chooseMachine.js'
import type { CliIo, ExitCode } from '../cliIo.js'
import type { Options } from '../readOptions.js'
import { renderFindings } from '../renderFindings.js'

/** `plan`: one visit, printed, then the findings. */
export async function runPlan(options: Options, io: CliIo): Promise<ExitCode> {
  const { planned, findings, code } = await planFiles('plan', options, io)
  if (options.format === 'json') io.print(JSON.stringify({ plan: planned?.value ?? null, findings }, null, 2))
  else if (options.format === 'sarif') io.print(renderFindings(findings, 'sarif'))
  else {
    if (planned !== undefined) io.print(renderText(cardModel(planned, en)))
    if (findings.length > 0) io.print(`Findings\n\n${renderFindings(findings, 'text')}`)
  }
  return code
}
