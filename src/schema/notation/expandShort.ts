import type { Finding, JsonPointer } from '../../base/index.js'
import { placeAsWritten, type SpecCodes, type WrittenPlace, type WrittenPlaces } from '../../spec/index.js'
import type { ReportMistake } from '../reportMistake.js'
import { completeSource } from './completeSource.js'
import { explainText } from './explainText.js'
import type { Notation } from './notation.js'
import { placeBelow, pointerBelow } from './placeBelow.js'
import {
  asHolder,
  type Expander,
  type Holder,
  nodeBelow,
  type Place,
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

/**
 * Brings a document with texts and gaps into its full form, in place: the data must be the caller's own plain copy. What is
 * in full form already stays as it is, also where it is wrong: the shape says so.
 */
export function expandShort(table: PlaceTable, document: Holder, report: ReportMistake): Expansion {
  const findings: Finding<SpecCodes>[] = []
  const places: WrittenPlace[] = []
  const unread: JsonPointer[] = []
  const last: (() => void)[] = []
  const { readers } = table
  const expander: Expander = { table, document, report, findings, places, unread, readText }
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
    if (node.lists && Array.isArray(value)) return readers.list?.(value, node, place, expander)
    const map = node.byPointer && asHolder(value)
    if (node.byPointer && map) return readers.byPointer?.(map, node.byPointer, place, expander)
    return visitBelow(isListOfIds ? readers.ids?.(value, place, expander) : value, node, place)
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
    const section =
      row.isSection || row.isOverride ? readers.section?.(holder, node, place, expander) : place.section
    const isInGearcase = place.full.startsWith('/gearcases/')
    const inside = { ...place, section, gearcase: isInGearcase ? (place.gearcase ?? holder) : undefined }
    fillLeftOut(holder, row.leftOut, inside)
    for (const key of Object.keys(holder)) {
      const below = nodeBelow(node, key)
      if (below !== undefined) holder[key] = visit(holder[key], below, placeBelow(inside, key))
    }
    if (row.isOverride) readers.set?.(holder, inside, expander)
    if (row.leftOutLast !== undefined) last.push(() => fillLeftOut(holder, row.leftOutLast, inside))
    return holder
  }

  function fillLeftOut(holder: Holder, leftOut: PlaceRow['leftOut'], place: Place): void {
    for (const key in leftOut) {
      if (holder[key] !== undefined) continue
      const value = leftOut[key]?.({ id: place.id, holder, root: document, gearcase: place.gearcase })
      if (value === undefined) continue
      holder[key] = value
      if (!place.isWhole) places.push({ full: pointerBelow(place.full, key), path: place.path })
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
}
