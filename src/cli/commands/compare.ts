import { type Comparison, compareProcedures } from '../../procedure/index.js'
import { listVariantDifferences } from '../../service/index.js'
import {
  diffSheets,
  type Leaf,
  type LeafChange,
  type ProcedureDocument,
  type SpecSheet,
} from '../../spec/index.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { reportReading } from '../renderFindings.js'
import { safeLine } from '../safeLine.js'

/** `compare`: two sheets, two procedures, or the variants of one sheet. */
export async function runCompare(options: Options, io: CliIo): Promise<ExitCode> {
  const sets = await readDocuments(options.paths, io)
  if (reportReading(sets, io)) return 1
  const sheets = sets.flatMap(({ set }) => set.sheets.map(({ document }) => document))
  const procedures = sets.flatMap(({ set }) => set.procedures.map(({ document }) => document))
  if (procedures.length === 2) {
    const [first, second] = procedures
    const [sheet] = sheets.filter(({ id, revision }) =>
      procedures.every((procedure) => procedure.sheet.id === id && procedure.sheet.revision === revision),
    )
    if (first === undefined || second === undefined || sheet === undefined)
      throw new UsageError('compare: expected the sheet of both procedures among the files')
    return printComparison(first, second, compareProcedures(first, second, sheet), options, io)
  }
  const [first, second] = sheets
  if (procedures.length > 0 || first === undefined || sheets.length > 2)
    throw new UsageError('compare: expected two sheets, two procedures with their sheet, or one sheet')
  return second === undefined ? printVariants(first, options, io) : printChanges(first, second, options, io)
}

function printComparison(
  first: ProcedureDocument,
  second: ProcedureDocument,
  found: Comparison,
  options: Options,
  io: CliIo,
): ExitCode {
  if (options.format === 'json') io.print(JSON.stringify(found, null, 2))
  else {
    io.print(safeLine(`${first.id} -> ${second.id}`))
    for (const id of found.onlyFirst) io.print(safeLine(`removed step ${id}`))
    for (const id of found.onlySecond) io.print(safeLine(`added step ${id}`))
    for (const { path, first: before, second: after } of found.state)
      io.print(safeLine(`changed final state ${path}: ${before} -> ${after}`))
    for (const code of found.findings.onlyFirst) io.print(`removed finding ${code}`)
    for (const code of found.findings.onlySecond) io.print(`added finding ${code}`)
    if (found.verdict === 'same') io.print('Both procedures have the same effect.')
  }
  return found.verdict === 'same' ? 0 : 1
}

function printChanges(from: SpecSheet, to: SpecSheet, options: Options, io: CliIo): ExitCode {
  const difference = diffSheets(from, to)
  if (options.format === 'json') io.print(JSON.stringify(difference, null, 2))
  else {
    io.print(safeLine(`${from.id} ${from.revision} -> ${to.id} ${to.revision}`))
    for (const change of difference.leaves) io.print(safeLine(describeLeafChange(change)))
    for (const { change, path, from: before, to: after } of difference.facts)
      io.print(safeLine(`${change} ${path}: ${describeFact(before)} -> ${describeFact(after)}`))
    if (difference.leaves.length + difference.facts.length === 0) io.print('No difference.')
  }
  return difference.leaves.length + difference.facts.length === 0 ? 0 : 1
}

function describeFact(fact: unknown): string {
  return fact === undefined ? 'nothing' : JSON.stringify(fact)
}

function describeLeafChange({ change, of, from, to }: LeafChange): string {
  const parts = [from, to].map((at) => (at === undefined ? 'nothing' : describeLeaf(at.leaf)))
  return `${change} ${of}: ${parts.join(' -> ')}`
}

function describeLeaf(leaf: Leaf): string {
  const { source: _source, ...rest } = leaf
  return JSON.stringify(rest)
}

function printVariants(sheet: SpecSheet, options: Options, io: CliIo): ExitCode {
  const differences = listVariantDifferences(sheet)
  if (options.format === 'json') io.print(JSON.stringify(differences, null, 2))
  else {
    for (const { path, variants } of differences) {
      io.print(path)
      for (const { variant, resolved } of variants)
        io.print(
          safeLine(
            `  ${variant}: ${resolved.kind === 'stated' ? describeLeaf(resolved.value) : resolved.kind}`,
          ),
        )
    }
    if (differences.length === 0) io.print('The variants have the same figures.')
  }
  return differences.length === 0 ? 0 : 1
}
