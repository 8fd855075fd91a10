import { resolve } from 'node:path'
import { checkDocuments } from '../../rules/index.js'
import { formatCount } from '../cleanLine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import { type FoundFiles, findFiles } from '../findFiles.js'
import type { FixedFile } from '../fixFiles.js'
import type { LocatedFinding } from '../makeLocator.js'
import { readSets } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { chooseExitCode, isAtLevel, locateFindings, renderFindings, sortFindings } from '../renderFindings.js'
import { writeOut } from '../writeOut.js'

/** `check`: prints the errors in documents, and corrects those that are plain slips. */
export async function runCheck(options: Options, io: CommandIo): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('check: name the files or folders to check')
  if (options.dryRun && !options.fix) throw new UsageError('check: --dry-run needs --fix')
  const baselinePaths = [options.baseline, options.writeBaseline].filter((path) => path !== undefined)
  const found = withoutFiles(await findFiles(options.paths, io, true), baselinePaths)
  // With --format json or sarif, the summary goes to standard error.
  const report = options.format === 'text' ? io.print : io.printError
  const summarise = options.quiet ? () => undefined : report

  const fixedTexts = options.fix ? await fix(found, options, io, { report, summarise }) : new Map()
  const readText = async (path: string): Promise<string> => fixedTexts.get(path) ?? io.readText(path)
  const foundFindings: LocatedFinding[] = []
  let documentCount = 0
  // Each set is dropped before the next: thousands of folders need the memory of one.
  for await (const fileSet of readSets(found, { ...io, readText })) {
    const findings = [...fileSet.findings, ...checkDocuments(fileSet.set, { today: options.today })]
    for (const finding of locateFindings(findings, [fileSet], io.catalogue)) foundFindings.push(finding)
    documentCount += fileSet.texts.size
  }
  const allFindings = sortFindings(foundFindings)
  const { marked, baselineText } = await acceptKnown(allFindings, options, io)
  const counted = marked.filter((finding) => isAtLevel(finding, options.level))
  const text = renderFindings(options.quiet ? counted : marked, options.format)
  if (text !== '') io.print(text)
  summarise(describeReading(documentCount, found, counted.length, options))
  if (baselineText !== '') summarise(baselineText)
  const skipped = describeSkipped(found.skipped)
  if (skipped !== '') summarise(`Skipped: ${skipped}.`)
  if (options.writeBaseline === undefined) return chooseExitCode(marked, options.level)
  await saveBaseline(options.writeBaseline, allFindings, io)
  summarise(`Baseline written to ${options.writeBaseline}.`)
  return 0
}

/** The baseline may be in a folder that is checked. */
function withoutFiles(found: FoundFiles, paths: readonly string[]): FoundFiles {
  const excluded = new Set(paths.map((path) => resolve(path)))
  if (excluded.size === 0) return found
  const isIncluded = (path: string): boolean => !excluded.has(resolve(path))
  const folders = [...found.folders].map(([folder, files]) => [folder, files.filter(isIncluded)] as const)
  return { ...found, files: found.files.filter(isIncluded), folders: new Map(folders) }
}

interface Reports {
  readonly report: (text: string) => void
  /** Nothing with --quiet. */
  readonly summarise: (text: string) => void
}

/** Prints the changes and writes them, unless it is a dry run. Returns the texts that were written. */
async function fix(
  found: FoundFiles,
  { today, dryRun = false }: Options,
  io: CommandIo,
  { report, summarise }: Reports,
): Promise<ReadonlyMap<string, string>> {
  const { fixFiles, renderChanges } = await import('../fixFiles.js')
  const files = await fixFiles(found, io, today)
  if (files.length === 0) {
    summarise('No finding with a safe fix.')
    return new Map()
  }
  report(renderChanges(files))
  if (!dryRun) for (const file of files) await saveFixed(file, io)
  const count = files.reduce((sum, file) => sum + file.count, 0)
  const where = `${formatCount(count, 'finding')} in ${formatCount(files.length, 'file')}`
  const what = dryRun ? `Can fix ${where}; nothing was written.` : `Fixed ${where}.`
  summarise(`${what} Compare each change with the machine's manual.`)
  return new Map(dryRun ? [] : files.map(({ path, after }) => [path, after]))
}

async function saveFixed({ path, before, after }: FixedFile, io: CommandIo): Promise<void> {
  const makeText = async (old: string | undefined): Promise<string> => {
    if (old === before) return after
    throw new UsageError(`${path} was changed by another program meanwhile; try again`)
  }
  await writeOut(path, makeText, io, { isCorrection: true })
}

/** Marks the findings of the baseline, if there is one. */
async function acceptKnown(
  findings: readonly LocatedFinding[],
  { baseline }: Options,
  io: CommandIo,
): Promise<{ readonly marked: readonly LocatedFinding[]; readonly baselineText: string }> {
  if (baseline === undefined) return { marked: findings, baselineText: '' }
  const { markKnown, readBaseline } = await import('../baseline.js')
  const { marked, unused } = markKnown(findings, await readBaseline(baseline, io))
  const count = marked.filter(({ accepted }) => accepted).length
  return {
    marked,
    baselineText: `Baseline: ${formatCount(count, 'finding')} accepted, ${unused} no longer found.`,
  }
}

async function saveBaseline(path: string, findings: readonly LocatedFinding[], io: CommandIo): Promise<void> {
  const { parseBaseline, writeBaseline } = await import('../baseline.js')
  const makeText = async (old: string | undefined): Promise<string> => {
    if (old !== undefined && old.trim() !== '') parseBaseline(path, old)
    return writeBaseline(findings)
  }
  await writeOut(path, makeText, io)
}

function describeReading(
  documentCount: number,
  { folders }: FoundFiles,
  count: number,
  { level }: Options,
): string {
  const folderText = folders.size === 0 ? '' : ` from ${formatCount(folders.size, 'folder')}`
  return `${formatCount(documentCount, 'document')} read${folderText}, ${formatCount(count, 'finding')} of level ${level} or above.`
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
