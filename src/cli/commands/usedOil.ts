import { writeCsv } from '../../exchange/index.js'
import { en } from '../../message/en/index.js'
import { formatQuantity, type Quantity } from '../../quantity/index.js'
import { sumUsedOil, type UsedOilLine, type UsedOilReport, type UsedOilSum } from '../../record/index.js'
import { cleanLine, formatCount } from '../cleanLine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { reportReadErrors } from '../renderFindings.js'

/** `used-oil`: prints the used oil handed over in a period, by recipient. */
export async function runUsedOil(options: Options, io: CliIo): Promise<ExitCode> {
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
  else io.print(describeReport(report).map(cleanLine).join('\n'))
  return 0
}

function renderCsv({ lines }: UsedOilReport): string {
  const head = ['date', 'machine', 'record', 'volume', 'unit', 'to', 'receipt', 'kept apart', 'drained (L)']
  const rows = lines.map(({ date, machine, record, volume, to, receipt, keptApart, drained }) => [
    ...[date, machine, record, volume?.value, volume?.unit, to, receipt, keptApart, drained?.value],
  ])
  return writeCsv([head, ...rows])
}

const formatLitres = (volume: Quantity) => formatQuantity(volume, en.marks, { atMost: 3 })
const NO_RECIPIENT = 'recipient not recorded'

function describeReport({ carriers, lines, ...total }: UsedOilReport): readonly string[] {
  if (lines.length === 0) return ['No used oil is recorded.']
  return [
    `Used oil: ${describeSum(total)}`,
    ...carriers.map(({ to, ...sum }) => `  ${to ?? NO_RECIPIENT}: ${describeSum(sum)}`),
    ...(lines.some(({ keptApart }) => keptApart !== undefined)
      ? [
          '  Never put oil kept apart into the used-oil tank. Ask the collection point and follow the local rules.',
        ]
      : []),
    ...lines.map(describeLine),
  ]
}

function describeSum({ volume, keptApart, withoutReceipt, withoutVolume, drained }: UsedOilSum): string {
  const isPositive = (volume: Quantity) => volume.value > 0
  return [
    formatLitres(volume),
    isPositive(keptApart) && `${formatLitres(keptApart)} kept apart`,
    isPositive(withoutReceipt) && `${formatLitres(withoutReceipt)} without a receipt`,
    withoutVolume > 0 && `${formatCount(withoutVolume, 'line')} without a volume`,
    isPositive(drained) && `drained there, not counted: ${formatLitres(drained)}`,
  ]
    .filter(Boolean)
    .join('; ')
}

function describeLine({ date, machine, volume, to, receipt, keptApart, drained }: UsedOilLine): string {
  const parts = [
    volume === undefined ? 'volume not recorded' : formatLitres(volume),
    drained !== undefined && `drained ${formatLitres(drained)}`,
    to === undefined ? NO_RECIPIENT : `to ${to}`,
    receipt !== undefined && `receipt ${receipt}`,
    keptApart !== undefined && `KEPT APART: ${keptApart}`,
  ]
  return `  ${date}  ${machine}  ${parts.filter(Boolean).join(', ')}`
}
