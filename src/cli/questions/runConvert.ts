import { enCalculations as en } from '../../message/en/index.js'
import { renderMessage } from '../../message/index.js'
import {
  asDifference,
  convertFigure,
  formatNumber,
  formatQuantity,
  isUnit,
  type Measure,
  measureOf,
  type PrintedBand,
  parseQuantity,
  type ReadingOptions,
  secondUnit,
  UNITS_BY_MEASURE,
  type Unit,
  unitSymbol,
} from '../../quantity/index.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import type { Words } from '../parseWords.js'

/** `convert`: prints a quantity in another unit. */
export async function runConvert(words: Words, io: CliIo): Promise<ExitCode> {
  const { values: options } = words
  const text = words.positionals.join(' ')
  if (text === '') throw new UsageError('convert: write the quantity, such as "8.9 lbf·ft"')
  if (options.to === undefined) throw new UsageError('convert: name the unit, such as --to N.m')
  const assume = options.assume === undefined ? {} : { assume: assumedUnits(options.assume) }
  const read = parseQuantity(text, assume)
  for (const finding of read.findings)
    io.printError(`${finding.severity}: ${renderMessage(finding, en)} (${finding.code})`)
  if (!read.ok) return 1
  const measure = measureOf(read.value.unit)
  const unit = readUnit(options.to, measure, assume)
  if (unit === undefined)
    throw new UsageError(
      `--to ${options.to}: expected a unit of ${measure}, such as ${UNITS_BY_MEASURE[measure].join(', ')}`,
    )
  if (options.format === 'json') {
    io.print(JSON.stringify({ read: read.value, second: secondUnit(read.value, unit) }, null, 2))
    return 0
  }
  io.print(`${formatQuantity(read.value, en.marks)} = ${describe(read.value, unit)}`)
  return 0
}

/** A unit by its name in documents, or as people write it, such as `Nm` or `°F`. */
function readUnit(text: string, measure: Measure, assume: Pick<ReadingOptions, 'assume'>): Unit | undefined {
  if (isUnit(text)) return measureOf(text) === measure ? text : undefined
  const read = parseQuantity(`1 ${text}`, { measure, ...assume })
  return read.ok && read.value.kind === 'nominal' ? read.value.unit : undefined
}

function assumedUnits(word: string): readonly Unit[] {
  const all: readonly Unit[] = UNITS_BY_MEASURE.volume
  if (word === 'us') return all.filter((unit) => unit.endsWith('_us'))
  if (word === 'imperial') return all.filter((unit) => unit.endsWith('_imp'))
  throw new UsageError(`--assume ${word}: expected us or imperial`)
}

/** The figures, exactly rounded, and the second figure to print. */
function describe(value: PrintedBand, unit: Unit): string {
  const showFrom = (from: Unit, to: Unit) => (figure: string) =>
    formatNumber(Number(convertFigure(figure, from, to).digits), en.marks, { atMost: 15 })
  const show = showFrom(value.unit, unit)
  // A tolerance is a difference.
  const showStep = showFrom(asDifference(value.unit), asDifference(unit))
  const second = secondUnit(value, unit)
  const print = second === null ? '' : `; print ${formatQuantity(second, en.marks)}`
  return `${describeFigures(value, show, showStep)} ${unitSymbol(unit)}${print}`
}

function describeFigures(
  value: PrintedBand,
  show: (figure: string) => string,
  showStep: (figure: string) => string,
): string {
  switch (value.kind) {
    case 'nominal':
      return show(value.value)
    case 'limits':
      return [value.min, value.max].map((end) => (end === undefined ? '' : show(end))).join(' … ')
    case 'nominal with tolerance':
      return value.minus === value.plus
        ? `${show(value.value)} ± ${showStep(value.plus)}`
        : `${show(value.value)} −${showStep(value.minus)} +${showStep(value.plus)}`
  }
}
