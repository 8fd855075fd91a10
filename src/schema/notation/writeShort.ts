import { isSameJson, splitPointer } from '../../base/index.js'
import type {
  Documents,
  MachineLogInput,
  ServiceRecordInput,
  SourceRef,
  SpecSheetInput,
  StockInput,
  ToolboxInput,
} from '../../spec/index.js'
import { requireDocument } from '../../spec/index.js'
import { chooseSource } from './chooseSource.js'
import { type NotationName, PLACE_TABLES } from './notationTables.js'
import type { DefaultContext, Holder, PlaceNode, PlaceTable } from './placeTable.js'
import { asObject, findChildNode, findLeafNode, makeDefault } from './placeTable.js'
import { readByPointer } from './readList.js'
import { readNotation } from './readNotation.js'
import { completeSource, readIds } from './readSection.js'
import { sheetNotationTable } from './sheetNotationTable.js'
import { writeText } from './writeText.js'

/** The surroundings of a place while it is written. */
interface WriteContext {
  readonly table: PlaceTable
  readonly id: string
  readonly root: Holder
  readonly gearcase: Holder | undefined
  readonly section: Partial<SourceRef> | undefined
}

/** The documents with short notation, and their input types. */
interface ShortForms {
  readonly 'spec-sheet': SpecSheetInput
  readonly 'machine-log': MachineLogInput
  readonly toolbox: ToolboxInput
  readonly stock: StockInput
  readonly 'service-record': ServiceRecordInput
}

/**
 * Writes a full document in short notation: with texts instead of objects, and without keys that have their
 * default value. It is for programs that show a document to a person. To read it back, use the parse function
 * of its kind, such as {@link parseSpecSheet}.
 *
 * Method: each text is read back; a value that would not be the same stays an object.
 * @param document A parsed document of any kind except a procedure; it is not changed.
 * @returns The short document as plain data. The parse function makes the same full document of it.
 * @throws TypeError if `document` is not such a document.
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
  const kind = (Object.keys(PLACE_TABLES) as Document['kind'][]).find(
    (candidate) => candidate === document?.kind,
  )
  requireDocument('document', document, kind ?? 'spec-sheet')
  const table = (kind && PLACE_TABLES[kind]?.()) ?? sheetNotationTable()
  const root = document as unknown as Holder
  const context = { table, id: '', root, gearcase: undefined, section: undefined }
  const short = stripDefaults(root, table.places, context)
  return shorten(short, table.places, context) as ShortForms[Document['kind']]
}

/** The short form of one value without defaults. */
function shorten(value: unknown, node: PlaceNode, context: WriteContext): unknown {
  if (value === node.fullText) return value
  const text = writeValueText(node.text, value, node, context)
  if (text !== undefined) return text
  if (Array.isArray(value)) {
    const map = node.read === readByPointer ? writeByPointer(value, node, context) : undefined
    if (map !== undefined) return map
    const entry = node.children?.['*']
    const list =
      entry === undefined
        ? value
        : value.map((item, at) => shorten(item, entry, { ...context, id: String(at) }))
    return node.textKey === '[]' && list.length === 1 && typeof list[0] === 'string' ? list[0] : list
  }
  const holder = asObject(value)
  if (holder === undefined) return value
  const days = node.collect && writeMeters(holder, node, context)
  if (days !== undefined) return days
  if (node.read === readIds && Object.values(holder).every((candidate) => isSameJson(candidate, {})))
    return Object.keys(holder)
  return shortenObject(holder, node, context)
}

function shortenObject(holder: Holder, node: PlaceNode, context: WriteContext): unknown {
  const isGearcase = node === context.table.places.children?.['gearcases']?.children?.['*']
  const gearcase = isGearcase ? asObject(asObject(context.root['gearcases'])?.[context.id]) : context.gearcase
  const source = node.set ? holder['source'] : chooseSource(holder, node, context)
  const written = source === undefined ? undefined : writeSource(source as SourceRef, context)
  const section = written === undefined ? context.section : (source as SourceRef)
  const short: Holder = written === undefined ? {} : { source: written }
  for (const [key, one] of Object.entries(holder)) {
    const child = findChildNode(node, key)
    const innerContext = { ...context, id: key, gearcase, section }
    if (node.set && key === 'set') short[key] = shortenSet(one, innerContext)
    else if (short[key] === undefined)
      short[key] = child === undefined ? one : shorten(one, child, innerContext)
  }
  const [only = '', ...others] = Object.keys(short)
  return only === node.textKey && others.length === 0 && typeof short[only] === 'string' ? short[only] : short
}

/** A value in short notation, if reading it gives the same value. */
function writeValueText(
  name: string | undefined,
  value: unknown,
  node: PlaceNode,
  context: WriteContext,
): string | undefined {
  const { section, root, table } = context
  const notation = name === undefined ? undefined : table.notations[name]
  if (notation === undefined) return undefined
  const text = writeText(name as NotationName, value, (source) => formatBrackets(source, context))
  if (text === undefined) return undefined
  const read = readNotation(notation, text, (written) =>
    written === undefined ? section && { ...section } : completeSource(written, section, root),
  )
  return read.ok && isSameJson(stripDefaults(read.value, node, context), value) ? text : undefined
}

