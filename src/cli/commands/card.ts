import { join } from 'node:path'
import { cardModel, renderHtml, renderMarkdown, renderShortCard, renderText } from '../../card/index.js'
import { en } from '../../message/en/index.js'
import { planFiles } from '../chooseMachine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { isAtLevel, locateFindings, renderFindings } from '../renderFindings.js'
import { writeOut } from '../writeOut.js'

/** `card`: the visit as files to print or paste. Nothing is written where a document cannot be read. */
export async function runCard(options: Options, io: CliIo): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('card: name the files or the folder of one machine')
  if (options.out === undefined) throw new UsageError('card: say where the cards go, with --out FOLDER')
  const sets = await readDocuments(options.paths, io)
  const { plan, findings } = planFiles(sets, options)
  const located = locateFindings(findings, sets)
  if (located.length > 0) io.printError(renderFindings(located, options.format))
  if (plan !== undefined) {
    const card = cardModel(plan, en)
    const base = join(options.out, plan.machine.log)
    const files: readonly (readonly [string, string])[] = [
      [`${base}.html`, renderHtml(card)],
      [`${base}.md`, renderMarkdown(card)],
      [`${base}.txt`, renderText(card)],
      [`${base}-short.html`, renderShortCard(card)],
    ]
    // All are made before the first is written: a fault leaves no half set behind.
    for (const [path, text] of files) await writeOut(path, text, io)
    io.print(`Card written: ${files.map(([path]) => path).join(', ')}`)
  }
  return located.some((finding) => isAtLevel(finding, options.level)) ? 1 : 0
}
