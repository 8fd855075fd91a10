import { type Comparison, compareProcedures } from '../../procedure/index.js'
import { listVariantDifferences } from '../../service/index.js'
import {
  diffSheets,
  type Leaf,
  type LeafChange,
  type ProcedureDocument,
  type SpecSheet,
} from '../../spec/index.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { locateFindings, renderFindings } from '../renderFindings.js'
import type { ExitCode } from '../runCommand.js'
import { safeLine } from '../safeLine.js'
import { UsageError } from '../usageError.js'
import type { World } from '../world.js'

/** `compare`: two sheets, two procedures, or the variants of one sheet. */
export async function runCompare(options: Options, world: World): Promise<ExitCode> {
  const sets = await readDocuments(options.paths, world)
  const reading = sets.flatMap(({ findings }) => findings)
  if (reading.some(({ severity }) => severity === 'error')) {
    world.complain(renderFindings(locateFindings(reading, sets), 'text'))
    return 1
  }
  const sheets = sets.flatMap(({ set }) => set.sheets.map(({ document }) => document))
  const procedures = sets.flatMap(({ set }) => set.procedures.map(({ document }) => document))
  if (procedures.length === 2) {
    const [first, second] = procedures
    const [sheet] = sheets.filter(({ id, revision }) =>
      procedures.every((procedure) => procedure.sheet.id === id && procedure.sheet.revision === revision),
    )
    if (first === undefined || second === undefined || sheet === undefined)
      throw new UsageError('compare: two procedures need the one sheet of both among the files')
    return printComparison(first, second, compareProcedures(first, second, sheet), options, world)
  }
  const [first, second] = sheets
  if (procedures.length > 0 || first === undefined || sheets.length > 2)
    throw new UsageError('compare: two sheets, two procedures with their sheet, or one sheet are wanted')
  return second === undefined
    ? printVariants(first, options, world)
    : printChanges(first, second, options, world)
}

function printComparison(
  first: ProcedureDocument,
  second: ProcedureDocument,
  found: Comparison,
  options: Options,
  world: World,
): ExitCode {
  if (options.format === 'json') world.print(JSON.stringify(found, null, 2))
  else {
    world.print(safeLine(`${first.id} -> ${second.id}`))
    for (const id of found.onlyFirst) world.print(safeLine(`removed step ${id}`))
    for (const id of found.onlySecond) world.print(safeLine(`added step ${id}`))
    for (const { path, first: before, second: after } of found.state)
      world.print(safeLine(`changed at the end ${path}: ${before} -> ${after}`))
    for (const code of found.findings.onlyFirst) world.print(`removed finding ${code}`)
    for (const code of found.findings.onlySecond) world.print(`added finding ${code}`)
    if (found.sameEffect) world.print('No difference in what they do.')
  }
  return found.sameEffect ? 0 : 1
}

function printChanges(from: SpecSheet, to: SpecSheet, options: Options, world: World): ExitCode {
  const difference = diffSheets(from, to)
  if (options.format === 'json') world.print(JSON.stringify(difference, null, 2))
  else {
    world.print(safeLine(`${from.id} ${from.revision} -> ${to.id} ${to.revision}`))
    for (const change of difference.leaves) world.print(safeLine(describeLeafChange(change)))
    for (const { change, path, from: before, to: after } of difference.facts)
      world.print(safeLine(`${change} ${path}: ${describeFact(before)} -> ${describeFact(after)}`))
    if (difference.leaves.length + difference.facts.length === 0) world.print('No difference.')
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

function printVariants(sheet: SpecSheet, options: Options, world: World): ExitCode {
  const differences = listVariantDifferences(sheet)
  if (options.format === 'json') world.print(JSON.stringify(differences, null, 2))
  else {
    for (const { path, variants } of differences) {
      world.print(path)
      for (const { variant, resolved } of variants)
        world.print(
          safeLine(
            `  ${variant}: ${resolved.kind === 'stated' ? describeLeaf(resolved.value) : resolved.kind}`,
          ),
        )
    }
    if (differences.length === 0) world.print('The variants have the same figures.')
  }
  return differences.length === 0 ? 0 : 1
}
