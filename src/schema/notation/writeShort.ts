import { isSameJson, splitPointer } from '../../base/index.js'
import {
  type Documents,
  type MachineLogInput,
  requireDocument,
  type ServiceRecordInput,
  type SourceRef,
  type SpecSheetInput,
  type StockInput,
  type ToolboxInput,
} from '../../spec/index.js'
import { ALL_PLACES, type NotationName } from './allPlaces.js'
import { chooseSource } from './chooseSource.js'
import { completeSource } from './completeSource.js'
import type { Notation } from './notation.js'
import {
  asHolder,
  findLeafNotation,
  type Holder,
  nodeBelow,
  type PlaceNode,
  type PlaceTable,
} from './placeTable.js'
import { readNotation } from './readNotation.js'
import { sheetPlaces } from './sheetPlaces.js'
import { stripDefaults } from './stripDefaults.js'
import { writeText } from './writeText.js'

/** What a place of the document is written in. */
interface Around {
  readonly table: PlaceTable
  readonly id: string
  readonly root: Holder
  readonly gearcase: Holder | undefined
  readonly section: Partial<SourceRef> | undefined
}

/** The documents that have a short form, and what a writer may give of each. */
interface ShortForms {
  readonly 'spec-sheet': SpecSheetInput
  readonly 'machine-log': MachineLogInput
  readonly toolbox: ToolboxInput
  readonly stock: StockInput
  readonly 'service-record': ServiceRecordInput
}

/**
 * Writes a full document in short notation: texts in place of objects, and without the keys that reading fills in with the same value. For programs that
 * give a document to a person. The way back is the parse function of its kind, such as {@link parseSpecSheet}.
 *
 * Equation: each text is read back; what it would not give exactly stays an object.
 * @param document A document as a parse function gives it, of any kind but a procedure; it is not changed.
 * @returns Plain data, the short document; the parse function gives the same full document from it.
 * @throws TypeError when `document` is not such a document.
 *
 * Source: house rule: the page on short notation.
 * @example
 * ```ts
 * import { parseSpecSheet, writeShort } from 'drivetrain-service/v1/spec'
 * const mass = { kind: 'nominal', value: '640', unit: 'kg' }
 * const machine = { make: 'Nordli', model: 'Ferd 2', type: 'utility machine', mass }
 * const read = parseSpecSheet({ kind: 'spec-sheet', version: '1.0', id: 'ferd-2', revision: '1', machine })
 * // How is the mass of this machine written?
 * read.ok && writeShort(read.value).machine.mass // => '640 kg'
 * ```
 */
export function writeShort<Document extends Documents[keyof ShortForms]>(
  document: Document,
): ShortForms[Document['kind']] {
  const kind = (Object.keys(ALL_PLACES) as Document['kind'][]).find((one) => one === document?.kind)
  requireDocument('document', document, kind ?? 'spec-sheet')
  const table = (kind && ALL_PLACES[kind]?.()) ?? sheetPlaces()
  const root = document as unknown as Holder
  const around = { table, id: '', root, gearcase: undefined, section: undefined }
  const short = stripDefaults(root, table.places, around)
  return shorten(short, table.places, around) as ShortForms[Document['kind']]
}

/** The short form of one value, from which the defaults are gone already. */
function shorten(value: unknown, node: PlaceNode, around: Around): unknown {
  const { row } = node
  if (value === row.word) return value
  const text = node.text && writePlace(node.text, value, node, around)
  if (text !== undefined) return text
  if (Array.isArray(value)) {
    const map = node.byPointer && writeByPointer(node.byPointer, value, around)
    if (map !== undefined) return map
    const entry = node.below['*']
    const list =
      entry === undefined ? value : value.map((one, at) => shorten(one, entry, { ...around, id: String(at) }))
    return row.under === '[]' && list.length === 1 && typeof list[0] === 'string' ? list[0] : list
  }
  const holder = asHolder(value)
  if (holder === undefined) return value
  const days = node.lists && writeMeters(holder, node, around)
  if (days !== undefined) return days
  if (row.isListOfIds && Object.values(holder).every((one) => isSameJson(one, {}))) return Object.keys(holder)
  return shortenHolder(holder, node, around)
}

