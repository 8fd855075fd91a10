import { splitPointer } from '../../base/index.js'
import type { SourceRef } from '../../spec/index.js'
import { FORBIDDEN_KEYS, ID_PATTERN } from '../shapes/textShapes.js'
import { explainText } from './explainText.js'
import { appendKey, makeChildPlace } from './makeChildPlace.js'
import type { WrittenSource } from './piece.js'
import type { Expander, Holder, Place, PlaceNode } from './placeTable.js'
import { asHolder, findLeafNotation } from './placeTable.js'

/** Reads the source of all texts in a section. Only an override also has one in the full form. */
export function readSection(
  holder: Holder,
  { row: { isOverride } }: PlaceNode,
  place: Place,
  { table, document, readText, findings, report }: Expander,
): Partial<SourceRef> | undefined {
  const { source: text } = holder
  const { source: notation } = table.notations
  const sourcePlace = makeChildPlace(place, 'source')
  if (typeof text === 'number') {
    findings.push(report(sourcePlace.path, 'spec/wrong-type', { expected: 'text', found: 'number' }))
    delete holder['source']
  }
  if (typeof text !== 'string' || notation === undefined) return place.section
  const source = readText(text, notation, sourcePlace) as WrittenSource | null
  const fullSource = source === null ? null : completeSource(source, place.section, document)
  if (fullSource !== null && fullSource.ref === undefined)
    findings.push(
      explainText(notation, text, { at: 0, expected: ['known source'] }, sourcePlace.path, report),
    )
  if (isOverride) holder['source'] = fullSource
  else delete holder['source']
  return fullSource?.ref === undefined ? place.section : fullSource
}

/** Reads `[left, right]` as a record of objects with only a name. */
export function readIds(value: unknown, place: Place, { places }: Expander): unknown {
  const isIds = Array.isArray(value) && new Set(value).size === value.length && value.every(isId)
  if (!isIds) return value
  for (const [at, id] of value.entries())
    places.push({ full: appendKey(place.full, id), path: appendKey(place.path, String(at)) })
  return Object.fromEntries(value.map((id) => [id, {}]))
}

const isId = (value: unknown): value is string =>
  typeof value === 'string' && ID_PATTERN.test(value) && !FORBIDDEN_KEYS.includes(value)

/** Reads the leaves of an override: a map by path, or a list as in the full form. */
export function readSet(
  holder: Holder,
  place: Place,
  { table, places, findings, unreadPointers, report, readText }: Expander,
): void {
  const { set } = holder
  const leavesByPath = asHolder(set)
  const setPlace = makeChildPlace(place, 'set')
  const entries =
    leavesByPath === undefined ? set : Object.entries(leavesByPath).map(([path, to]) => ({ path, to }))
  if (!Array.isArray(entries)) return
  for (const [at, entry] of entries.entries()) {
    const { path, to } = asHolder(entry) ?? {}
    if (typeof path !== 'string') continue
    const entryPlace = makeChildPlace(setPlace, String(at))
    const writtenPlace = leavesByPath === undefined ? entryPlace : makeChildPlace(setPlace, path)
    const tokens = splitPointer(path) ?? []
    const { notation, kind } = findLeafNotation(table, tokens) ?? {}
    const leaf = {
      ...place,
      full: appendKey(entryPlace.full, 'to'),
      path: leavesByPath === undefined ? appendKey(entryPlace.path, 'to') : writtenPlace.path,
    }
    if (leavesByPath !== undefined) {
      places.push({ full: entryPlace.full, path: writtenPlace.path })
      places.push({ full: leaf.full, path: leaf.path, moved: true })
      if (notation === undefined) {
        findings.push(report(writtenPlace.path, 'spec/unknown-key', { key: path, known: [] }))
        unreadPointers.push(entryPlace.full)
        continue
      }
    }
    if (notation === undefined) continue
    if (leavesByPath !== undefined) entry.kind = kind
    if (typeof to === 'string') entry.to = readText(to, notation, leaf)
  }
  holder['set'] = entries
}

/**
 * The source named in a text. A missing id is taken from the section's source, or from the sheet's only
 * source.
 */
export function completeSource(
  written: WrittenSource,
  section: Partial<SourceRef> | undefined,
  document: Holder,
): Partial<SourceRef> {
  if (written.ref !== undefined) return written
  const ref = section?.ref ?? findOnlySource(document)
  return ref === undefined ? written : { ref, ...written }
}

function findOnlySource({ sources }: Holder): string | undefined {
  const ids = Object.keys(asHolder(sources) ?? {})
  return ids.length === 1 ? ids[0] : undefined
}
