import { join } from 'node:path'
import {
  cardModel,
  type PlannedVisit,
  renderHtml,
  renderMarkdown,
  renderText,
  shortenCard,
  summariseVisit,
  wrapText,
} from '../../card/index.js'
import { planFromFiles } from '../chooseMachine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import type { Options } from '../readOptions.js'
import { renderFindings } from '../renderFindings.js'
import { writeOut } from '../writeOut.js'

/** `plan`: prints the answer to one visit, or with `--full` the whole plan; then the findings. */
export async function runPlan(options: Options, io: CommandIo): Promise<ExitCode> {
  const { planned, findings, exitCode } = await planFromFiles('plan', options, io)
  if (options.format === 'json') io.print(JSON.stringify({ plan: planned?.value ?? null, findings }, null, 2))
  else if (options.format === 'sarif') io.print(renderFindings(findings, 'sarif', io))
  else {
    const { columns: width = 80 } = io
    if (planned !== undefined)
      io.print(
        options.full
          ? renderText(cardModel(planned, io.catalogue), { width: Math.max(width, 20) })
          : writeAnswer(planned, width, io),
      )
    if (findings.length > 0)
      io.print(`${io.words.reports.findings}\n\n${renderFindings(findings, 'text', io)}`)
  }
  return exitCode
}

const writeAnswer = (planned: PlannedVisit, width: number, { words, catalogue }: CommandIo): string =>
  [...summariseVisit(planned, catalogue), words.reports.seeFull]
    .flatMap((line) => wrapText(line, width, '', '  '))
    .join('\n')

/** `card`: writes the plan as files to print or paste. Nothing is written if a document cannot be read. */
export async function runCard(options: Options, io: CommandIo): Promise<ExitCode> {
  if (options.paper === 'wall') return (await import('./wall.js')).runWallCards(options, io)
  if (options.paper !== 'visit') return (await import('./papers.js')).runPapers(options, io)
  if (options.out === undefined) throw new UsageError('nameCardFolder')
  const { planned, findings, exitCode } = await planFromFiles('card', options, io)
  if (findings.length > 0) io.printError(renderFindings(findings, options.format, io))
  if (planned === undefined) return exitCode
  const card = cardModel(planned, io.catalogue)
  const basePath = join(options.out, planned.value.machine.log)
  // Render all cards before writing any, so that an error never results in an incomplete set.
  const files: readonly (readonly [string, string])[] = [
    [`${basePath}.html`, renderHtml(card)],
    [`${basePath}.md`, renderMarkdown(card)],
    [`${basePath}.txt`, renderText(card)],
    [`${basePath}-short.html`, renderHtml(shortenCard(card))],
  ]
  for (const [path, text] of files) await writeOut(path, text, io)
  io.print(io.words.reports.cardWritten({ paths: files.map(([path]) => path).join(', ') }))
  return exitCode
}
