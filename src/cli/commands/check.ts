import { checkDocuments } from '../../rules/index.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { exitCodeOf, isAtLevel, locateFindings, renderFindings } from '../renderFindings.js'

/** `check`: what is wrong in documents as written. */
export async function runCheck(options: Options, io: CliIo): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('check: name a file or a folder to check')
  const sets = await readDocuments(options.paths, io)
  const findings = sets.flatMap(({ set, findings: read }) => [
    ...read,
    ...checkDocuments(set, { today: options.today }),
  ])
  const located = locateFindings(findings, sets)
  const count = located.filter((finding) => isAtLevel(finding, options.level)).length
  const text = renderFindings(located, options.format)
  if (text !== '') io.print(text)
  if (options.format === 'text') {
    const files = sets.reduce((sum, { texts }) => sum + texts.size, 0)
    const plural = (value: number, word: string) => `${value} ${word}${value === 1 ? '' : 's'}`
    io.print(
      `${plural(files, 'document')} read, ${plural(count, 'finding')} of level ${options.level} or above.`,
    )
  }
  return exitCodeOf(located, options.level)
}
