import { join } from 'node:path'
import type { Cue } from '../../card/index.js'
import {
  cueList,
  paperModel,
  renderHtml,
  renderMarkdown,
  renderText,
  renderWebVtt,
} from '../../card/index.js'
import { listVariantDifferences } from '../../service/index.js'
import { planFromFiles } from '../chooseMachine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import type { Options } from '../readOptions.js'
import { renderFindings } from '../renderFindings.js'
import { writeOut } from '../writeOut.js'

/** `cues`: prints the cue sheet of a visit, or writes it with its captions. */
export async function runCues(options: Options, io: CommandIo): Promise<ExitCode> {
  const { format, out, starts } = options
  if (format === 'vtt' && out === undefined && starts === undefined) throw new UsageError('captionsNeedTimes')
  const { planned, sheet, findings, exitCode } = await planFromFiles('cues', options, io)
  if (findings.length > 0) io.printError(renderFindings(findings, 'text', io))
  if (planned === undefined) return exitCode
  const plan = planned.value
  const cues = cueList(plan, io.catalogue, sheet === undefined ? [] : listVariantDifferences(sheet))
  const paper = paperModel({ kind: 'cues', plan, cues }, io.catalogue)
  if (out === undefined) {
    const texts = {
      vtt: () => writeCaptions(cues, starts ?? []),
      json: () => JSON.stringify(cues, null, 2),
      html: () => renderHtml(paper),
      markdown: () => renderMarkdown(paper),
      text: () => renderText(paper, { width: Math.max(io.columns ?? 80, 20) }),
    }
    const known = format === 'sarif' || format === 'csv' || format === 'summary' ? 'text' : format
    io.print(texts[known]().trimEnd())
    return exitCode
  }
  const basePath = join(out, plan.machine.log)
  const files: readonly (readonly [string, string])[] = [
    [`${basePath}-cues.html`, renderHtml(paper)],
    [`${basePath}-cues.md`, renderMarkdown(paper)],
    [`${basePath}-cues.txt`, renderText(paper)],
    ...(starts === undefined
      ? cues.map((cue, index) => {
          const number = String(index + 1).padStart(2, '0')
          return [`${basePath}-scene-${number}.vtt`, writeCaptions([cue], [0])] as const
        })
      : [[`${basePath}.vtt`, writeCaptions(cues, starts)] as const]),
  ]
  for (const [path, text] of files) await writeOut(path, text, io)
  io.print(io.words.reports.cuesWritten({ paths: files.map(([path]) => path).join(', ') }))
  return exitCode
}

/** The captions; times that do not fit are an error of the command line. */
function writeCaptions(cues: readonly Cue[], starts: readonly number[]): string {
  if (starts.length !== cues.length)
    throw new UsageError('startsCount', { scenes: cues.length, starts: starts.length })
  try {
    return renderWebVtt(cues, starts)
  } catch (error) {
    if (!(error instanceof RangeError)) throw error
    const [, place] = /^starts\[(\d+)\]/.exec(error.message) ?? []
    throw new UsageError('startsTooEarly', { start: formatStart(starts[Number(place)] ?? 0) })
  }
}

/** `1:02:03.5`, as the user may write it. */
function formatStart(seconds: number): string {
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor((seconds % 3600) / 60)]
  const rest = String(Number((seconds % 60).toFixed(3)))
  const parts = [hours, String(minutes).padStart(2, '0'), rest.replace(/^\d(?!\d)/, '0$&')]
  return parts.join(':').replace(/^0:0?/, '')
}
