import { basename, join } from 'node:path'
import type { Finding } from '../base/index.js'
import { type ImportedMachine, importReadings } from '../exchange/index.js'
import { convertAmount } from '../quantity/index.js'
import { parseDocument } from '../schema/index.js'
import type { MachineLog, MeterReading, ServiceRecord } from '../spec/index.js'
import { addReadings } from './addReadings.js'
import { cleanLine } from './cleanLine.js'
import { type CommandIo, type ExitCode, UsageError } from './cliIo.js'
import type { LocatedFinding } from './makeLocator.js'
import { readDocuments, readWholeText } from './readDocuments.js'
import type { Options } from './readOptions.js'
import { chooseExitCode, locateFindings, renderFindings } from './renderFindings.js'
import { findNewMistakes, saveLog } from './saveLog.js'
import { type NewLog, readReadingTable, type TableMachine } from './tables/readReadingTable.js'
import { createCellReporter } from './tables/readTable.js'

/** A log and where it comes from; undefined for a new log. */
interface KnownLog {
  readonly log: MachineLog
  readonly path: string | undefined
}

/** A machine of a page or table, with the name of its file. */
interface SourceMachine {
  readonly file: string
  readonly machine: TableMachine
}

/**
 * Adds the readings of tables and of whole fleets, in one or several pages, to the logs of many machines. With a
 * mistake in any of them nothing is written. A table that names sheets also makes new logs.
 */
export async function importFleet(options: Options, io: CommandIo): Promise<ExitCode> {
  const { reports } = io.words
  const report = options.format === 'text' ? io.print : io.printError
  const { dataPaths, logPaths } = await sortPaths(options.paths, io)
  if (dataPaths.length === 0) throw new UsageError('nameTelematics')
  const sets = logPaths.length === 0 ? [] : await readDocuments(logPaths, io)
  const logs = sets.flatMap(({ set }) =>
    set.logs.map(({ document, name }): KnownLog => ({ log: document, path: name })),
  )
  const readFindings = locateFindings(
    sets.flatMap(({ findings }) => findings),
    sets,
    io,
  )
  const sources = await readSources(dataPaths, logs, options, io)
  const matched = matchLogs(sources.machines, logs, io)
  const findings: LocatedFinding[] = [...readFindings, ...sources.findings, ...matched.findings]
  const sheets = sets.flatMap(({ set }) => set.sheets)
  const results = [...matched.machines].map(([known, machines]) => {
    const records = machines.flatMap((machine) => readRecords(machine, known.log, findings, io))
    const extendLog = (log: MachineLog) => {
      const added = addReadings(log, joinReadings(machines))
      const known = new Set(log.records.map(({ id }) => id))
      const newRecords = records.filter(({ id }) => !known.has(id))
      return {
        ...added,
        log: { ...added.log, records: [...log.records, ...newRecords] },
        newRecords: newRecords.length,
      }
    }
    const added = extendLog(known.log)
    const makeSet = (document: MachineLog) => ({
      ...EMPTY_SET,
      sheets,
      logs: [{ name: known.path ?? '', document }],
    })
    const mistakes = findNewMistakes(makeSet(known.log), added.log, options)
    findings.push(...locateFindings(mistakes, sets, io))
    return { known, extendLog, added, makeSet }
  })
  if (findings.length > 0 || options.format !== 'text') io.print(renderFindings(findings, options.format, io))
  const hasErrors = findings.some(({ severity }) => severity === 'error')
  const sum = (count: (added: (typeof results)[number]['added']) => number): number =>
    results.reduce((total, { added }) => total + count(added), 0)
  report(
    reports.fleetAdded({
      logs: results.length,
      hours: sum(({ added }) => added.hours),
      distance: sum(({ added }) => added.distance),
      kept: sum(({ keptDays }) => keptDays),
      records: sum(({ newRecords }) => newRecords),
    }),
  )
  if (hasErrors || options.out === undefined) {
    report(hasErrors ? reports.nothingWritten : reports.nameLogFolder)
    return hasErrors ? 1 : chooseExitCode(findings, options.level)
  }
  let written = 0
  for (const { known, extendLog, makeSet } of results) {
    const path = join(options.out, known.path === undefined ? `${known.log.id}.yaml` : basename(known.path))
    const extend = (current: MachineLog): MachineLog | undefined => {
      const extended = extendLog(current).log
      const isWorse = findNewMistakes(makeSet(current), extended, options).some(isError)
      return isWorse ? undefined : extended
    }
    if ((await saveLog(path, known.log, extend, io)) === undefined)
      report(cleanLine(reports.logChangedAt({ path })))
    else written += 1
  }
  report(cleanLine(reports.logsWritten({ folder: options.out, count: written })))
  return written === results.length ? chooseExitCode(findings, options.level) : 1
}

