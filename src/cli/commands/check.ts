import { checkDocuments } from '../../rules/index.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { type FoundFiles, findFiles } from '../findFiles.js'
import { plural } from '../plural.js'
import { readFound } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { exitCodeOf, isAtLevel, locateFindings, renderFindings } from '../renderFindings.js'

/** `check`: prints the mistakes in documents. */
export async function runCheck(options: Options, io: CliIo): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('check: name a file or a folder to check')
  const found = await findFiles(options.paths, io, true)
  const sets = await readFound(found, io)
  const findings = sets.flatMap(({ set, findings: read }) => [
    ...read,
    ...checkDocuments(set, { today: options.today }),
  ])
  const located = locateFindings(findings, sets)
  const count = located.filter((finding) => isAtLevel(finding, options.level)).length
  const text = renderFindings(located, options.format)
  if (text !== '') io.print(text)
  const files = sets.reduce((sum, { texts }) => sum + texts.size, 0)
  const from = found.folders.size === 0 ? '' : ` from ${plural(found.folders.size, 'folder')}`
  // With output for programs, the summary goes to standard error.
  const report = options.format === 'text' ? io.print : io.printError
  report(
    `${plural(files, 'document')} read${from}, ${plural(count, 'finding')} of level ${options.level} or above.`,
  )
  const skipped = describeSkipped(found.skipped)
  if (skipped !== '') report(`Skipped: ${skipped}.`)
  return exitCodeOf(located, options.level)
}

function describeSkipped({ others, pipes, emptyFolders, notSearched }: FoundFiles['skipped']): string {
  const counted: readonly (readonly [number, string])[] = [
    [others, `${plural(others, 'file')} neither .json nor .yaml`],
    [pipes, plural(pipes, 'pipe')],
    [emptyFolders, `${plural(emptyFolders, 'folder')} without documents`],
    [notSearched, `${plural(notSearched, 'folder')} hidden, linked or named node_modules`],
  ]
  return counted
    .filter(([count]) => count > 0)
    .map(([, words]) => words)
    .join(', ')
}
