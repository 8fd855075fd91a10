import type { Finding } from '../../base/index.js'
import { renderMessage } from '../../message/index.js'
import type { Measure, PrintedBand, Quantity, Unit, UnitOf } from '../../quantity/index.js'
import { parseQuantity } from '../../quantity/index.js'
import { parseNotation } from '../../schema/index.js'
import { type QuestionIo, UsageError } from '../cliIo.js'
import type { OptionName } from '../optionTable.js'
import type { ParsedWords } from '../parseWords.js'

/** The value of a required option. */
export function requireOption(
  { values }: ParsedWords,
  command: string,
  name: TextOptionName,
  example: string,
): string {
  const text = values[name]
  if (text === undefined) throw new UsageError('missingOption', { command, option: `--${name}`, example })
  return text
}

type TextOptionName = {
  readonly [Name in OptionName]: ParsedWords['values'][Name] extends string | undefined ? Name : never
}[OptionName]

/** The words before the options: the subject of the question. */
export function requireSubject({ positionals }: ParsedWords, command: string, example: string): string {
  const text = positionals.join(' ')
  if (text === '') throw new UsageError('missingValue', { command, example })
  return text
}

/** A quantity, tolerance or range of one measure, as people write it. */
export function readBand<M extends Measure>(
  option: string,
  text: string,
  measure: M,
  io: QuestionIo,
): PrintedBand & { readonly unit: UnitOf<M> } {
  const parsed = parseQuantity(text, { measure })
  if (!parsed.ok) throw makeReadError(io, option, text, parsed.findings)
  return parsed.value as PrintedBand & { readonly unit: UnitOf<M> }
}

/** One figure with its unit. */
export function readQuantity<M extends Measure>(
  option: string,
  text: string,
  measure: M,
  io: QuestionIo,
): Quantity<UnitOf<M> & Unit> {
  const { kind, unit, ...band } = readBand(option, text, measure, io)
  if (kind !== 'nominal' || !('value' in band))
    throw new UsageError('oneFigure', { given: `${option} ${JSON.stringify(text)}` })
  return { value: Number(band.value), unit: unit as UnitOf<M> & Unit }
}

/** A number with a unit of the measure; without a unit it is in `unit`. */
export function readInUnit<M extends Measure>(
  option: string,
  text: string,
  measure: M,
  unit: Unit,
  io: QuestionIo,
): Quantity<UnitOf<M> & Unit> {
  return readQuantity(option, /[a-z°"]/i.test(text) ? text : `${text} ${unit}`, measure, io)
}

/** A text in the short notation of sheets; `written` is the user's own text. */
export function readNotation(
  option: string,
  text: string,
  notation: Parameters<typeof parseNotation>[0],
  io: QuestionIo,
  written = text,
): unknown {
  const parsed = parseNotation(notation, text)
  if (!parsed.ok) throw makeReadError(io, option, written, parsed.findings, text)
  return parsed.value
}

/** The error for a bad text, with suggestions. */
function makeReadError(
  { words, catalogue }: QuestionIo,
  option: string,
  written: string,
  findings: readonly Finding[],
  parsed = written,
): UsageError {
  const messages = findings
    .filter(({ severity }) => severity === 'error')
    .map((finding) => {
      const fixes = (parsed === written ? (finding.cures ?? []) : []).flatMap((fix) =>
        fix.op === 'replace' ? [JSON.stringify(fix.value)] : [],
      )
      const write = fixes.length === 0 ? '' : ` ${words.answers.write({ text: fixes.join(', ') })}`
      return renderMessage(finding, catalogue) + write
    })
  return new UsageError('unreadable', {
    given: `${option} ${JSON.stringify(written)}`,
    message: messages.join(' '),
  })
}

/** A scale: its range or highest mark, and the step between marks, such as `40–200 lbf·in by 1`. */
export function readScale<M extends Measure>(
  option: string,
  text: string,
  measure: M,
  io: QuestionIo,
): { readonly band: PrintedBand & { readonly unit: UnitOf<M> }; readonly step: Quantity<UnitOf<M> & Unit> } {
  const [range = '', step, ...others] = text.split(/\s+by\s+/)
  if (step === undefined || others.length > 0)
    throw new UsageError('marksAndStep', { given: `${option} ${JSON.stringify(text)}` })
  const band = readBand(option, range, measure, io)
  const stepQuantity = readInUnit(option, step, measure, band.unit, io)
  if (!(stepQuantity.value > 0))
    throw new UsageError('stepNotAboveZero', { given: `${option} ${JSON.stringify(text)}` })
  return { band, step: stepQuantity }
}
