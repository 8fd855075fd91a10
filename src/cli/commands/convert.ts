import { en } from '../../message/en/index.js'
import { renderMessage } from '../../message/index.js'
import {
  convert,
  figureToNumber,
  formatNumber,
  formatQuantity,
  isUnit,
  measureOf,
  type PrintedBand,
  parseQuantity,
  secondUnit,
  UNITS_BY_MEASURE,
  type Unit,
  unitSymbol,
} from '../../quantity/index.js'
import type { Options } from '../readOptions.js'
import type { ExitCode } from '../runCommand.js'
import { UsageError } from '../usageError.js'
import type { World } from '../world.js'

/** `convert`: what somebody wrote, in another unit. */
export async function runConvert(options: Options, world: World): Promise<ExitCode> {
  const text = options.paths.join(' ')
  if (text === '') throw new UsageError('convert: write the quantity, such as "8.9 lbf·ft"')
  const unit = readUnit(options.to)
  const read = parseQuantity(text, {
    ...(options.assume === undefined ? {} : { assume: assumedUnits(options.assume) }),
  })
  for (const finding of read.findings)
    world.complain(`${finding.severity}: ${renderMessage(en, finding)} (${finding.code})`)
  if (!read.ok) return 1
  if (measureOf(read.value.unit) !== measureOf(unit))
    throw new UsageError(
      `--to ${unit}: ${read.value.unit} is a ${measureOf(read.value.unit)}; units of it are ${UNITS_BY_MEASURE[
        measureOf(read.value.unit)
      ].join(', ')}`,
    )
  if (options.format === 'json') {
    world.print(JSON.stringify({ read: read.value, second: secondUnit(read.value, unit) }, null, 2))
    return 0
  }
  world.print(`${formatQuantity(read.value, en.marks)} = ${describe(read.value, unit)}`)
  return 0
}

function readUnit(text: string | undefined): Unit {
  if (text === undefined) throw new UsageError('convert: name the unit, such as --to N.m')
  if (!isUnit(text))
    throw new UsageError(
      `--to ${text}: one of ${Object.values(UNITS_BY_MEASURE).flat().join(', ')} is wanted`,
    )
  return text
}

function assumedUnits(word: string): readonly Unit[] {
  const all: readonly Unit[] = UNITS_BY_MEASURE.volume
  if (word === 'us') return all.filter((unit) => unit.endsWith('_us'))
  if (word === 'imperial') return all.filter((unit) => unit.endsWith('_imp'))
  throw new UsageError(`--assume ${word}: us or imperial is wanted`)
}

/** Every figure exactly rounded, and what to print beside the first. */
function describe(value: PrintedBand, unit: Unit): string {
  const show = (figure: string): string =>
    formatNumber(convert({ value: figureToNumber(figure), unit: value.unit }, unit).value, en.marks, {
      atMost: 15,
    })
  const second = secondUnit(value, unit)
  const print = second === null ? '' : `; print ${formatQuantity(second, en.marks)}`
  return `${describeFigures(value, show)} ${unitSymbol(unit)}${print}`
}

function describeFigures(value: PrintedBand, show: (figure: string) => string): string {
  switch (value.kind) {
    case 'nominal':
      return show(value.value)
    case 'limits':
      return [value.min, value.max].map((end) => (end === undefined ? '' : show(end))).join(' … ')
    case 'nominal with tolerance':
      return value.minus === value.plus
        ? `${show(value.value)} ± ${show(value.plus)}`
        : `${show(value.value)} −${show(value.minus)} +${show(value.plus)}`
  }
}
