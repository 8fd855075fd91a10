import { renderMessage } from '../../message/index.js'
import { listOpenSamples, type NotDone, openFaults, resolveLog } from '../../record/index.js'
import { judgeOilLoss } from '../../service/index.js'
import type { MachineLog, RecordEntry, ServiceRecord, SpecSheet, TopUp } from '../../spec/index.js'
import { listMachines } from '../chooseMachine.js'
import { cleanLine } from '../cleanLine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import { describeFaults, describeLosses, describeSamples } from '../describeState.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { reportReadErrors } from '../renderFindings.js'
import { showValue } from '../showValue.js'
import { writeReadingTable } from '../tables/writeReadingTable.js'

/**
 * `history`: prints every record and top-up of a machine, with uncounted work, corrections and open faults; as a
 * table its meter readings.
 */
export async function runHistory(options: Options, io: CommandIo): Promise<ExitCode> {
  if (options.paths.length === 0) throw new UsageError('nameLogAndSheet', { command: 'history' })
  const sets = await readDocuments(options.paths, io)
  if (reportReadErrors(sets, io)) return 1
  const machines = listMachines(sets, options)
  if (options.format === 'csv') {
    io.print(writeReadingTable(machines.map(({ log }) => log)))
    return 0
  }
  for (const { log, sheet, fileSet } of machines) {
    const faults = openFaults({ document: log }, fileSet.set, { today: options.today })
    const { notDone } = resolveLog(log, sheet)
    const lines = [
      log.name,
      ...describeFaults(faults, io),
      ...describeSamples(listOpenSamples(log), io),
      ...describeLosses(judgeOilLoss({ sheet, log, today: options.today }), io),
      ...log.records.flatMap((record) => describeRecord(record, log, sheet, notDone, io)),
      ...(log.topUps ?? []).map((topUp) => describeTopUp(topUp, sheet, io)),
    ]
    io.print(`${lines.map(cleanLine).join('\n')}\n`)
  }
  return 0
}

function describeRecord(
  record: ServiceRecord,
  log: MachineLog,
  sheet: SpecSheet,
  notDone: readonly NotDone[],
  { words: { reports }, catalogue }: CommandIo,
): readonly string[] {
  const { id, date, readings, by, corrects, entries } = record
  const readingTexts = [readings.hours, readings.distance].flatMap(
    (reading) => reading && showValue(reading, catalogue),
  )
  const heading = [date, id, ...readingTexts.filter(Boolean), by && reports.by({ name: by })]
    .filter(Boolean)
    .join('  ')
  const corrections = log.records
    .filter((correction) => correction.corrects === id)
    .map((correction) => reports.correctedBy({ record: correction.id }))
  return [
    `  ${heading}`,
    ...(corrects === undefined ? [] : [`    ${reports.corrects({ record: corrects })}`]),
    ...entries.map((entry) => {
      const reason = notDone.find((undone) => undone.record === id && isSamePart(undone.entry, entry))?.reason
      const { bottle, result = '' } = entry.sample ?? {}
      const sampleText = bottle === undefined ? '' : reports.sample({ bottle, result })
      const text = `${describeEntry(entry, sheet)}${sampleText}`
      return `    ${reason === undefined ? text : reports.entryDoesNotCount({ entry: text, reason: renderMessage(reason, catalogue) })}`
    }),
    ...corrections.map((line) => `    ${line}`),
  ]
}

const isSamePart = (first: RecordEntry, second: RecordEntry) =>
  first.service === second.service && first.gearcase === second.gearcase && first.instance === second.instance

function describeTopUp(
  { date, volume, oil, ...part }: TopUp,
  sheet: SpecSheet,
  { words, catalogue }: CommandIo,
): string {
  const volumeText = showValue(volume, catalogue)
  const gearcase = describeGearcase(part, sheet)
  return `  ${words.reports.topUp({ date, volume: volumeText, oil, gearcase })}`
}

function describeEntry({ service, ...part }: RecordEntry, sheet: SpecSheet): string {
  const { services } = sheet
  const name = Object.hasOwn(services, service) ? (services[service]?.name ?? service) : service
  return `${name}, ${describeGearcase(part, sheet)}`
}

function describeGearcase(
  { gearcase, instance }: Pick<TopUp, 'gearcase' | 'instance'>,
  { gearcases }: SpecSheet,
): string {
  const name = Object.hasOwn(gearcases, gearcase) ? (gearcases[gearcase]?.name ?? gearcase) : gearcase
  return [name, instance].filter(Boolean).join(', ')
}
