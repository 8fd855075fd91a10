import { type Messages, renderMessage } from '../../message/index.js'
import type { Measure, PrintedBand, ReadingOptions, Unit } from '../../quantity/index.js'
import {
  convertFigure,
  findDifferenceUnit,
  formatNumber,
  formatQuantity,
  isUnit,
  measureOf,
  parseQuantity,
  secondUnit,
  UNITS_BY_MEASURE,
  unitSymbol,
} from '../../quantity/index.js'
import { type ExitCode, type QuestionIo, UsageError } from '../cliIo.js'
import type { ParsedWords } from '../parseWords.js'

/** `convert`: prints a quantity in another unit. */
export async function runConvert(words: ParsedWords, io: QuestionIo): Promise<ExitCode> {
  const { values: options } = words
  const { catalogue } = io
  const text = words.positionals.join(' ')
  if (text === '') throw new UsageError('missingValue', { command: 'convert', example: '"8.9 lbf·ft"' })
  if (options.to === undefined)
    throw new UsageError('missingOption', { command: 'convert', option: '--to', example: 'N.m' })
  const readingOptions = options.assume === undefined ? {} : { assume: listAssumedUnits(options.assume) }
  const parsed = parseQuantity(text, readingOptions)
  for (const finding of parsed.findings)
    io.printError(
      io.words.answers.finding({
        severity: io.words.severities[finding.severity],
        message: renderMessage(finding, catalogue),
        code: finding.code,
      }),
    )
  if (!parsed.ok) return 1
  const measure = measureOf(parsed.value.unit)
  const unit = readUnit(options.to, measure, readingOptions)
  if (unit === undefined)
    throw new UsageError('otherUnit', {
      given: `--to ${options.to}`,
      measure: io.words.measures[measure],
      units: UNITS_BY_MEASURE[measure].join(', '),
    })
  if (options.format === 'json') {
    io.print(JSON.stringify({ read: parsed.value, second: secondUnit(parsed.value, unit) }, null, 2))
    return 0
  }
  const second = secondUnit(parsed.value, unit)
  const print =
    second === null ? '' : io.words.answers.print({ figure: formatQuantity(second, catalogue.marks) })
  io.print(
    `${formatQuantity(parsed.value, catalogue.marks)} = ${describeConversion(parsed.value, unit, catalogue)}${print}`,
  )
  return 0
}

/** A unit by its name in documents, or as people write it, such as `Nm` or `°F`. */
function readUnit(
  text: string,
  measure: Measure,
  readingOptions: Pick<ReadingOptions, 'assume'>,
): Unit | undefined {
  if (isUnit(text)) return measureOf(text) === measure ? text : undefined
  const parsed = parseQuantity(`1 ${text}`, { measure, ...readingOptions })
  return parsed.ok && parsed.value.kind === 'nominal' ? parsed.value.unit : undefined
}

function listAssumedUnits(word: string): readonly Unit[] {
  const volumeUnits: readonly Unit[] = UNITS_BY_MEASURE.volume
  if (word === 'us') return volumeUnits.filter((unit) => unit.endsWith('_us'))
  if (word === 'imperial') return volumeUnits.filter((unit) => unit.endsWith('_imp'))
  throw new UsageError('notOneOf', { given: `--assume ${word}`, expected: 'us, imperial' })
}

/** The figures, correctly rounded. */
function describeConversion(value: PrintedBand, unit: Unit, { marks }: Messages): string {
  const makeFormatter = (from: Unit, to: Unit) => (figure: string) =>
    formatNumber(Number(convertFigure(figure, from, to).digits), marks, { atMost: 15 })
  const show = makeFormatter(value.unit, unit)
  // A tolerance converts as a difference.
  const showTolerance = makeFormatter(findDifferenceUnit(value.unit), findDifferenceUnit(unit))
  return `${describeFigures(value, show, showTolerance)} ${unitSymbol(unit)}`
}

function describeFigures(
  value: PrintedBand,
  show: (figure: string) => string,
  showTolerance: (figure: string) => string,
): string {
  switch (value.kind) {
    case 'nominal':
      return show(value.value)
    case 'limits':
      return [value.min, value.max].map((end) => (end === undefined ? '' : show(end))).join(' … ')
    case 'nominal with tolerance':
      return value.minus === value.plus
        ? `${show(value.value)} ± ${showTolerance(value.plus)}`
        : `${show(value.value)} −${showTolerance(value.minus)} +${showTolerance(value.plus)}`
  }
}
