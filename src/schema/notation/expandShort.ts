import { type Finding, type JsonPointer, joinPointer, splitPointer } from '../../base/index.js'
import {
  placeAsWritten,
  type SourceRef,
  type SpecCodes,
  type WrittenPlace,
  type WrittenPlaces,
} from '../../spec/index.js'
import { nameType } from '../nameMistake.js'
import type { ReportMistake } from '../reportMistake.js'
import { FORBIDDEN_KEYS, ID_PATTERN } from '../shapes/textShapes.js'
import { completeSource } from './completeSource.js'
import { explainText } from './explainText.js'
import type { Notation } from './notation.js'
import type { WrittenSource } from './piece.js'
import {
  asHolder,
  findLeafNotation,
  type Holder,
  nodeBelow,
  type PlaceNode,
  type PlaceRow,
  type PlaceTable,
} from './placeTable.js'
import { readNotation } from './readNotation.js'

/** What was found in the texts of a document. */
export interface Expansion {
  readonly findings: readonly Finding<SpecCodes>[]
  readonly places: WrittenPlaces
  /** Places of the full form whose text could not be read; null is there. */
  readonly unread: readonly JsonPointer[]
  /** Moves a finding on the full form to what was written. */
  readonly asWritten: (finding: Finding<SpecCodes>) => Finding<SpecCodes>
}

/** The source of a section, and where it is written. */
type Section = Partial<SourceRef>

/** A place of the document while it is expanded. */
interface Place {
  readonly full: JsonPointer
  /** Where it is written. */
  readonly path: JsonPointer
  /** What is below it in the full form was written at the same place: in a text, or not at all. */
  readonly isWhole: boolean
  /** Its key in its own holder. */
  readonly id: string
  readonly section: Section | undefined
  readonly gearcase: Holder | undefined
}

/**
 * Brings a document with texts and gaps into its full form, in place: the data must be the caller's own plain copy. What is
 * in full form already stays as it is, also where it is wrong: the shape says so.
 */
