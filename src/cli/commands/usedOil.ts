import { writeCsv } from '../../exchange/index.js'
import { en } from '../../message/en/index.js'
import { formatQuantity, type Quantity } from '../../quantity/index.js'
import { sumUsedOil, type UsedOilLine, type UsedOilReport, type UsedOilSum } from '../../record/index.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { plural } from '../plural.js'
import { readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { reportReading } from '../renderFindings.js'
import { safeLine } from '../safeLine.js'

/** `used-oil`: prints how much used oil the records of a period hand over, and to whom. */
export async function runUsedOil(options: Options, io: CliIo): Promise<ExitCode> {
  const { paths, machine, period, format } = options
  if (paths.length === 0) throw new UsageError('used-oil: name logs, or folders of them')
  const sets = await readDocuments(paths, io)
  if (reportReading(sets, io)) return 1
  const logs = sets
    .flatMap(({ set }) => set.logs.map(({ document }) => document))
    .filter(({ id }) => machine === undefined || machine === id)
  if (logs.length === 0)
    throw new UsageError(`no ${machine === undefined ? 'machine log' : `log of ${machine}`} among the files`)
  const report = sumUsedOil(logs, period)
  if (format === 'json') io.print(JSON.stringify({ period, ...report }, null, 2))
  else if (format === 'csv') io.print(csvOf(report).trimEnd())
  else io.print(textOf(report).map(safeLine).join('\n'))
  return 0
}

function csvOf({ lines }: UsedOilReport): string {
  const head = ['date', 'machine', 'record', 'volume', 'unit', 'to', 'receipt', 'kept apart', 'drained (L)']
  const rows = lines.map(({ date, machine, record, volume, to, receipt, keptApart, drained }) => [
    ...[date, machine, record, volume?.value, volume?.unit, to, receipt, keptApart, drained?.value],
  ])
  return writeCsv([head, ...rows])
}

const litres = (volume: Quantity) => formatQuantity(volume, en.marks, { atMost: 3 })
const NOT_NAMED = 'not recorded to whom'

function textOf({ carriers, lines, ...all }: UsedOilReport): readonly string[] {
  if (lines.length === 0) return ['No used oil is recorded.']
  return [
    `Used oil: ${sumText(all)}`,
    ...carriers.map(({ to, ...sum }) => `  ${to ?? NOT_NAMED}: ${sumText(sum)}`),
    ...(lines.some(({ keptApart }) => keptApart !== undefined)
      ? [
          '  Oil kept apart never goes into the used-oil tank. Ask the collection point and follow the local rules.',
        ]
      : []),
    ...lines.map(lineText),
  ]
}

function sumText({ volume, keptApart, withoutReceipt, withoutVolume, drained }: UsedOilSum): string {
  const isAny = (one: Quantity) => one.value > 0
  return [
    litres(volume),
    isAny(keptApart) && `${litres(keptApart)} of it kept apart`,
    isAny(withoutReceipt) && `${litres(withoutReceipt)} of it without a receipt`,
    withoutVolume > 0 && `${plural(withoutVolume, 'line')} without a volume`,
    isAny(drained) && `drained there, not counted: ${litres(drained)}`,
  ]
    .filter(Boolean)
    .join('; ')
}

function lineText({ date, machine, volume, to, receipt, keptApart, drained }: UsedOilLine): string {
  const parts = [
    volume === undefined ? 'volume not recorded' : litres(volume),
    drained !== undefined && `drained ${litres(drained)}`,
    to === undefined ? NOT_NAMED : `to ${to}`,
    receipt !== undefined && `receipt ${receipt}`,
    keptApart !== undefined && `KEPT APART: ${keptApart}`,
  ]
  return `  ${date}  ${machine}  ${parts.filter(Boolean).join(', ')}`
}
