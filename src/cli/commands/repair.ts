import { applyPatch, dropUndefined, type Fix, splitPointer } from '../../base/index.js'
import { renderMessage } from '../../message/index.js'
import { type Repair, rankHarm, repairProcedure } from '../../procedure/index.js'
import type { ProcedureDocument, Step } from '../../spec/index.js'
import { cleanLine } from '../cleanLine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import { findSheet, readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { chooseExitCode, locateFindings, renderFindings, reportReadErrors } from '../renderFindings.js'
import { writeOut } from '../writeOut.js'

/**
 * `repair`: corrects a procedure and shows dangerous mistakes first, then other corrections, then remaining
 * mistakes.
 */
export async function runRepair(options: Options, io: CommandIo): Promise<ExitCode> {
  const sets = await readDocuments(options.paths, io)
  if (reportReadErrors(sets, io)) return 1
  const procedures = sets.flatMap(({ set }) => set.procedures.map((named) => ({ ...named, set })))
  const [only] = procedures
  if (only === undefined || procedures.length > 1)
    throw new UsageError('oneProcedure', { given: 'repair', count: procedures.length })
  const { document, set } = only
  const sheets = set.sheets.map((named) => named.document)
  const sheet = findSheet(sheets, document.sheet)
  if (sheet === undefined)
    throw new UsageError('sheetOfProcedureMissing', {
      id: document.sheet.id,
      revision: document.sheet.revision,
    })
  const repair = repairProcedure(document, sheet)
  const { procedure, applied, fixed, left, stopped } = repair
  const text = options.format === 'text'
  if (text) io.print(describeRepair(document, repair, io))
  const openFindings = left.map((finding) => {
    return { ...finding, document: dropUndefined({ ...finding.document, name: only.name }) }
  })
  const locatedFindings = locateFindings(openFindings, [], io)
  if (!text) io.print(JSON.stringify({ stopped, applied, fixed, left: locatedFindings, procedure }, null, 2))
  else if (openFindings.length > 0) io.print(renderFindings(locatedFindings, 'text', io))
  if (options.out !== undefined) {
    await writeOut(options.out, `${JSON.stringify(procedure, null, 2)}\n`, io)
    const report = text ? io.print : io.printError
    report(io.words.reports.written({ path: options.out }))
  }
  return chooseExitCode(locatedFindings, options.level)
}

/** Dangerous and other corrections, the changes, and why the repair ended. */
function describeRepair(
  document: ProcedureDocument,
  { applied, fixed, left, stopped }: Repair,
  { words, catalogue }: CommandIo,
): string {
  const { reports, repairEnds } = words
  if (applied.length === 0) return left.length === 0 ? reports.nothingToFix : reports.noChangeHelps
  const listFixed = (title: string, hasRank: (rank: number) => boolean) => {
    const texts = fixed
      .filter(({ code }) => hasRank(rankHarm(code)))
      .map((finding) => renderMessage(finding, catalogue))
    return texts.length === 0 ? [] : [title, ...texts.map((text) => cleanLine(`  ${text}`))]
  }
  const filledCount = fixed.filter(({ code }) => rankHarm(code) === 4).length
  return [
    ...listFixed(reports.dangerousFixed, (rank) => rank < 2),
    ...listFixed(reports.alsoFixed, (rank) => rank === 2 || rank === 3),
    ...(filledCount === 0 ? [] : [reports.filledIn, `  ${reports.filledCount({ count: filledCount })}`]),
    stopped === 'rebuilt' ? reports.rebuilt : reports.changes,
    ...listStepChanges(document, applied),
    `  ${reports.signs}`,
    repairEnds[stopped],
  ].join('\n')
}

/**
 * Old and new steps in one list, near the changes. Numbers start from 1; a removed step has its old number.
 */
function listStepChanges(document: ProcedureDocument, applied: readonly Fix[]): readonly string[] {
  const lines: { mark: ' ' | '-' | '+' | '*'; step: Step }[] = document.steps.map((step) => ({
    mark: ' ',
    step,
  }))
  const listCurrentLines = () => lines.filter(({ mark }) => mark !== '-')
  let current = document
  for (const fix of applied) {
    const place = Number(splitPointer(fix.path)?.[1])
    const from = fix.op === 'move' ? Number(splitPointer(fix.from)?.[1]) : place
    const isWholeStep = splitPointer(fix.path)?.length === 2
    const oldLine = listCurrentLines()[from]
    current = applyPatch(current, [fix]) as ProcedureDocument
    const step = current.steps[place]
    if (oldLine !== undefined && (fix.op === 'remove' || fix.op === 'move') && isWholeStep) {
      if (oldLine.mark === '+') lines.splice(lines.indexOf(oldLine), 1)
      else oldLine.mark = '-'
    }
    if (step === undefined) continue
    if ((fix.op === 'add' || fix.op === 'move') && isWholeStep) {
      const nextLine = listCurrentLines()[place]
      lines.splice(nextLine === undefined ? lines.length : lines.indexOf(nextLine), 0, { mark: '+', step })
    } else if (oldLine !== undefined && (fix.op === 'replace' || !isWholeStep)) {
      oldLine.step = step
      if (oldLine.mark === ' ') oldLine.mark = '*'
    }
  }
  let [oldNumber, newNumber] = [0, 0]
  return lines.flatMap(({ mark, step }, index) => {
    if (mark !== '+') oldNumber += 1
    if (mark !== '-') newNumber += 1
    // Steps far from every change are omitted.
    const neighbours = lines.slice(Math.max(0, index - 1), index + 2)
    if (neighbours.every((line) => line.mark === ' '))
      return lines[index - 1]?.mark === ' ' && index > 0 ? [] : '     ...'
    const { id, do: action, on, at } = step
    const part = [on, at?.instance, at?.wheelMark].filter((word) => word !== undefined)
    const place = String(mark === '-' ? oldNumber : newNumber).padStart(4)
    return cleanLine(`  ${mark}${place}  ${[id, action, ...part].join('  ')}`)
  })
}
