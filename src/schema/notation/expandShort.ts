import { appendKey, type Finding, type JsonPointer, MAX_MISTAKES } from '../../base/index.js'
import {
  isMoved,
  moveToWritten,
  type SpecCodes,
  type WrittenPlace,
  type WrittenPlaces,
} from '../../spec/index.js'
import type { ReportMistake } from '../reportMistake.js'
import type { Notation } from './notation.js'
import type { Defaults, Expander, Holder, Place, PlaceNode, PlaceTable } from './placeTable.js'
import { findChildNode, makeChildPlace, makeDefault } from './placeTable.js'
import { readNotation } from './readNotation.js'
import { completeSource } from './readSection.js'
import { reportUnreadableText } from './reportUnreadableText.js'

/** The results of expanding a document. */
export interface Expansion {
  readonly findings: readonly Finding<SpecCodes>[]
  readonly places: WrittenPlaces
  /** Pointers in the full form whose text could not be read; the value there is null. */
  readonly unreadPointers: readonly JsonPointer[]
  /** Whether the part of the full form at a pointer was written elsewhere. */
  readonly isMoved: (full: JsonPointer) => boolean
  /** Moves a finding from the full form to the document as written. */
  readonly moveToWritten: (finding: Finding<SpecCodes>) => Finding<SpecCodes>
}

/**
 * Expands a document with texts and omitted keys to its full form, in place: the data must be the caller's
 * own plain copy. Values in full form stay as they are, even if wrong: the shape reports that.
 */
export function expandShort(table: PlaceTable, document: Holder, report: ReportMistake): Expansion {
  const findings: Finding<SpecCodes>[] = []
  const places: WrittenPlace[] = []
  const unreadPointers: JsonPointer[] = []
  const laterFills: (() => void)[] = []
  const expander: Expander = { table, document, report, findings, places, unreadPointers, readText }
  expandHolder(document, table.places, { full: '', path: '', id: '' })
  for (const fill of laterFills) fill()
  return {
    findings,
    places,
    unreadPointers,
    isMoved: (full) => isMoved(places, full),
    moveToWritten: (finding) => moveToWritten(finding, () => places),
  }

  /** Returns the full form of one value. */
  function expandValue(value: unknown, node: PlaceNode, place: Place): unknown {
    const { text, textKey, fullText, read } = node
    if (typeof value !== 'string' || value === fullText)
      return expandChildren(read ? read(value, node, place, expander) : value, node, place)
    const innerPlace = { ...place, sharesPath: true }
    if (text !== undefined) return expandChildren(readText(value, text, place), node, innerPlace)
    if (textKey === undefined) return value
    places.push({ full: place.full, path: place.path })
    return expandChildren(textKey === '[]' ? [value] : { [textKey]: value }, node, innerPlace)
  }

  function expandChildren(value: unknown, node: PlaceNode, place: Place): unknown {
    return typeof value === 'object' && value !== null ? expandHolder(value as Holder, node, place) : value
  }

  /** Expands an object or a list. */
  function expandHolder(holder: Holder, node: PlaceNode, place: Place): Holder {
    const { defaults, laterDefaults } = Array.isArray(holder) ? {} : node
    const innerPlace = {
      ...place,
      section: node.section ? node.section(holder, node, place, expander) : place.section,
      gearcase: place.gearcase ?? (place.full.startsWith('/gearcases/') ? holder : undefined),
    }
    fillDefaults(holder, defaults, innerPlace)
    for (const key of Object.keys(holder)) {
      const child = findChildNode(node, key)
      const value = holder[key]
      // A leaf in full form has nothing to expand.
      if (child !== undefined && (child.leaf === undefined || typeof value === 'string'))
        holder[key] = expandValue(value, child, makeChildPlace(innerPlace, key))
    }
    node.set?.(holder, innerPlace, expander)
    if (laterDefaults !== undefined) laterFills.push(() => fillDefaults(holder, laterDefaults, innerPlace))
    return holder
  }

  function fillDefaults(holder: Holder, defaults: Defaults | undefined, place: Place): void {
    for (const key in defaults) {
      if (holder[key] !== undefined) continue
      const { id, gearcase } = place
      const value = makeDefault(defaults[key], { id, holder, root: document, gearcase })
      if (value === undefined) continue
      holder[key] = value
      if (!place.sharesPath) places.push({ full: appendKey(place.full, key), path: place.path })
    }
  }

  /** Reads a text, or reports the reason if it cannot be read. */
  function readText(text: string, name: string, { full, path, section }: Place): unknown {
    if (findings.length > MAX_MISTAKES) {
      unreadPointers.push(full)
      return null
    }
    const notation = table.notations[name] as Notation
    let isKnown = true
    const reading = readNotation(notation, text, (written) => {
      if (written === undefined) return section && { ...section }
      const source = completeSource(written, section, document)
      isKnown &&= source.ref !== undefined
      return source
    })
    if (reading.ok && isKnown) {
      places.push({ full, path, parts: reading.marks })
      return reading.value
    }
    const source = reading.ok && reading.marks.find((mark) => mark.path.endsWith('/source'))
    const failure = reading.ok
      ? { at: source ? source.from : 0, expected: ['known source'] as const }
      : reading
    findings.push(reportUnreadableText(notation, text, failure, path, report))
    unreadPointers.push(full)
    return null
  }
}
