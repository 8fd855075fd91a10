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
  const { reports } = io.words
  if (options.fromPlan) return writeRecordFromPlan(options, io)
  if (options.services !== 'due' || options.ambient !== undefined) throw new UsageError('onlyWithFromPlan')
  const sets = await readDocuments(options.paths, io)
  const [fileSet] = sets
  if (fileSet === undefined || sets.length > 1) throw new UsageError('nameRecord')
  const readFindings = fileSet.findings
  if (readFindings.some(({ severity }) => severity === 'error')) {
    io.print(renderFindings(locateFindings(readFindings, sets, io), options.format, io))
    return 1
  }
  const [record] = fileSet.set.records
  if (record === undefined || fileSet.set.records.length > 1)
    throw new UsageError('oneRecord', { given: 'record', count: fileSet.set.records.length })
  const log = fileSet.set.logs.find(({ document }) => document.id === record.document.machine)
  if (log === undefined) throw new UsageError('logOfRecordMissing', { id: record.document.machine })
  const appended = appendRecord(record, fileSet.set, { today: options.today })
  const locatedFindings = locateFindings([...readFindings, ...appended.findings], sets, io)
  if (locatedFindings.length > 0 || options.format !== 'text')
    io.print(renderFindings(locatedFindings, options.format, io))
  if (!appended.ok) {
    const [refusal] = appended.findings
    report(
      refusal?.code === 'spec/id-used-twice'
        ? reports.recordExists({ id: record.document.id })
        : refusal?.code === 'record/other-sheet'
          ? reports.otherSheet
          : reports.otherMachine,
    )
    return 1
  }
  const { entries, faults } = appended.value
  for (const entry of entries)
    if (entry.done === 'no')
      report(cleanLine(reports.doesNotCount({ reason: renderMessage(entry.reason, io.catalogue) })))
  for (const line of describeFaults(faults, io)) report(line)
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
    report(reports.recordExists({ id: document.id }))
    return 1
  }
  report(reports.recordAppended({ path: options.out, id: document.id, count: savedLog.records.length }))
  return exitCode
}

/** Writes a record of the planned visit for the technician to correct. */
async function writeRecordFromPlan(options: Options, io: CommandIo): Promise<ExitCode> {
  if (options.format !== 'text') throw new UsageError('fromPlanFormat', { format: options.format })
  if (options.out !== undefined && !/\.ya?ml$/i.test(options.out))
    throw new UsageError('badEnding', { given: `--out ${options.out}`, endings: '.yaml, .yml' })
  const { planned, findings, exitCode } = await planFromFiles('record', options, io)
  if (planned === undefined) {
    io.printError(renderFindings(findings, 'text', io))
    return exitCode
  }
  const record = prefillRecord(planned.value, io.words)
  if (options.out === undefined) io.print(record.trimEnd())
  else await writeOut(options.out, record, io, { mustBeNew: true })
  io.printError(io.words.reports.fillInRecord)
  return 0
}