function shortenHolder(holder: Holder, node: PlaceNode, around: Around): unknown {
  const { row } = node
  const isGearcase = node === around.table.places.below['gearcases']?.below['*']
  const gearcase = isGearcase ? asHolder(asHolder(around.root['gearcases'])?.[around.id]) : around.gearcase
  const source = row.isOverride ? holder['source'] : chooseSource(holder, node, around)
  const written = source === undefined ? undefined : writeSource(source as SourceRef, around)
  const section = written === undefined ? around.section : (source as SourceRef)
  const short: Holder = written === undefined ? {} : { source: written }
  for (const [key, one] of Object.entries(holder)) {
    const below = nodeBelow(node, key)
    const inside = { ...around, id: key, gearcase, section }
    if (row.isOverride && key === 'set') short[key] = shortenSet(one, inside)
    else if (short[key] === undefined) short[key] = below === undefined ? one : shorten(one, below, inside)
  }
  const [only = '', ...others] = Object.keys(short)
  return only === row.under && others.length === 0 && typeof short[only] === 'string' ? short[only] : short
}

/** A value as a text, if reading gives the same value again. */
function writePlace(notation: Notation, value: unknown, node: PlaceNode, around: Around): string | undefined {
  const { section, root } = around
  const text = writeText(notation.name as NotationName, value, (source) => bracketsOf(source, around))
  if (text === undefined) return undefined
  const read = readNotation(notation, text, (written) =>
    written === undefined ? section && { ...section } : completeSource(written, section, root),
  )
  return read.ok && isSameJson(stripDefaults(read.value, node, around), value) ? text : undefined
}

/** The source of a section or an override as a text. */
function writeSource(source: SourceRef, around: Around): string | undefined {
  const text = bracketsOf(source, {
    ...around,
    section: around.section && { ref: around.section.ref ?? '' },
  }).slice(2, -1)
  const { source: notation } = around.table.notations
  const read = notation && readNotation(notation, text)
  const same =
    read?.ok && isSameJson(completeSource(read.value as SourceRef, around.section, around.root), source)
  return same ? text : undefined
}

/** ` [p. 60]`, or nothing where the section gives the same source. */
function bracketsOf(source: SourceRef | undefined, { section, root }: Around): string {
  if (source === undefined || isSameJson(source, section)) return ''
  const { ref, page, confidence } = source
  const isKnown = page !== undefined && completeSource({ confidence }, section, root).ref === ref
  const place = page === undefined ? ref : `${isKnown ? '' : `${ref} `}p. ${page}`
  return ` [${place}${confidence === 'read' ? '' : `, ${confidence}`}]`
}

/** The meters of a log as a list of the days on which they were read, if the list says all. */
function writeMeters(meters: Holder, { row, lists = [] }: PlaceNode, around: Around): unknown {
  const readingsOf = (meter: string) => {
    const { unit, readings = [] } = (meters[meter] ?? {}) as { unit?: string; readings?: readonly Holder[] }
    return readings.map(({ date, value }) => ({ date, [meter]: { value, unit } }) as Holder)
  }
  const hours = readingsOf('hours')
  const days: Holder[] = []
  for (const distance of readingsOf('distance')) {
    while (hours[0] !== undefined && String(hours[0]['date']) < String(distance['date']))
      days.push(...hours.splice(0, 1))
    const isSameDay = hours[0]?.['date'] === distance['date']
    days.push({ ...distance, ...(isSameDay && hours.shift()) })
  }
  days.push(...hours)
  const isWhole = days.length > 0 && isSameJson(row.collect?.(days).value, meters)
  if (!isWhole) return undefined
  const leaf: PlaceNode = { row: {}, below: {} }
  return lists
    .map((notation) => days.map((read) => writePlace(notation, read, leaf, around)))
    .find((texts) => !texts.includes(undefined))
}

/** A list of parts as a map from their pointers, if each has another and one text says the rest. */
function writeByPointer(notation: Notation, list: readonly unknown[], around: Around): Holder | undefined {
  const texts = new Map<unknown, string | undefined>()
  for (const entry of list) {
    const { on, ...rest } = entry as Holder
    texts.set(on, writePlace(notation, rest, { row: {}, below: {} }, around))
  }
  const isWhole = texts.size === list.length && list.length > 0 && ![...texts.values()].includes(undefined)
  return isWhole ? Object.fromEntries(texts) : undefined
}

/** The leaves that an override sets, by their paths where each has another. */
function shortenSet(set: unknown, around: Around): unknown {
  const entries = set as readonly { readonly kind: string; readonly path: string; readonly to: unknown }[]
  const isMap = new Set(entries.map(({ path }) => path)).size === entries.length
  const isKnown = entries.every(
    ({ kind, path }) => findLeafNotation(around.table, splitPointer(path) ?? [])?.kind === kind,
  )
  if (!isMap || !isKnown) return set
  const written = entries.map(({ path, to }) => {
    const notation = findLeafNotation(around.table, splitPointer(path) ?? [])?.notation
    const leaf: PlaceNode = { row: {}, below: {} }
    return [path, (notation && writePlace(notation, to, leaf, around)) ?? to]
  })
  return Object.fromEntries(written)
}
