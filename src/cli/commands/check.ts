import { checkDocuments } from '../../rules/index.js'
import { formatCount } from '../cleanLine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { type FoundFiles, findFiles } from '../findFiles.js'
import { readFoundFiles } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { chooseExitCode, isAtLevel, locateFindings, renderFindings } from '../renderFindings.js'

/** `check`: prints the errors in documents. */
export async function runCheck(options: Options, io: CliIo): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('check: name the files or folders to check')
  const foundFiles = await findFiles(options.paths, io, true)
  const sets = await readFoundFiles(foundFiles, io)
  const findings = sets.flatMap(({ set, findings: read }) => [
    ...read,
    ...checkDocuments(set, { today: options.today }),
  ])
  const locatedFindings = locateFindings(findings, sets)
  const count = locatedFindings.filter((finding) => isAtLevel(finding, options.level)).length
  const text = renderFindings(locatedFindings, options.format)
  if (text !== '') io.print(text)
  const fileCount = sets.reduce((sum, { texts }) => sum + texts.size, 0)
  const folderText =
    foundFiles.folders.size === 0 ? '' : ` from ${formatCount(foundFiles.folders.size, 'folder')}`
  // With --format json or sarif, the summary goes to standard error.
  const report = options.format === 'text' ? io.print : io.printError
  report(
    `${formatCount(fileCount, 'document')} read${folderText}, ${formatCount(count, 'finding')} of level ${options.level} or above.`,
  )
  const skipped = describeSkipped(foundFiles.skipped)
  if (skipped !== '') report(`Skipped: ${skipped}.`)
  return chooseExitCode(locatedFindings, options.level)
}

function describeSkipped({
  otherFiles,
  pipes,
  emptyFolders,
  unsearchedFolders,
}: FoundFiles['skipped']): string {
  const countedTexts: readonly (readonly [number, string])[] = [
    [otherFiles, `${formatCount(otherFiles, 'file')} neither .json nor .yaml`],
    [pipes, formatCount(pipes, 'pipe')],
    [emptyFolders, `${formatCount(emptyFolders, 'folder')} without documents`],
    [unsearchedFolders, `${formatCount(unsearchedFolders, 'folder')} hidden, linked or named node_modules`],
  ]
  return countedTexts
    .filter(([count]) => count > 0)
    .map(([, words]) => words)
    .join(', ')
}
