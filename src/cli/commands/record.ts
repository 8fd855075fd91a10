import { renderMessage } from '../../message/index.js'
import { appendRecord } from '../../record/index.js'
import { planFromFiles } from '../chooseMachine.js'
import { cleanLine } from '../cleanLine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import { describeFaults } from '../describeState.js'
import { prefillRecord } from '../prefillRecord.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { chooseExitCode, locateFindings, renderFindings } from '../renderFindings.js'
import { saveLog } from '../saveLog.js'
import { writeOut } from '../writeOut.js'

/** `record`: appends a service record to the log of its machine, and reports mistakes and open faults. */
export async function runRecord(options: Options, io: CommandIo): Promise<ExitCode> {
  // With output for programs, the summary goes to standard error.
  const report = options.format === 'text' ? io.print : io.printError
  if (options.fromPlan) return writeRecordFromPlan(options, io)
  if (options.services !== 'due' || options.ambient !== undefined)
    throw new UsageError('record: --service and --ambient can only be used with --from-plan')
  const sets = await readDocuments(options.paths, io)
  const [fileSet] = sets
  if (fileSet === undefined || sets.length > 1)
    throw new UsageError('record: name the record, its log, its sheet and the toolbox, or their folder')
  const readFindings = fileSet.findings
  if (readFindings.some(({ severity }) => severity === 'error')) {
    io.print(renderFindings(locateFindings(readFindings, sets, io.catalogue), options.format))
    return 1
  }
  const [record] = fileSet.set.records
  if (record === undefined || fileSet.set.records.length > 1)
    throw new UsageError(`record: expected one record, found ${fileSet.set.records.length}`)
  const log = fileSet.set.logs.find(({ document }) => document.id === record.document.machine)
  if (log === undefined)
    throw new UsageError(`record: the log of machine ${record.document.machine} is not among the files`)
  const appended = appendRecord(record, fileSet.set, { today: options.today })
  const locatedFindings = locateFindings([...readFindings, ...appended.findings], sets, io.catalogue)
  if (locatedFindings.length > 0 || options.format !== 'text')
    io.print(renderFindings(locatedFindings, options.format))
  if (!appended.ok) {
    const [refusal] = appended.findings
    report(
      refusal?.code === 'spec/id-used-twice'
        ? `Not appended: the log already has a record ${record.document.id}.`
        : `Not appended: the record is for another ${refusal?.code === 'record/other-sheet' ? 'sheet' : 'machine'}.`,
    )
    return 1
  }
  const { entries, faults } = appended.value
  for (const entry of entries)
    if (entry.done === 'no') report(cleanLine(`Does not count. ${renderMessage(entry.reason, io.catalogue)}`))
  for (const line of describeFaults(faults, io.catalogue)) report(line)
  const exitCode = chooseExitCode(locatedFindings, options.level)
  if (options.out === undefined) return exitCode
  const { document } = record
  const savedLog = await saveLog(
    options.out,
    log.document,
    (current) =>
      current.records.some(({ id }) => id === document.id)
        ? undefined
        : { ...current, records: [...current.records, document] },
    io,
  )
  if (savedLog === undefined) {
    report(`Not appended: the log already has a record ${document.id}.`)
    return 1
  }
  report(`Appended to ${options.out}: ${document.id}, ${savedLog.records.length} records.`)
  return exitCode
}

/** Writes a record of the planned visit for the technician to correct. */
async function writeRecordFromPlan(options: Options, io: CommandIo): Promise<ExitCode> {
  if (options.format !== 'text')
    throw new UsageError(`record --from-plan --format ${options.format}: the record is YAML to fill in`)
  if (options.out !== undefined && !/\.ya?ml$/i.test(options.out))
    throw new UsageError(`--out ${options.out}: expected a name that ends in .yaml or .yml`)
  const { planned, findings, exitCode } = await planFromFiles('record', options, io)
  if (planned === undefined) {
    io.printError(renderFindings(findings, 'text'))
    return exitCode
  }
  const record = prefillRecord(planned.value)
  if (options.out === undefined) io.print(record.trimEnd())
  else await writeOut(options.out, record, io, { mustBeNew: true })
  io.printError(
    `Replace each ?, correct the entries that differ from the work, and delete work that was not done. Then append it: record <record> <log> <sheet> --out LOG`,
  )
  return 0
}
