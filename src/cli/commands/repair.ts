import { type Cure, dropUndefined } from '../../base/index.js'
import { repairProcedure } from '../../procedure/index.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { findSheet, readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { exitCodeOf, locateFindings, renderFindings, reportReading } from '../renderFindings.js'
import { safeLine } from '../safeLine.js'
import { writeOut } from '../writeOut.js'

/** `repair`: prints the fewest changes that make a procedure valid. */
export async function runRepair(options: Options, io: CliIo): Promise<ExitCode> {
  const sets = await readDocuments(options.paths, io)
  if (reportReading(sets, io)) return 1
  const procedures = sets.flatMap(({ set }) => set.procedures.map((one) => ({ ...one, set })))
  const [only] = procedures
  if (only === undefined || procedures.length > 1)
    throw new UsageError(`repair: expected one procedure, found ${procedures.length}`)
  const { document, set } = only
  const sheets = set.sheets.map((one) => one.document)
  const sheet = findSheet(sheets, document.sheet)
  if (sheet === undefined)
    throw new UsageError(
      `repair: the sheet ${document.sheet.id} revision ${document.sheet.revision} is not among the files`,
    )
  const { procedure, applied, left } = repairProcedure(document, sheet)
  const text = options.format === 'text'
  if (text)
    io.print(applied.length === 0 ? 'Nothing to fix.' : `Changes:\n${applied.map(describeCure).join('\n')}`)
  const open = left.map((finding) => {
    return { ...finding, document: dropUndefined({ ...finding.document, name: only.name }) }
  })
  const located = locateFindings(open, [])
  if (!text) io.print(JSON.stringify({ applied, left: located, procedure }, null, 2))
  else if (open.length > 0) io.print(renderFindings(located, 'text'))
  if (options.out !== undefined) {
    await writeOut(options.out, `${JSON.stringify(procedure, null, 2)}\n`, io)
    const report = text ? io.print : io.printError
    report(`Written: ${options.out}`)
  }
  return exitCodeOf(located, options.level)
}

function describeCure(cure: Cure): string {
  if (cure.op === 'remove') return `  remove ${cure.path}`
  if (cure.op === 'move') return `  move ${cure.from} to ${cure.path}`
  return safeLine(`  ${cure.op} ${cure.path}: ${JSON.stringify(cure.value)}`)
}
