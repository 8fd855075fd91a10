import { resolve } from 'node:path'
import { checkDocuments } from '../../rules/index.js'
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
  if (options.paths.length === 0) throw new UsageError('nameFilesToCheck')
  if (options.dryRun && !options.fix) throw new UsageError('dryRunNeedsFix')
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
    for (const finding of locateFindings(findings, [fileSet], io)) foundFindings.push(finding)
    documentCount += fileSet.texts.size
  }
  const allFindings = sortFindings(foundFindings)
  const { marked, baselineText } = await acceptKnown(allFindings, options, io)
  const counted = marked.filter((finding) => isAtLevel(finding, options.level))
  const text = renderFindings(options.quiet ? counted : marked, options.format, io)
  if (text !== '') io.print(text)
  const { reports } = io.words
  summarise(
    reports.checked({
      documents: documentCount,
      folders: found.folders.size,
      findings: counted.length,
      level: options.level,
    }),
  )
  if (baselineText !== '') summarise(baselineText)
  const skipped = describeSkipped(found.skipped, io)
  if (skipped !== '') summarise(reports.skipped({ parts: skipped }))
  if (options.writeBaseline === undefined) return chooseExitCode(marked, options.level)
  await saveBaseline(options.writeBaseline, allFindings, io)
  summarise(reports.baselineWritten({ path: options.writeBaseline }))
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
    summarise(io.words.reports.noSafeFix)
    return new Map()
  }
  report(renderChanges(files))
  if (!dryRun) for (const file of files) await saveFixed(file, io)
  const count = files.reduce((sum, file) => sum + file.count, 0)
  const { fixed, canFix } = io.words.reports
  summarise((dryRun ? canFix : fixed)({ findings: count, files: files.length }))
  return new Map(dryRun ? [] : files.map(({ path, after }) => [path, after]))
}

async function saveFixed({ path, before, after }: FixedFile, io: CommandIo): Promise<void> {
  const makeText = async (old: string | undefined): Promise<string> => {
    if (old === before) return after
    throw new UsageError('changedMeanwhile', { path })
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
    baselineText: io.words.reports.baselineUsed({ accepted: count, unused }),
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

function describeSkipped(
  { otherFiles, pipes, emptyFolders, unsearchedFolders }: FoundFiles['skipped'],
  { words: { reports } }: CommandIo,
): string {
  const counts = [
    [otherFiles, reports.otherFiles],
    [pipes, reports.pipes],
    [emptyFolders, reports.emptyFolders],
    [unsearchedFolders, reports.unsearchedFolders],
  ] as const
  return counts
    .filter(([count]) => count > 0)
    .map(([count, write]) => write({ count }))
    .join(', ')
}
