import { type Comparison, compareProcedures } from '../../procedure/index.js'
import { listVariantDifferences, type VariantDifference } from '../../service/index.js'
import { diffSheets, type Leaf, type LeafChange } from '../../spec/index.js'
import { cleanLine } from '../cleanLine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import { listDocuments, readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { reportReadErrors } from '../renderFindings.js'

/** `compare`: compares two sheets, two procedures, or the variants of one sheet. */
export async function runCompare(options: Options, io: CommandIo): Promise<ExitCode> {
  const sets = await readDocuments(options.paths, io)
  if (reportReadErrors(sets, io)) return 1
  const sheets = listDocuments(sets, (set) => set.sheets)
  const procedures = listDocuments(sets, (set) => set.procedures)
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
      throw new UsageError('compare: expected the sheet of both procedures among the files')
    const comparison = compareProcedures(first, second, sheet)
    const lines = [`${first.id} -> ${second.id}`, ...describeComparison(comparison)]
    return print(comparison, lines, 'Both procedures have the same effect.', comparison.verdict === 'same')
  }
  const [oldSheet, newSheet] = sheets
  if (procedures.length > 0 || oldSheet === undefined || sheets.length > 2)
    throw new UsageError('compare: expected two sheets, two procedures with their sheet, or one sheet')
  if (newSheet === undefined) {
    const comparison = listVariantDifferences(oldSheet)
    return print(
      comparison,
      comparison.flatMap(describeVariants),
      'The variants have the same figures.',
      comparison.length === 0,
    )
  }
  const comparison = diffSheets(oldSheet, newSheet)
  const changes = [
    ...comparison.leaves.map(describeLeafChange),
    ...comparison.facts.map(
      (fact) => `${fact.change} ${fact.path}: ${describeFact(fact.from)} -> ${describeFact(fact.to)}`,
    ),
  ]
  const heading = `${oldSheet.id} ${oldSheet.revision} -> ${newSheet.id} ${newSheet.revision}`
  return print(comparison, [heading, ...changes], 'No difference.', changes.length === 0)
}

function describeComparison({ onlyFirst, onlySecond, state, findings }: Comparison): readonly string[] {
  return [
    ...onlyFirst.map((id) => `removed step ${id}`),
    ...onlySecond.map((id) => `added step ${id}`),
    ...state.map(({ path, first, second }) => `changed final state ${path}: ${first} -> ${second}`),
    ...findings.onlyFirst.map((code) => `removed finding ${code}`),
    ...findings.onlySecond.map((code) => `added finding ${code}`),
  ]
}

function describeFact(fact: unknown): string {
  return fact === undefined ? 'nothing' : JSON.stringify(fact)
}

function describeLeafChange({ change, of, from, to }: LeafChange): string {
  const parts = [from, to].map((side) => (side === undefined ? 'nothing' : describeLeaf(side.leaf)))
  return `${change} ${of}: ${parts.join(' -> ')}`
}

function describeLeaf(leaf: Leaf): string {
  const { source: _source, ...figure } = leaf
  return JSON.stringify(figure)
}

function describeVariants({ path, variants }: VariantDifference): readonly string[] {
  const lines = variants.map(({ variant, resolved }) => {
    return `  ${variant}: ${resolved.kind === 'stated' ? describeLeaf(resolved.value) : resolved.kind}`
  })
  return [path, ...lines]
}
