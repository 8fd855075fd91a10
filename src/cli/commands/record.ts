import { en } from '../../message/en/index.js'
import { renderMessage } from '../../message/index.js'
import { appendRecord } from '../../record/index.js'
import { planFiles } from '../chooseMachine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { faultLines } from '../faultLines.js'
import { prefillRecord } from '../prefillRecord.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { exitCodeOf, locateFindings, renderFindings } from '../renderFindings.js'
import { safeLine } from '../safeLine.js'
import { saveLog } from '../saveLog.js'
import { writeOut } from '../writeOut.js'

/** `record`: appends a record of what was done to the log of its machine, and reports the mistakes and the open faults. */
export async function runRecord(options: Options, io: CliIo): Promise<ExitCode> {
  // With output for programs, the summary goes to standard error.
  const report = options.format === 'text' ? io.print : io.printError
  if (options.fromPlan) return writeFromPlan(options, io)
  if (options.services !== 'due' || options.ambient !== undefined)
    throw new UsageError('record: --service and --ambient are for --from-plan')
  const sets = await readDocuments(options.paths, io)
  const [read] = sets
  if (read === undefined || sets.length > 1)
    throw new UsageError(
      'record: name the record, its log, its sheet and the toolbox as files, or one folder',
    )
  const reading = read.findings
  if (reading.some(({ severity }) => severity === 'error')) {
    io.print(renderFindings(locateFindings(reading, sets), options.format))
    return 1
  }
  const [record] = read.set.records
  if (record === undefined || read.set.records.length > 1)
    throw new UsageError(`record: expected one record, found ${read.set.records.length}`)
  const log = read.set.logs.find(({ document }) => document.id === record.document.machine)
  if (log === undefined)
    throw new UsageError(`record: the log of machine ${record.document.machine} is not among the files`)
  const appended = appendRecord(record, read.set, { today: options.today })
  const located = locateFindings([...reading, ...appended.findings], sets)
  if (located.length > 0 || options.format !== 'text') io.print(renderFindings(located, options.format))
  if (!appended.ok) {
    const [refusal] = appended.findings
    report(
      refusal?.code === 'spec/id-used-twice'
        ? `Not appended: the log already has a record ${record.document.id}.`
        : `Not appended: the record is of another ${refusal?.code === 'record/other-sheet' ? 'sheet' : 'machine'}.`,
    )
    return 1
  }
  const { entries, faults } = appended.value
  for (const entry of entries)
    if (entry.done === 'no') report(safeLine(`Does not count. ${renderMessage(entry.reason, en)}`))
  for (const line of faultLines(faults)) report(line)
  const code = exitCodeOf(located, options.level)
  if (options.out === undefined) return code
  const { document } = record
  const saved = await saveLog(
    options.out,
    log.document,
    (current) =>
      current.records.some(({ id }) => id === document.id)
        ? undefined
        : { ...current, records: [...current.records, document] },
    io,
  )
  if (saved === undefined) {
    report(`Not appended: the log already has a record ${document.id}.`)
    return 1
  }
  report(`Appended to ${options.out}: ${document.id}, ${saved.records.length} records.`)
  return code
}

/** Writes the record of a planned visit, for the technician to change where the work was done in another way. */
async function writeFromPlan(options: Options, io: CliIo): Promise<ExitCode> {
  if (options.format !== 'text')
    throw new UsageError(`record --from-plan --format ${options.format}: the record is YAML to fill in`)
  if (options.out !== undefined && !/\.ya?ml$/i.test(options.out))
    throw new UsageError(`--out ${options.out}: expected a name that ends in .yaml or .yml`)
  const { planned, findings, code } = await planFiles('record', options, io)
  if (planned === undefined) {
    io.printError(renderFindings(findings, 'text'))
    return code
  }
  const record = prefillRecord(planned.value)
  if (options.out === undefined) io.print(record.trimEnd())
  else await writeOut(options.out, record, io, { isNew: true })
  io.printError(
    `Fill in each ?, change what was done in another way, delete what was not done. Then append it: record <record> <log> <sheet> --out LOG`,
  )
  return 0
}