const EMPTY_SET = { toolboxes: [], stocks: [], procedures: [], records: [] }
const isError = ({ severity }: Finding): boolean => severity === 'error'
const isTable = (path: string): boolean => /\.(csv|tsv)$/i.test(path)

/** Whether the paths are for a fleet, and not for one telematics file and one log. */
export async function isFleetImport(paths: readonly string[], io: CommandIo): Promise<boolean> {
  const [, second] = paths
  if (paths.some(isTable) || paths.length > 2) return true
  return second !== undefined && (await io.kindOf(second).catch(() => 'file')) === 'folder'
}

/** Tables and JSON without a kind are data; documents and folders hold logs. */
async function sortPaths(paths: readonly string[], io: CommandIo) {
  const dataPaths: string[] = []
  const logPaths: string[] = []
  for (const path of paths) {
    const isFile = (await io.kindOf(path).catch(() => 'file')) === 'file'
    const isData =
      isTable(path) || (isFile && /\.json$/i.test(path) && !isDocument(await readWholeText(path, io)))
    if (isData) dataPaths.push(path)
    else logPaths.push(path)
  }
  return { dataPaths, logPaths }
}

function isDocument(text: string): boolean {
  return /"kind"\s*:\s*"[a-z-]+"/.test(text.slice(0, 2000))
}

async function readSources(
  paths: readonly string[],
  logs: readonly KnownLog[],
  options: Options,
  io: CommandIo,
) {
  const machines: SourceMachine[] = []
  const findings: LocatedFinding[] = []
  const [only] = logs.length === 1 ? logs : []
  for (const file of paths) {
    const text = await readWholeText(file, io)
    if (isTable(file)) {
      const table = readReadingTable(text, file, options.decimal, io.words.reports, only?.log.id)
      machines.push(...table.machines.map((machine) => ({ file, machine })))
      findings.push(...table.findings)
      continue
    }
    let data: unknown
    try {
      data = JSON.parse(text.replace(/^\uFEFF/, ''))
    } catch {
      throw new UsageError('notJson', { path: file })
    }
    const imported = importReadings(data, { edition: options.telematics })
    if (imported.ok) machines.push(...imported.value.machines.map((machine) => ({ file, machine })))
    const named = imported.findings.map((finding) => ({
      ...finding,
      document: { ...finding.document, name: file },
    }))
    findings.push(...locateFindings(named, [], io))
  }
  return { machines, findings }
}

