import { dropUndefined } from '../../base/index.js'
import { renderHtml, renderMarkdown, renderText, slipModel } from '../../card/index.js'
import { appendRecord, openFaults } from '../../record/index.js'
import { ownerSlip } from '../../service/index.js'
import { type MachineLog, resolveRecords } from '../../spec/index.js'
import { chooseDueOptions, type MachineFiles, requireOneMachine } from '../chooseMachine.js'
import { cleanLine } from '../cleanLine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { reportReadErrors } from '../renderFindings.js'
import { writeOut } from '../writeOut.js'

const RENDERERS = { text: renderText, markdown: renderMarkdown, html: renderHtml } as const
const FORMATS_BY_EXTENSION = { txt: 'text', md: 'markdown', html: 'html', json: 'json' } as const

/** `slip`: prints the owner's slip after a visit. */
export async function runSlip(options: Options, io: CommandIo): Promise<ExitCode> {
  const { paths, out, today } = options
  if (paths.length === 0) throw new UsageError('nameLogAndSheet', { command: 'slip' })
  const format = chooseFormat(options)
  const sets = await readDocuments(paths, io)
  if (reportReadErrors(sets, io)) return 1
  const machine = requireOneMachine(sets, options)
  const { sheet, fileSet } = machine
  const log = addNewRecords(machine, io)
  requireRecord(log, options.record)
  const faults = openFaults({ document: log }, fileSet.set, { today })
  const slip = ownerSlip(
    { sheet, log, today, faults },
    dropUndefined({ due: chooseDueOptions(options, log), record: options.record }),
  )
  const text =
    format === 'json' ? JSON.stringify(slip, null, 2) : RENDERERS[format](slipModel(slip, io.catalogue))
  if (out === undefined) io.print(text.trimEnd())
  else {
    await writeOut(out, text, io)
    io.printError(io.words.reports.slipWritten({ path: out }))
  }
  return 0
}

/** With `--out`, the extension of the file decides the format. */
function chooseFormat({ out, format }: Options): keyof typeof RENDERERS | 'json' {
  if (out === undefined)
    return format === 'markdown' || format === 'html' || format === 'json' ? format : 'text'
  const extension = /\.([a-z]+)$/i.exec(out)?.[1]?.toLowerCase() ?? ''
  const fileFormat = Object.hasOwn(FORMATS_BY_EXTENSION, extension)
    ? FORMATS_BY_EXTENSION[extension as keyof typeof FORMATS_BY_EXTENSION]
    : undefined
  if (fileFormat === undefined)
    throw new UsageError('badEnding', { given: `--out ${out}`, endings: '.txt, .md, .html, .json' })
  if (format !== 'text' && format !== fileFormat)
    throw new UsageError('otherFormat', { given: `--out ${out}`, format })
  return fileFormat
}

/** The log plus any new records among the files. */
function addNewRecords({ log, fileSet: { set } }: MachineFiles, io: CommandIo): MachineLog {
  // Corrections go after the records that they correct.
  const records = set.records
    .filter(
      ({ document }) => document.machine === log.id && log.records.every(({ id }) => id !== document.id),
    )
    .sort(
      (first, second) =>
        Number(first.document.corrects !== undefined) - Number(second.document.corrects !== undefined),
    )
  return records.reduce((before, record) => {
    const appended = appendRecord(record, { ...set, logs: [{ document: before }] })
    if (!appended.ok)
      throw new UsageError('notARecord', { name: record.name ?? record.document.id, id: log.id })
    io.printError(cleanLine(io.words.reports.notYetInLog({ record: record.document.id })))
    return appended.value.log
  }, log)
}

/** Throws if the log does not have the record of `--record`. */
function requireRecord({ id, records }: MachineLog, recordId: string | undefined): void {
  const visits = records.filter(({ corrects }) => corrects === undefined)
  if (visits.length === 0) throw new UsageError('noVisit', { id })
  const isKnown = resolveRecords(records).some(
    ({ root }, index) => root !== undefined && records[index]?.id === recordId,
  )
  if (recordId === undefined || isKnown) return
  const lastIds = visits.slice(-5).map((visit) => visit.id)
  throw new UsageError('noSuchRecord', { record: recordId, id, latest: lastIds.join(', ') })
}
