import { join } from 'node:path'
import { cardModel, renderHtml, renderMarkdown, renderText, shortenCard } from '../../card/index.js'
import { en } from '../../message/en/index.js'
import { planFiles } from '../chooseMachine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import type { Options } from '../readOptions.js'
import { renderFindings } from '../renderFindings.js'
import { writeOut } from '../writeOut.js'

/** `card`: the visit as files to print or paste. Nothing is written where a document cannot be read. */
export async function runCard(options: Options, io: CliIo): Promise<ExitCode> {
  if (options.out === undefined) throw new UsageError('card: name the folder for the cards with --out FOLDER')
  const { planned, findings, code } = await planFiles('card', options, io)
  if (findings.length > 0) io.printError(renderFindings(findings, options.format))
  if (planned !== undefined) {
    const card = cardModel(planned, en)
    const base = join(options.out, planned.value.machine.log)
    // All are made before the first is written, so that an error leaves no half set.
    const files: readonly (readonly [string, string])[] = [
      [`${base}.html`, renderHtml(card)],
      [`${base}.md`, renderMarkdown(card)],
      [`${base}.txt`, renderText(card)],
      [`${base}-short.html`, renderHtml(shortenCard(card))],
    ]
    for (const [path, text] of files) await writeOut(path, text, io)
    io.print(`Card written: ${files.map(([path]) => path).join(', ')}`)
  }
  return code
}
