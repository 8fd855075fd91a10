import { writeCsv } from '../../exchange/index.js'
import type { Catalogue } from '../../message/index.js'
import { formatQuantity, type Quantity } from '../../quantity/index.js'
import { sumUsedOil, type UsedOilLine, type UsedOilReport, type UsedOilSum } from '../../record/index.js'
import { cleanLine, formatCount } from '../cleanLine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { reportReadErrors } from '../renderFindings.js'

/** `used-oil`: prints the used oil handed over in a period, by recipient. */
export async function runUsedOil(options: Options, io: CommandIo): Promise<ExitCode> {
  const { paths, machine, period, format } = options
  if (paths.length === 0) throw new UsageError('used-oil: name logs, or folders of them')
  const sets = await readDocuments(paths, io)
  if (reportReadErrors(sets, io)) return 1
  const logs = sets
    .flatMap(({ set }) => set.logs.map(({ document }) => document))
    .filter(({ id }) => machine === undefined || machine === id)
  if (logs.length === 0)
    throw new UsageError(`no ${machine === undefined ? 'machine log' : `log of ${machine}`} among the files`)
  const report = sumUsedOil(logs, period)
  if (format === 'json') io.print(JSON.stringify({ period, ...report }, null, 2))
  else if (format === 'csv') io.print(renderCsv(report).trimEnd())
  else io.print(describeReport(report, io.catalogue).map(cleanLine).join('\n'))
  return 0
}

function renderCsv({ lines }: UsedOilReport): string {
  const head = ['date', 'machine', 'record', 'volume', 'unit', 'to', 'receipt', 'kept apart', 'drained (L)']
  const rows = lines.map(({ date, machine, record, volume, to, receipt, keptApart, drained }) => [
    ...[date, machine, record, volume?.value, volume?.unit, to, receipt, keptApart, drained?.value],
  ])
  return writeCsv([head, ...rows])
}

const formatLitres = (volume: Quantity, { marks }: Catalogue) => formatQuantity(volume, marks, { atMost: 3 })
const NO_RECIPIENT = 'recipient not recorded'

function describeReport(
  { carriers, lines, ...total }: UsedOilReport,
  catalogue: Catalogue,
): readonly string[] {
  if (lines.length === 0) return ['No used oil is recorded.']
  return [
    `Used oil: ${describeSum(total, catalogue)}`,
    ...carriers.map(({ to, ...sum }) => `  ${to ?? NO_RECIPIENT}: ${describeSum(sum, catalogue)}`),
    ...(lines.some(({ keptApart }) => keptApart !== undefined)
      ? [
          '  Never put oil kept apart into the used-oil tank. Ask the collection point and follow the local rules.',
        ]
      : []),
    ...lines.map((line) => describeLine(line, catalogue)),
  ]
}

function describeSum(
  { volume, keptApart, withoutReceipt, withoutVolume, drained }: UsedOilSum,
  catalogue: Catalogue,
): string {
  const isPositive = (volume: Quantity) => volume.value > 0
  return [
    formatLitres(volume, catalogue),
    isPositive(keptApart) && `${formatLitres(keptApart, catalogue)} kept apart`,
    isPositive(withoutReceipt) && `${formatLitres(withoutReceipt, catalogue)} without a receipt`,
    withoutVolume > 0 && `${formatCount(withoutVolume, 'line')} without a volume`,
    isPositive(drained) && `drained there, not counted: ${formatLitres(drained, catalogue)}`,
  ]
    .filter(Boolean)
    .join('; ')
}

function describeLine(
  { date, machine, volume, to, receipt, keptApart, drained }: UsedOilLine,
  catalogue: Catalogue,
): string {
  const parts = [
    volume === undefined ? 'volume not recorded' : formatLitres(volume, catalogue),
    drained !== undefined && `drained ${formatLitres(drained, catalogue)}`,
    to === undefined ? NO_RECIPIENT : `to ${to}`,
    receipt !== undefined && `receipt ${receipt}`,
    keptApart !== undefined && `KEPT APART: ${keptApart}`,
  ]
  return `  ${date}  ${machine}  ${parts.filter(Boolean).join(', ')}`
}
