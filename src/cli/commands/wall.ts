import { join } from 'node:path'
import { dropUndefined, type Finding } from '../../base/index.js'
import { renderHtml, renderMarkdown, wallModel } from '../../card/index.js'
import { checkDocuments } from '../../rules/index.js'
import { wallFacts } from '../../service/index.js'
import type { Identity, SpecSheet } from '../../spec/index.js'
import { chooseToolboxAndStock, listMachines } from '../chooseMachine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import { type FileSet, readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { chooseExitCode, locateFindings, renderFindings } from '../renderFindings.js'
import { writeOut } from '../writeOut.js'

/** A wall card to write. */
interface WallTask {
  readonly name: string
  readonly fileSet: FileSet
  readonly sheet: SpecSheet
  readonly identity: Identity
}

/** Number of cards between two progress messages. */
const PROGRESS_STEP = 50

/** `card --paper wall`: writes a card for each variant of each sheet, or with `--machine` for the machine of a log. */
export async function runWallCards(options: Options, io: CommandIo): Promise<ExitCode> {
  const { paths, out, iso6789, tolerancePercent, raiseOn } = options
  if (out === undefined) throw new UsageError('nameCardFolder')
  if (paths.length === 0) throw new UsageError('nameSheets')
  const sets = await readDocuments(paths, io)
  const readFindings = sets.flatMap(({ findings }) => findings)
  const report = (findings: readonly Finding[]): ExitCode => {
    const located = locateFindings(findings, sets, io)
    if (located.length > 0) io.printError(renderFindings(located, options.format, io))
    return chooseExitCode(located, options.level)
  }
  if (readFindings.some(({ severity }) => severity === 'error')) return report(readFindings)
  const tasks = listTasks(sets, options)
  const findings = [
    ...readFindings,
    ...sets.flatMap(({ set }) => checkDocuments(set, { today: options.today })),
  ]
  const { wallProgress, wallWritten } = io.words.reports
  let written = 0
  for (const { name, fileSet, sheet, identity } of tasks) {
    const input = { sheet, identity, ...chooseToolboxAndStock(fileSet) }
    const facts = wallFacts(input, dropUndefined({ iso6789, tolerancePercent, raiseOn }))
    findings.push(...facts.findings)
    if (!facts.ok) continue
    const card = wallModel(facts.value, io.catalogue)
    await writeOut(join(out, `${name}.html`), renderHtml(card), io)
    await writeOut(join(out, `${name}.md`), renderMarkdown(card), io)
    written += 1
    if (written % PROGRESS_STEP === 0) io.printError(wallProgress({ written, all: tasks.length }))
  }
  const exitCode = report(findings)
  io.print(wallWritten({ written, all: tasks.length, folder: out }))
  return written < tasks.length ? 1 : exitCode
}

function listTasks(sets: readonly FileSet[], options: Options): readonly WallTask[] {
  if (options.machine !== undefined)
    return listMachines(sets, options).map(({ log, sheet, fileSet }) => ({
      name: `${log.id}-wall`,
      fileSet,
      sheet,
      identity: log.identity,
    }))
  const tasks = sets.flatMap((fileSet) =>
    fileSet.set.sheets.flatMap(({ document: sheet }) => {
      const variants = Object.keys(sheet.machine.variants)
      return variants.map((variant) => ({
        name: variants.length === 1 ? `${sheet.id}-wall` : `${sheet.id}-${variant}-wall`,
        fileSet,
        sheet,
        identity: { variant },
      }))
    }),
  )
  if (tasks.length === 0) throw new UsageError('noSheet', { command: 'card' })
  const names = tasks.map(({ name }) => name)
  const duplicate = names.find((name, place) => names.indexOf(name) !== place)
  if (duplicate !== undefined) throw new UsageError('twoSheetsOneFile', { name: `${duplicate}.html` })
  return tasks
}