/** Finds the log of each machine by id, serial number or PIN; makes a new log if the table names its sheet. */
function matchLogs(sources: readonly SourceMachine[], logs: readonly KnownLog[], io: CommandIo) {
  const { reports } = io.words
  const findings: LocatedFinding[] = []
  const logsByNumber = new Map<string, KnownLog[]>()
  const addLog = (known: KnownLog): void => {
    for (const number of new Set([known.log.id, known.log.identity.serial]))
      if (number !== undefined) logsByNumber.set(number, [...(logsByNumber.get(number) ?? []), known])
  }
  for (const known of logs) addLog(known)
  const machines = new Map<KnownLog, TableMachine[]>()
  for (const { file, machine } of sources) {
    const { equipmentId, serial, pin } = machine.header
    const numbers = [equipmentId, serial, pin].filter((number) => number !== undefined)
    const found = [...new Set(numbers.flatMap((number) => logsByNumber.get(number) ?? []))]
    const [number = reports.noNumber] = numbers
    const report = (code: string, message: string, severity: LocatedFinding['severity'] = 'error') =>
      void findings.push({
        ...createCellReporter(file, reports, severity)(code, 1, '', ''),
        message: reports.numbered({ number, message }),
        path: machine.path,
        params: { machine: number },
      })
    if (found.length === 0 && machine.newLog !== undefined) {
      const parsed = parseDocument('machine-log', makeLog(number, machine.newLog), { name: file })
      for (const finding of parsed.findings)
        report('log-unreadable', locateFindings([finding], [], io)[0]?.message ?? '')
      if (!parsed.ok) continue
      const known = { log: parsed.value, path: undefined }
      addLog(known)
      found.push(known)
    }
    const [known] = found
    if (known === undefined || found.length > 1) {
      const count = machine.hours.length + (machine.distance?.readings.length ?? 0)
      if (known === undefined) report('no-log', reports.noLogHasNumber({ count }), 'warning')
      else
        report(
          'several-logs',
          reports.severalLogsHaveNumber({ ids: found.map(({ log }) => log.id).join(', ') }),
        )
      continue
    }
    const list = machines.get(known)
    if (list === undefined) machines.set(known, [machine])
    else list.push(machine)
  }
  return { machines, findings }
}

/** The records of a table; a record that cannot be read is reported with its line. */
function readRecords(
  { records = [] }: TableMachine,
  log: MachineLog,
  findings: LocatedFinding[],
  io: CommandIo,
): readonly ServiceRecord[] {
  return records.flatMap(
    ({ line, date, readings: { hours, distance }, by, entries }): readonly ServiceRecord[] => {
      const parsed = parseDocument(
        'service-record',
        {
          kind: 'service-record',
          version: '1.0',
          machine: log.id,
          sheet: log.sheet,
          // Entries without figures are history.
          detail: entries.every((entry) => /^\S+ of [^,]+$/.test(entry)) ? 'date and meters only' : 'full',
          date,
          readings: {
            ...(hours !== undefined && { hours: { value: hours, unit: 'h' } }),
            ...(distance !== undefined && { distance: { value: distance.value, unit: distance.unit } }),
          },
          ...(by !== undefined && { by }),
          entries,
        },
        { name: log.id },
      )
      const located = locateFindings(parsed.findings, [], io).map((finding) => ({
        ...finding,
        message: io.words.reports.recordOf({ date, message: finding.message }),
        position: { line, column: 1 },
      }))
      findings.push(...located)
      return parsed.ok ? [parsed.value] : []
    },
  )
}

function makeLog(id: string, { name, sheet, revision, variant, serial, commissioned }: NewLog): object {
  return {
    kind: 'machine-log',
    version: '1.0',
    id,
    ...(name !== undefined && { name }),
    sheet: { id: sheet, revision: revision ?? '1' },
    identity: { ...(variant !== undefined && { variant }), ...(serial !== undefined && { serial }) },
    ...(commissioned !== undefined && { commissioned }),
  }
}

/** The readings of all pages of a machine, by day and value; distances in the unit of the first page. */
function joinReadings(machines: readonly ImportedMachine[]): Pick<ImportedMachine, 'hours' | 'distance'> {
  const compare = (first: MeterReading, second: MeterReading): number =>
    first.date < second.date ? -1 : first.date > second.date ? 1 : first.value - second.value
  const distances = machines.flatMap(({ distance }) => distance ?? [])
  const [first] = distances
  const readings = distances.flatMap(({ unit, readings }) =>
    readings.map(({ date, value }) => ({
      date,
      value:
        first === undefined || unit === first.unit ? value : convertAmount({ value, unit }, first.unit).value,
    })),
  )
  return {
    hours: machines.flatMap(({ hours }) => hours).sort(compare),
    ...(first && { distance: { unit: first.unit, readings: readings.sort(compare) } }),
  }
}
