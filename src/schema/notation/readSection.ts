import { appendKey, splitPointer } from '../../base/index.js'
import type { SourceRef } from '../../spec/index.js'
import { FORBIDDEN_KEYS, ID_PATTERN } from '../shapes/textShapes.js'
import type { WrittenSource } from './piece.js'
import type { Expander, Holder, Place, ReadSection, ReadShort } from './placeTable.js'
import { asObject, findLeafNode, makeChildPlace } from './placeTable.js'

/** Reads the source of all texts in a section. Only an override also has one in the full form. */
export const readSection: ReadSection = (holder, { set }, place, { readText, findings, report }) => {
  const { source: text } = holder
  const sourcePlace = makeChildPlace(place, 'source')
  if (typeof text === 'number') {
    findings.push(report(sourcePlace.path, 'spec/wrong-type', { expected: 'text', found: 'number' }))
    delete holder['source']
  }
  if (typeof text !== 'string') return place.section
  const source = readText(text, 'source', sourcePlace) as Partial<SourceRef> | null
  if (set) holder['source'] = source
  else delete holder['source']
  return source ?? place.section
}

/** Reads `[left, right]` as a record of objects with only a name. */
export const readIds: ReadShort = (value, _node, place, { places }) => {
  const isIdList = Array.isArray(value) && new Set(value).size === value.length && value.every(isId)
  if (!isIdList) return value
  for (const [at, id] of value.entries())
    places.push({ full: appendKey(place.full, id), path: appendKey(place.path, String(at)) })
  return Object.fromEntries(value.map((id) => [id, {}]))
}

const isId = (value: unknown): value is string =>
  typeof value === 'string' && ID_PATTERN.test(value) && !FORBIDDEN_KEYS.includes(value)

/** Reads `true` and `false` as `yes` and `no`. */
export const readYesOrNo: ReadShort = (value) => (typeof value === 'boolean' ? (value ? 'yes' : 'no') : value)

/** Reads the leaves of an override: a map by path, or a list as in the full form. */
export function readSet(
  holder: Holder,
  place: Place,
  { table, places, findings, unreadPointers, report, readText }: Expander,
): void {
  const { set } = holder
  const leavesByPath = asObject(set)
  const setPlace = makeChildPlace(place, 'set')
  const entries = leavesByPath ? Object.entries(leavesByPath).map(([path, to]) => ({ path, to })) : set
  if (!Array.isArray(entries)) return
  holder['set'] = entries
  for (const [at, entry] of entries.entries()) {
    const { path, to } = asObject(entry) ?? {}
    if (typeof path !== 'string') continue
    const entryPlace = makeChildPlace(setPlace, String(at))
    let leafPlace = makeChildPlace(entryPlace, 'to')
    const leaf = findLeafNode(table, splitPointer(path) ?? [])
    if (leavesByPath) {
      const written = makeChildPlace(setPlace, path).path
      leafPlace = { ...leafPlace, path: written }
      places.push(
        { full: entryPlace.full, path: written },
        { full: leafPlace.full, path: written, moved: true },
      )
      if (leaf) entry.kind = leaf.leaf
      else {
        findings.push(report(written, 'spec/unknown-key', { key: path, known: [] }))
        unreadPointers.push(entryPlace.full)
      }
    }
    if (leaf?.text && typeof to === 'string') entry.to = readText(to, leaf.text, leafPlace)
  }
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
  const ids = Object.keys(asObject(sources) ?? {})
  return ids.length === 1 ? ids[0] : undefined
}
