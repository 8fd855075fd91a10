import { dropUndefined } from '../../base/index.js'
import { renderHtml, renderMarkdown, renderText, slipModel } from '../../card/index.js'
import { en } from '../../message/en/index.js'
import { appendRecord, openFaults } from '../../record/index.js'
import { ownerSlip } from '../../service/index.js'
import { type MachineLog, resolveRecords } from '../../spec/index.js'
import { chooseDueOptions, listMachines, type MachineFiles } from '../chooseMachine.js'
import { cleanLine } from '../cleanLine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { reportReadErrors } from '../renderFindings.js'
import { writeOut } from '../writeOut.js'

const RENDERERS = { text: renderText, markdown: renderMarkdown, html: renderHtml } as const
const ENDINGS = { txt: 'text', md: 'markdown', html: 'html', json: 'json' } as const

/** `slip`: prints what the owner is given after a visit. */
export async function runSlip(options: Options, io: CliIo): Promise<ExitCode> {
  const { paths, out, today } = options
  if (paths.length === 0) throw new UsageError('slip: name a log and its sheet, or their folder')
  const format = chooseFormat(options)
  const sets = await readDocuments(paths, io)
  if (reportReadErrors(sets, io)) return 1
  const [machine, ...others] = listMachines(sets, options)
  if (machine === undefined || others.length > 0)
    throw new UsageError(`found ${others.length + 1} logs: choose one with --machine ID`)
  const { sheet, fileSet } = machine
  const log = withNewRecords(machine, io)
  checkRecord(log, options.record)
  const faults = openFaults({ document: log }, fileSet.set, { today })
  const slip = ownerSlip(
    { sheet, log, today, faults },
    dropUndefined({ due: chooseDueOptions(options, log), record: options.record }),
  )
  const text = format === 'json' ? JSON.stringify(slip, null, 2) : RENDERERS[format](slipModel(slip, en))
  if (out === undefined) io.print(text.trimEnd())
  else {
    await writeOut(out, text, io)
    io.printError(`Slip written: ${out}`)
  }
  return 0
}

/** With `--out` the ending of the file decides. */
function chooseFormat({ out, format }: Options): keyof typeof RENDERERS | 'json' {
  if (out === undefined)
    return format === 'markdown' || format === 'html' || format === 'json' ? format : 'text'
  const ending = /\.([a-z]+)$/i.exec(out)?.[1]?.toLowerCase() ?? ''
  const found = Object.hasOwn(ENDINGS, ending) ? ENDINGS[ending as keyof typeof ENDINGS] : undefined
  if (found === undefined)
    throw new UsageError(`--out ${out}: expected a name that ends in .txt, .md, .html or .json`)
  if (format !== 'text' && format !== found)
    throw new UsageError(`--out ${out}: is no file for --format ${format}`)
  return found
}

/** The log with the records among the files that it does not have yet. */
function withNewRecords({ log, fileSet: { set } }: MachineFiles, io: CliIo): MachineLog {
  // A correction comes after the record that it corrects.
  const records = set.records
    .filter(
      ({ document }) => document.machine === log.id && log.records.every(({ id }) => id !== document.id),
    )
    .sort(
      (one, other) =>
        Number(one.document.corrects !== undefined) - Number(other.document.corrects !== undefined),
    )
  return records.reduce((before, record) => {
    const appended = appendRecord(record, { ...set, logs: [{ document: before }] })
    if (!appended.ok)
      throw new UsageError(`${record.name ?? record.document.id}: is not a record of ${log.id}`)
    io.printError(cleanLine(`Not in the log yet, but on the slip: ${record.document.id}`))
    return appended.value.log
  }, log)
}

/** The record that an option names, if the log has it. */
function checkRecord({ id, records }: MachineLog, chosen: string | undefined): void {
  const visits = records.filter(({ corrects }) => corrects === undefined)
  if (visits.length === 0) throw new UsageError(`the log of ${id} has no record of a visit`)
  const isKnown = resolveRecords(records).some(
    ({ root }, place) => root !== undefined && records[place]?.id === chosen,
  )
  if (chosen === undefined || isKnown) return
  const last = visits.slice(-5).map((one) => one.id)
  throw new UsageError(
    `--record ${chosen}: the log of ${id} has no such record; its last are ${last.join(', ')}`,
  )
}
