import type { Cure } from '../../base/index.js'
import { repairProcedure } from '../../procedure/index.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { isAtLevel, locateFindings, renderFindings } from '../renderFindings.js'
import { safeLine } from '../safeLine.js'
import { writeOut } from '../writeOut.js'

/** `repair`: the smallest mend of a writer's procedure. */
export async function runRepair(options: Options, io: CliIo): Promise<ExitCode> {
  const sets = await readDocuments(options.paths, io)
  const reading = sets.flatMap(({ findings }) => findings)
  if (reading.some(({ severity }) => severity === 'error')) {
    io.printError(renderFindings(locateFindings(reading, sets), 'text'))
    return 1
  }
  const procedures = sets.flatMap(({ set }) => set.procedures.map((one) => ({ ...one, set })))
  const [only] = procedures
  if (only === undefined || procedures.length > 1)
    throw new UsageError(`repair: one procedure is wanted, and there are ${procedures.length}`)
  const { document, set } = only
  const sheet = set.sheets.find(
    ({ document: { id, revision } }) => id === document.sheet.id && revision === document.sheet.revision,
  )
  if (sheet === undefined)
    throw new UsageError(
      `repair: the sheet ${document.sheet.id} revision ${document.sheet.revision} is not among the files`,
    )
  const { procedure, applied, left } = repairProcedure(document, sheet.document)
  const text = options.format === 'text'
  if (text)
    io.print(applied.length === 0 ? 'Nothing to mend.' : `Mends:\n${applied.map(describeCure).join('\n')}`)
  const name = only.name === undefined ? {} : { name: only.name }
  const open = left.map((finding) => ({ ...finding, document: { ...finding.document, ...name } }))
  const located = locateFindings(open, [])
  if (!text) io.print(JSON.stringify({ applied, left: located, procedure }, null, 2))
  else if (open.length > 0) io.print(renderFindings(located, 'text'))
  if (options.out !== undefined) {
    await writeOut(options.out, `${JSON.stringify(procedure, null, 2)}\n`, io)
    const tell = text ? io.print : io.printError
    tell(`Written: ${options.out}`)
  }
  return located.some((finding) => isAtLevel(finding, options.level)) ? 1 : 0
}

function describeCure(cure: Cure): string {
  switch (cure.op) {
    case 'remove':
      return `  remove ${cure.path}`
    case 'move':
      return `  move ${cure.from} to ${cure.path}`
    default:
      return safeLine(`  ${cure.op} ${cure.path}: ${JSON.stringify(cure.value)}`)
  }
}
