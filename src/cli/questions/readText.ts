import type { Finding } from '../../base/index.js'
import { enCalculations as en } from '../../message/en/index.js'
import { renderMessage } from '../../message/index.js'
import {
  type Measure,
  type PrintedBand,
  parseQuantity,
  type Quantity,
  type Unit,
  type UnitOf,
} from '../../quantity/index.js'
import { parseNotation } from '../../schema/index.js'
import { UsageError } from '../cliIo.js'
import type { OptionName } from '../optionTable.js'
import type { Words } from '../parseWords.js'

/** The value of an option that the question needs. */
export function requireOption({ values }: Words, command: string, name: TextOption, example: string): string {
  const text = values[name]
  if (text === undefined) throw new UsageError(`${command}: write --${name}, such as --${name} ${example}`)
  return text
}

type TextOption = Exclude<
  OptionName,
  'exit-code' | 'from-plan' | 'service' | 'sample' | 'sheet' | 'times-from'
>

/** The words before the options: what is asked about. */
export function requireSubject({ positionals }: Words, command: string, example: string): string {
  const text = positionals.join(' ')
  if (text === '') throw new UsageError(`${command}: write what it is about, such as ${command} ${example}`)
  return text
}

/** A quantity, tolerance or range of one measure, as people write it. */
export function readBand<M extends Measure>(
  where: string,
  text: string,
  measure: M,
): PrintedBand & { readonly unit: UnitOf<M> } {
  const read = parseQuantity(text, { measure })
  if (!read.ok) throw unreadable(where, text, read.findings)
  return read.value as PrintedBand & { readonly unit: UnitOf<M> }
}

/** One figure with its unit. */
export function readSingle<M extends Measure>(
  where: string,
  text: string,
  measure: M,
): Quantity<UnitOf<M> & Unit> {
  const { kind, unit, ...band } = readBand(where, text, measure)
  if (kind !== 'nominal' || !('value' in band))
    throw new UsageError(`${where} ${JSON.stringify(text)}: expected one figure with its unit`)
  return { value: Number(band.value), unit: unit as UnitOf<M> & Unit }
}

/** A number alone, or with a unit of the measure; without one it is in `unit`. */
export function readIn<M extends Measure>(
  where: string,
  text: string,
  measure: M,
  unit: Unit,
): Quantity<UnitOf<M> & Unit> {
  return readSingle(where, /[a-z°"]/i.test(text) ? text : `${text} ${unit}`, measure)
}

/** A text in the short notation of sheets; `written`: what the user wrote of it. */
export function readShort(
  where: string,
  text: string,
  notation: Parameters<typeof parseNotation>[0],
  written = text,
): unknown {
  const read = parseNotation(notation, text)
  if (!read.ok) throw unreadable(where, written, read.findings, text)
  return read.value
}

/** Says what is wrong with a text, and what to write in its place. */
function unreadable(
  where: string,
  written: string,
  findings: readonly Finding[],
  read = written,
): UsageError {
  const messages = findings
    .filter(({ severity }) => severity === 'error')
    .map((finding) => {
      const cures = (read === written ? (finding.cures ?? []) : []).flatMap((cure) =>
        cure.op === 'replace' ? [JSON.stringify(cure.value)] : [],
      )
      return renderMessage(finding, en) + (cures.length === 0 ? '' : ` Write ${cures.join(' or ')}.`)
    })
  return new UsageError(`${where} ${JSON.stringify(written)}: ${messages.join(' ')}`)
}
