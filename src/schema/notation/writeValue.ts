import { listSpellings, type Unit } from '../../quantity/index.js'
import type { SourceRef } from '../../spec/index.js'

/** Joins the parts with commas, without absent ones. */
export const joinParts = (...parts: readonly (string | false | undefined)[]): string =>
  parts.filter((part) => part !== undefined && part !== false && part !== '').join(', ')
export const isNotStated = (value: Value): boolean => value?.kind === 'not stated'

export function formatBand(value: Value): string {
  const { kind, unit, asPrinted, value: figure, minus, plus, min, max } = value
  const symbol = listSpellings(unit as Unit)[0]
  const space = unit === 'deg' ? '' : ' '
  if (kind === 'limits') {
    const separator = /^deg[CF]$|^K$/.test(unit) ? ' to ' : '–'
    const figures =
      min === undefined ? `max. ${max}` : max === undefined ? `min. ${min}` : min + separator + max
    return figures + space + symbol
  }
  if (kind === 'nominal') return (asPrinted ?? figure) + space + symbol
  return `${figure}${minus === plus ? ` ± ${plus}` : ` +${plus}/-${minus}`}${space}${symbol}`
}

/** If a notation has no `not stated`, this text cannot be read back, and the object stays. */
export function formatPrinted(value: Value): string {
  if (isNotStated(value)) return value.kind
  const conversions = value.printed?.map(formatBand).join(', ')
  return conversions === undefined || conversions === ''
    ? formatBand(value)
    : `${formatBand(value)} (${conversions})`
}

export const value: Writer = (input, source) => formatPrinted(input) + source(input.source)

/** A value in full form; keys with a default may be omitted. */
// biome-ignore lint/suspicious/noExplicitAny: each notation has its own value type, and each text is read back
export type Value = any
/** Writes the brackets of a source, unless its section has the same source. */
export type WriteSource = (source: SourceRef | undefined) => string

export type Writer = (value: Value, source: WriteSource) => string | undefined

/** Writes a seal without its own source. */
export function formatSeal(seal: Value, source: WriteSource): string {
  const { kind, form, material, size, designation, product, bead, cureBeforeOil, replace } = seal
  const { partNumber, supersededBy, equivalents } = seal
  if (kind === 'none' || kind === 'not stated') return kind
  const ifStated = (word: string | undefined) => (word === 'not stated' ? undefined : word)
  const figures =
    size && [size.inside, size.outside, size.thickness, size.section].filter(Boolean).join(' x ')
  const name =
    kind === 'gasket'
      ? ['gasket', material]
      : product !== undefined
        ? [kind, product]
        : [
            kind === 'crush washer' && ifStated(form),
            ifStated(material),
            form === 'profile ring' ? form : kind,
            designation,
          ]
  return joinParts(
    [...name, size && `${figures} ${size.unit}`].filter(Boolean).join(' '),
    bead && !isNotStated(bead) && `bead ${value(bead, source)}`,
    cureBeforeOil && !isNotStated(cureBeforeOil) && `cure ${value(cureBeforeOil, source)}`,
    ifStated(replace),
    partNumber && `part ${partNumber}`,
    supersededBy && `superseded by ${formatNumber(supersededBy, source)}`,
    ...(equivalents ?? []).map((equivalent: Value) => `equivalent to ${formatNumber(equivalent, source)}`),
  )
}

const formatNumber = ({ partNumber, source: own }: Value, source: WriteSource): string =>
  `${partNumber}${source(own)}`

/**
 * Writes the text of an entry. If it cannot express everything, it differs when read back, and the entry
 * stays an object.
 */
export const writeEntry =
  (quantity: Writer, oil: Writer, tightened: Writer): Writer =>
  (entry: Value, source) => {
    const { service, gearcase, instance, drained, refilled, oilFinding, magnet, sample, level, leaks } = entry
    const findPartId = ({ on }: Value) => String(on).split('/')[4]
    const seals = (done: string) =>
      (entry.seals ?? [])
        .filter((seal: Value) => seal.done === done)
        .map(findPartId)
        .join(' and ')
    const [fresh, old] = [seals('new'), seals('inspected and used again')]
    return joinParts(
      `${service} of ${gearcase}${instance === undefined ? '' : ` ${instance}`}`,
      drained?.unit && `${quantity(drained, source)} drained`,
      refilled && `${quantity(refilled, source)} refilled`,
      entry.oil && `oil ${oil(entry.oil, source)}`,
      entry.oil?.batch && `batch ${entry.oil.batch}`,
      oilFinding && `old oil ${oilFinding}`,
      magnet && (magnet === 'no magnet' ? magnet : `magnet ${magnet}`),
      sample && `sample ${sample.bottle}`,
      level && `level ${level}`,
      leaks && `joints ${leaks}`,
      ...(entry.tightened ?? []).map(
        (tightening: Value) => `${findPartId(tightening)} ${tightened(tightening, source)}`,
      ),
      fresh && `new seals ${fresh}`,
      old && `seals used again ${old}`,
    )
  }
