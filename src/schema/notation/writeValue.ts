import { listSpellings, type Unit } from '../../quantity/index.js'
import type { Value, Writer } from './writer.js'

/** Joins the parts with commas, without absent ones. */
export const joinParts = (...parts: readonly (string | false | undefined)[]): string =>
  parts.filter((part) => part !== undefined && part !== false && part !== '').join(', ')
export const isNotStated = (value: Value): boolean => value?.kind === 'not stated'

export function formatBand(value: Value): string {
  const { kind, unit, asPrinted, value: figure, minus, plus, min, max } = value
  const symbol = listSpellings(unit as Unit)[0]
  const space = unit === 'deg' ? '' : ' '
  if (kind === 'limits') {
    const between = /^deg[CF]$|^K$/.test(unit) ? ' to ' : '–'
    const figures =
      min === undefined ? `max. ${max}` : max === undefined ? `min. ${min}` : min + between + max
    return figures + space + symbol
  }
  if (kind === 'nominal') return (asPrinted ?? figure) + space + symbol
  return `${figure}${minus === plus ? ` ± ${plus}` : ` +${plus}/-${minus}`}${space}${symbol}`
}

/** If a notation has no `not stated`, this text cannot be read back, and the object stays. */
export function formatPrinted(value: Value): string {
  if (isNotStated(value)) return value.kind
  const otherFigures = value.printed?.map(formatBand).join(', ')
  return otherFigures === undefined || otherFigures === ''
    ? formatBand(value)
    : `${formatBand(value)} (${otherFigures})`
}

export const value: Writer = (input, source) => formatPrinted(input) + source(input.source)
