import { type Cue, cueList, renderWebVtt } from '../../card/index.js'
import { en } from '../../message/en/index.js'
import { planFiles } from '../chooseMachine.js'
import type { CliIo, ExitCode } from '../cliIo.js'
import type { Options } from '../readOptions.js'
import { renderFindings } from '../renderFindings.js'
import { safeLine } from '../safeLine.js'

/** `cues`: what a presenter shows, says and puts on screen. */
export async function printCueList(options: Options, io: CliIo): Promise<ExitCode> {
  const { planned, findings, code } = await planFiles('cues', options, io)
  if (findings.length > 0) io.printError(renderFindings(findings, 'text'))
  if (planned !== undefined) {
    const cues = cueList(planned.value, en)
    if (options.format === 'vtt') io.print(renderWebVtt(cues))
    else if (options.format === 'json') io.print(JSON.stringify(cues, null, 2))
    else io.print(cues.map(describeCue).join('\n'))
  }
  return code
}

function describeCue({ show, say, screen }: Cue, place: number): string {
  const shown = screen.length === 0 ? [] : [`    SCREEN ${screen.map(({ text }) => text).join(' · ')}`]
  return [`${place + 1}.  SHOW ${show}`, `    SAY ${say}`, ...shown, ''].map(safeLine).join('\n')
}