/** The source of a section or an override in short notation. */
function writeSource(source: SourceRef, context: WriteContext): string | undefined {
  const text = formatBrackets(source, {
    ...context,
    section: context.section && { ref: context.section.ref ?? '' },
  }).slice(2, -1)
  const { source: notation } = context.table.notations
  const read = notation && readNotation(notation, text)
  const isSame =
    read?.ok && isSameJson(completeSource(read.value as SourceRef, context.section, context.root), source)
  return isSame ? text : undefined
}

/** ` [p. 60]`, or nothing if the section has the same source. */
function formatBrackets(source: SourceRef | undefined, { section, root }: WriteContext): string {
  if (source === undefined || isSameJson(source, section)) return ''
  const { ref, page, confidence } = source
  const isKnown = page !== undefined && completeSource({ confidence }, section, root).ref === ref
  const place = page === undefined ? ref : `${isKnown ? '' : `${ref} `}p. ${page}`
  return ` [${place}${confidence === 'read' ? '' : `, ${confidence}`}]`
}

/** The meters of a log as a list of readings by day, if nothing is lost. */
function writeMeters(meters: Holder, { collect, texts = [] }: PlaceNode, context: WriteContext): unknown {
  const listReadings = (meter: string) => {
    const { unit, readings = [] } = (meters[meter] ?? {}) as { unit?: string; readings?: readonly Holder[] }
    return readings.map(({ date, value }) => ({ date, [meter]: { value, unit } }) as Holder)
  }
  const hours = listReadings('hours')
  const days: Holder[] = []
  for (const distance of listReadings('distance')) {
    while (hours[0] !== undefined && String(hours[0]['date']) < String(distance['date']))
      days.push(...hours.splice(0, 1))
    const isSameDay = hours[0]?.['date'] === distance['date']
    days.push({ ...distance, ...(isSameDay && hours.shift()) })
  }
  days.push(...hours)
  const isLossless = days.length > 0 && isSameJson(collect?.(days).value, meters)
  if (!isLossless) return undefined
  return texts
    .map((name) => days.map((read) => writeValueText(name, read, {}, context)))
    .find((written) => !written.includes(undefined))
}

/**
 * A list of parts as a map from their pointers to texts, if the pointers differ and the texts lose nothing.
 */
function writeByPointer(
  list: readonly unknown[],
  { texts: [name] = [] }: PlaceNode,
  context: WriteContext,
): Holder | undefined {
  const texts = new Map<unknown, string | undefined>()
  for (const entry of list) {
    const { on, ...rest } = entry as Holder
    texts.set(on, writeValueText(name, rest, {}, context))
  }
  const isLossless = texts.size === list.length && list.length > 0 && ![...texts.values()].includes(undefined)
  return isLossless ? Object.fromEntries(texts) : undefined
}

/** The leaves of an override, by path if all paths differ. */
function shortenSet(set: unknown, context: WriteContext): unknown {
  const entries = set as readonly { readonly kind: string; readonly path: string; readonly to: unknown }[]
  const hasUniquePaths = new Set(entries.map(({ path }) => path)).size === entries.length
  const isKnown = entries.every(
    ({ kind, path }) => findLeafNode(context.table, splitPointer(path) ?? [])?.leaf === kind,
  )
  if (!hasUniquePaths || !isKnown) return set
  const written = entries.map(({ path, to }) => {
    const leaf = findLeafNode(context.table, splitPointer(path) ?? [])
    return [path, writeValueText(leaf?.text, to, {}, context) ?? to]
  })
  return Object.fromEntries(written)
}

/** Removes the keys of a value that reading would fill in with the same values. */
function stripDefaults(
  value: unknown,
  node: PlaceNode,
  { id, root, gearcase: above }: Pick<DefaultContext, 'id' | 'root' | 'gearcase'>,
): unknown {
  if (Array.isArray(value)) {
    const entry = node.children?.['*']
    if (entry === undefined) return value
    return value.map((item, at) => stripDefaults(item, entry, { id: String(at), root, gearcase: above }))
  }
  const holder = asObject(value)
  if (holder === undefined) return value
  const isGearcase = asObject(root['gearcases'])?.[id] === holder
  const gearcase = isGearcase ? holder : above
  const remaining: Holder = {}
  for (const [key, one] of Object.entries(holder)) {
    const child = findChildNode(node, key)
    const strippedValue = child === undefined ? one : stripDefaults(one, child, { id: key, root, gearcase })
    const written = node.defaults?.[key] ?? node.laterDefaults?.[key]
    const defaultValue = makeDefault(written, { id, holder, root, gearcase })
    const isDefault =
      defaultValue !== undefined && (isSameJson(defaultValue, one) || isSameJson(defaultValue, strippedValue))
    if (!isDefault) remaining[key] = strippedValue
  }
  return remaining
}