export function expandShort(table: PlaceTable, document: Holder, report: ReportMistake): Expansion {
  const findings: Finding<SpecCodes>[] = []
  const places: WrittenPlace[] = []
  const unread: JsonPointer[] = []
  const last: (() => void)[] = []
  const root = { full: '', path: '', isWhole: false, id: '', section: undefined, gearcase: undefined }
  visitHolder(document, table.places, root)
  for (const fill of last) fill()
  return { findings, places, unread, asWritten: (finding) => placeAsWritten(finding, () => places) }

  /** Gives the full form of one value. */
  function visit(value: unknown, node: PlaceNode, place: Place): unknown {
    const { text } = node
    const { under, word, isYesOrNo, isListOfIds } = node.row
    if (typeof value === 'string' && value !== word) {
      const inside = { ...place, isWhole: true }
      if (text !== undefined) return visitBelow(readText(value, text, place), node, inside)
      if (under === undefined) return value
      places.push({ full: place.full, path: place.path })
      return visitBelow(under === '[]' ? [value] : { [under]: value }, node, inside)
    }
    if (typeof value === 'boolean' && isYesOrNo) return value ? 'yes' : 'no'
    const byPointer = node.byPointer && asHolder(value)
    if (node.byPointer && byPointer) return readByPointer(byPointer, node.byPointer, place)
    return visitBelow(isListOfIds ? readIds(value, place) : value, node, place)
  }

  function visitBelow(value: unknown, node: PlaceNode, place: Place): unknown {
    if (Array.isArray(value)) {
      const entry = node.below['*']
      if (entry !== undefined)
        for (const [at, one] of value.entries()) value[at] = visit(one, entry, placeBelow(place, String(at)))
      return value
    }
    const holder = asHolder(value)
    return holder === undefined ? value : visitHolder(holder, node, place)
  }

  function visitHolder(holder: Holder, node: PlaceNode, place: Place): Holder {
    const { row } = node
    const section = row.isSection || row.isOverride ? readSection(holder, row, place) : place.section
    const isInGearcase = place.full.startsWith('/gearcases/')
    const inside = { ...place, section, gearcase: isInGearcase ? (place.gearcase ?? holder) : undefined }
    fillLeftOut(holder, row.leftOut, inside)
    for (const key of Object.keys(holder)) {
      const below = nodeBelow(node, key)
      if (below !== undefined) holder[key] = visit(holder[key], below, placeBelow(inside, key))
    }
    if (row.isOverride) readSet(holder, inside)
    if (row.leftOutLast !== undefined) last.push(() => fillLeftOut(holder, row.leftOutLast, inside))
    return holder
  }

  function fillLeftOut(holder: Holder, leftOut: PlaceRow['leftOut'], place: Place): void {
    for (const key in leftOut) {
      if (holder[key] !== undefined) continue
      const value = leftOut[key]?.({ id: place.id, holder, root: document, gearcase: place.gearcase })
      if (value === undefined) continue
      holder[key] = value
      if (!place.isWhole) places.push({ full: below(place.full, key), path: place.path })
    }
  }

  /** Reads a text, or reports why it cannot be read. */
  function readText(text: string, notation: Notation, place: Place): unknown {
    let isKnown = true
    const read = readNotation(notation, text, (written) => {
      if (written === undefined) return place.section && { ...place.section }
      const source = completeSource(written, place.section, document)
      isKnown &&= source.ref !== undefined
      return source
    })
    if (read.ok && isKnown) {
      places.push({ full: place.full, path: place.path, parts: read.marks })
      return read.value
    }
    const source = read.ok && read.marks.find(({ path }) => path.endsWith('/source'))
    const failed = read.ok ? { at: source ? source.from : 0, expected: ['known source'] as const } : read
    findings.push(explainText(notation, text, failed, place.path, report))
    unread.push(place.full)
    return null
  }

  /** The source of all texts in a section. Only an override has one in the full form too. */
  function readSection(holder: Holder, { isOverride }: PlaceRow, place: Place): Section | undefined {
    const { source: text } = holder
    const { source: notation } = table.notations
    if (typeof text !== 'string' || notation === undefined) return place.section
    const here = placeBelow(place, 'source')
    const source = readText(text, notation, here) as WrittenSource | null
    const whole = source === null ? null : completeSource(source, place.section, document)
    if (whole !== null && whole.ref === undefined)
      findings.push(explainText(notation, text, { at: 0, expected: ['known source'] }, here.path, report))
    if (isOverride) holder['source'] = whole
    else delete holder['source']
    return whole?.ref === undefined ? place.section : whole
  }

  /** `[left, right]` as a record of things that have no more than a name. */
  function readIds(value: unknown, place: Place): unknown {
    const isIds = Array.isArray(value) && new Set(value).size === value.length && value.every(isId)
    if (!isIds) return value
    for (const [at, id] of value.entries())
      places.push({ full: below(place.full, id), path: below(place.path, String(at)) })
    return Object.fromEntries(value.map((id) => [id, {}]))
  }

  /** A list of parts of which each has the pointer `on`, written as a map from the pointers to texts. */
  function readByPointer(map: Holder, notation: Notation, place: Place): unknown {
    return Object.entries(map).map(([on, text], at) => {
      const entry = { ...placeBelow(place, String(at)), path: below(place.path, on) }
      if (typeof text === 'string') {
        const read = readText(text, notation, entry)
        return read === null ? null : { on, ...(read as Holder) }
      }
      findings.push(report(entry.path, 'spec/wrong-type', { expected: 'text', found: nameType(text) }))
      unread.push(entry.full)
      return null
    })
  }

  /** The leaves that an override sets, by their paths: as a map, or as a list as in the full form. */
  function readSet(holder: Holder, place: Place): void {
    const { set } = holder
    const given = asHolder(set)
    const here = placeBelow(place, 'set')
    const entries = given === undefined ? set : Object.entries(given).map(([path, to]) => ({ path, to }))
    if (!Array.isArray(entries)) return
    for (const [at, entry] of entries.entries()) {
      const { path, to } = asHolder(entry) ?? {}
      if (typeof path !== 'string') continue
      const whole = placeBelow(here, String(at))
      const written = given === undefined ? whole : placeBelow(here, path)
      const tokens = splitPointer(path) ?? []
      const { notation, kind } = findLeafNotation(table, tokens) ?? {}
      const leaf = {
        ...place,
        full: below(whole.full, 'to'),
        path: given === undefined ? below(whole.path, 'to') : written.path,
      }
      if (given !== undefined) {
        places.push({ full: whole.full, path: written.path })
        places.push({ full: leaf.full, path: leaf.path, moved: true })
        if (notation === undefined) {
          findings.push(report(written.path, 'spec/unknown-key', { key: path, known: [] }))
          unread.push(whole.full)
          continue
        }
      }
      if (notation === undefined) continue
      if (given !== undefined) entry.kind = kind
      if (typeof to === 'string') entry.to = readText(to, notation, leaf)
    }
    holder['set'] = entries
  }
}

function placeBelow(place: Place, id: string): Place {
  const { isWhole, section, gearcase } = place
  const full = below(place.full, id)
  const path = isWhole ? place.path : place.path === place.full ? full : below(place.path, id)
  return { full, path, isWhole, id, section, gearcase }
}

/** The pointer of a key below another. */
const below = (path: JsonPointer, key: string): JsonPointer =>
  /[~/]/.test(key) ? path + joinPointer([key]) : `${path}/${key}`

const isId = (value: unknown): value is string =>
  typeof value === 'string' && ID_PATTERN.test(value) && !FORBIDDEN_KEYS.includes(value)
