import { writeCsv } from '../../exchange/index.js'
import { formatQuantity, type Quantity } from '../../quantity/index.js'
import { sumUsedOil, type UsedOilLine, type UsedOilReport, type UsedOilSum } from '../../record/index.js'
import { cleanLine } from '../cleanLine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { reportReadErrors } from '../renderFindings.js'

/** `used-oil`: prints the used oil handed over in a period, by recipient. */
export async function runUsedOil(options: Options, io: CommandIo): Promise<ExitCode> {
  const { paths, machine, period, format } = options
  if (paths.length === 0) throw new UsageError('nameLogs')
  const sets = await readDocuments(paths, io)
  if (reportReadErrors(sets, io)) return 1
  const logs = sets
    .flatMap(({ set }) => set.logs.map(({ document }) => document))
    .filter(({ id }) => machine === undefined || machine === id)
  if (logs.length === 0)
    throw machine === undefined ? new UsageError('noLog') : new UsageError('noLogWithId', { id: machine })
  const report = sumUsedOil(logs, period)
  if (format === 'json') io.print(JSON.stringify({ period, ...report }, null, 2))
  else if (format === 'csv') io.print(renderCsv(report).trimEnd())
  else io.print(describeReport(report, io).map(cleanLine).join('\n'))
  return 0
}

function renderCsv({ lines }: UsedOilReport): string {
  const head = ['date', 'machine', 'record', 'volume', 'unit', 'to', 'receipt', 'kept apart', 'drained (L)']
  const rows = lines.map(({ date, machine, record, volume, to, receipt, keptApart, drained }) => [
    ...[date, machine, record, volume?.value, volume?.unit, to, receipt, keptApart, drained?.value],
  ])
  return writeCsv([head, ...rows])
}

const formatLitres = (volume: Quantity, { catalogue }: CommandIo) =>
  formatQuantity(volume, catalogue.marks, { atMost: 3 })

function describeReport({ carriers, lines, ...total }: UsedOilReport, io: CommandIo): readonly string[] {
  const { reports } = io.words
  if (lines.length === 0) return [reports.noUsedOil]
  return [
    reports.usedOil({ sum: describeSum(total, io) }),
    ...carriers.map(
      ({ to, ...sum }) =>
        `  ${reports.labelled({ label: to ?? reports.noRecipient, value: describeSum(sum, io) })}`,
    ),
    ...(lines.some(({ keptApart }) => keptApart !== undefined) ? [`  ${reports.keptApartCaution}`] : []),
    ...lines.map((line) => describeLine(line, io)),
  ]
}

function describeSum(
  { volume, keptApart, withoutReceipt, withoutVolume, drained }: UsedOilSum,
  io: CommandIo,
): string {
  const { reports } = io.words
  const isPositive = (volume: Quantity) => volume.value > 0
  return [
    formatLitres(volume, io),
    isPositive(keptApart) && reports.keptApart({ volume: formatLitres(keptApart, io) }),
    isPositive(withoutReceipt) && reports.withoutReceipt({ volume: formatLitres(withoutReceipt, io) }),
    withoutVolume > 0 && reports.withoutVolume({ count: withoutVolume }),
    isPositive(drained) && reports.drainedNotCounted({ volume: formatLitres(drained, io) }),
  ]
    .filter(Boolean)
    .join('; ')
}

function describeLine(
  { date, machine, volume, to, receipt, keptApart, drained }: UsedOilLine,
  io: CommandIo,
): string {
  const { reports } = io.words
  const parts = [
    volume === undefined ? reports.noVolume : formatLitres(volume, io),
    drained !== undefined && reports.drained({ volume: formatLitres(drained, io) }),
    to === undefined ? reports.noRecipient : reports.to({ name: to }),
    receipt !== undefined && reports.receipt({ number: receipt }),
    keptApart !== undefined && reports.keptApartBecause({ reason: keptApart }),
  ]
  return `  ${date}  ${machine}  ${parts.filter(Boolean).join(', ')}`
}
