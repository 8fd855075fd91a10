import { type Cue, cueList, renderWebVtt } from '../../card/index.js'
import { en } from '../../message/en/index.js'
import { planFiles } from '../chooseMachine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { isAtLevel, locateFindings, renderFindings } from '../renderFindings.js'
import { safeLine } from '../safeLine.js'

/** `cues`: what a presenter shows, says and puts on screen. */
export async function runCues(options: Options, io: CliIo): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('cues: name the files or the folder of one machine')
  const sets = await readDocuments(options.paths, io)
  const { plan, findings } = planFiles(sets, options)
  const located = locateFindings(findings, sets)
  if (located.length > 0) io.printError(renderFindings(located, 'text'))
  if (plan !== undefined) {
    const cues = cueList(plan, en)
    io.print(
      options.format === 'vtt'
        ? renderWebVtt(cues)
        : options.format === 'json'
          ? JSON.stringify(cues, null, 2)
          : cues.map(describeCue).join('\n'),
    )
  }
  return located.some((finding) => isAtLevel(finding, options.level)) ? 1 : 0
}

function describeCue({ show, say, screen }: Cue, place: number): string {
  const shown = screen.length === 0 ? [] : [`    SCREEN ${screen.map(({ text }) => text).join(' · ')}`]
  return [`${place + 1}.  SHOW ${show}`, `    SAY ${say}`, ...shown, ''].map(safeLine).join('\n')
}
