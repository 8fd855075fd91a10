import { appendKey } from '../../base/index.js'
import { getTypeName } from '../convertIssue.js'
import type { Notation } from './notation.js'
import type { Expander, Holder, Place, ReadShort } from './placeTable.js'
import { asObject, makeChildPlace } from './placeTable.js'
import { readNotation } from './readNotation.js'

/** Reads a list of texts as one object, in the notation that fits most of them. */
export const readList: ReadShort = (
  list,
  { collect, texts: [first = '', ...others] = [] },
  place,
  expander,
) => {
  if (!Array.isArray(list) || collect === undefined) return list
  const { places, table } = expander
  const countFits = (name: string) =>
    list.filter(
      (text) => typeof text === 'string' && readNotation(table.notations[name] as Notation, text).ok,
    ).length
  const notation = others.find((name) => countFits(name) > countFits(first)) ?? first
  const placeCount = places.length
  const values = list.map((text, at) =>
    readEntry(text, notation, makeChildPlace(place, String(at)), expander),
  )
  const texts = places.slice(placeCount)
  const { value, places: collected } = collect(values.filter((item) => item !== null))
  for (const { full, of, part } of collected) {
    const { path = place.path, parts = [] } = texts[of] ?? {}
    const ownParts = parts.filter((item) => item.path === part || item.path.startsWith(`${part}/`))
    places.push({
      full: place.full + full,
      path,
      parts: ownParts.map((item) => ({ ...item, path: item.path.slice(part.length) })),
    })
  }
  return value
}

/** Reads a value that must be a string. */
function readEntry(
  text: unknown,
  notation: string,
  place: Place,
  { readText, findings, unreadPointers, report }: Expander,
): Holder | null {
  if (typeof text === 'string') return readText(text, notation, place) as Holder | null
  findings.push(report(place.path, 'spec/wrong-type', { expected: 'text', found: getTypeName(text) }))
  unreadPointers.push(place.full)
  return null
}

/** Reads a list of parts that is written as a map from their pointers `on` to texts. */
export const readByPointer: ReadShort = (value, { texts: [notation = ''] = [] }, place, expander) => {
  const map = asObject(value)
  if (map === undefined) return value
  return Object.entries(map).map(([on, text], at) => {
    const entry = { ...makeChildPlace(place, String(at)), path: appendKey(place.path, on) }
    const read = readEntry(text, notation, entry, expander)
    return read === null ? null : { on, ...read }
  })
}
