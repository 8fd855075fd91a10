import { type Comparison, compareProcedures } from '../../procedure/index.js'
import { listVariantDifferences, type VariantDifference } from '../../service/index.js'
import { diffSheets, type Leaf, type LeafChange } from '../../spec/index.js'
import { cleanLine } from '../cleanLine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import type { CliWords } from '../message/cliWords.js'
import { listDocuments, readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { reportReadErrors } from '../renderFindings.js'

/** `compare`: compares two sheets, two procedures, or the variants of one sheet. */
export async function runCompare(options: Options, io: CommandIo): Promise<ExitCode> {
  const sets = await readDocuments(options.paths, io)
  if (reportReadErrors(sets, io)) return 1
  const sheets = listDocuments(sets, (set) => set.sheets)
  const procedures = listDocuments(sets, (set) => set.procedures)
  const { reports, changes } = io.words
  const print = (
    comparison: unknown,
    lines: readonly string[],
    sameText: string,
    isSame: boolean,
  ): ExitCode => {
    if (options.format === 'json') io.print(JSON.stringify(comparison, null, 2))
    else for (const line of isSame ? [...lines, sameText] : lines) io.print(cleanLine(line))
    return isSame ? 0 : 1
  }
  if (procedures.length === 2) {
    const [first, second] = procedures
    const [sheet] = sheets.filter(({ id, revision }) =>
      procedures.every((procedure) => procedure.sheet.id === id && procedure.sheet.revision === revision),
    )
    if (first === undefined || second === undefined || sheet === undefined)
      throw new UsageError('noSharedSheet')
    const comparison = compareProcedures(first, second, sheet)
    const lines = [`${first.id} -> ${second.id}`, ...describeComparison(comparison, io.words)]
    return print(comparison, lines, reports.sameEffect, comparison.verdict === 'same')
  }
  const [oldSheet, newSheet] = sheets
  if (procedures.length > 0 || oldSheet === undefined || sheets.length > 2)
    throw new UsageError('nothingToCompare')
  if (newSheet === undefined) {
    const comparison = listVariantDifferences(oldSheet)
    return print(
      comparison,
      comparison.flatMap((difference) => describeVariants(difference, io.words)),
      reports.sameFigures,
      comparison.length === 0,
    )
  }
  const comparison = diffSheets(oldSheet, newSheet)
  const changeLines = [
    ...comparison.leaves.map((change) => describeLeafChange(change, io.words)),
    ...comparison.facts.map(({ change, path, from, to }) =>
      reports.labelled({
        label: `${changes[change]} ${path}`,
        value: `${describeFact(from, io.words)} -> ${describeFact(to, io.words)}`,
      }),
    ),
  ]
  const heading = `${oldSheet.id} ${oldSheet.revision} -> ${newSheet.id} ${newSheet.revision}`
  return print(comparison, [heading, ...changeLines], reports.noDifference, changeLines.length === 0)
}

function describeComparison(
  { onlyFirst, onlySecond, state, findings }: Comparison,
  { reports, changes: { added, removed } }: CliWords,
): readonly string[] {
  return [
    ...onlyFirst.map((id) => reports.step({ change: removed, id })),
    ...onlySecond.map((id) => reports.step({ change: added, id })),
    ...state.map(({ path, first, second }) =>
      reports.finalState({ path, first: String(first), second: String(second) }),
    ),
    ...findings.onlyFirst.map((code) => reports.finding({ change: removed, code })),
    ...findings.onlySecond.map((code) => reports.finding({ change: added, code })),
  ]
}

function describeFact(fact: unknown, { reports }: CliWords): string {
  return fact === undefined ? reports.nothingThere : JSON.stringify(fact)
}

function describeLeafChange({ change, of, from, to }: LeafChange, { reports, changes }: CliWords): string {
  const parts = [from, to].map((side) =>
    side === undefined ? reports.nothingThere : describeLeaf(side.leaf),
  )
  return reports.labelled({ label: `${changes[change]} ${of}`, value: parts.join(' -> ') })
}

function describeLeaf(leaf: Leaf): string {
  const { source: _source, ...figure } = leaf
  return JSON.stringify(figure)
}

function describeVariants({ path, variants }: VariantDifference, { reports }: CliWords): readonly string[] {
  const gaps = { 'not stated': reports.notStated, 'cannot tell': reports.cannotTell }
  const lines = variants.map(({ variant, resolved }) => {
    const value = resolved.kind === 'stated' ? describeLeaf(resolved.value) : gaps[resolved.kind]
    return `  ${reports.labelled({ label: variant, value })}`
  })
  return [path, ...lines]
}
