import { splitPointer } from '../../base/index.js'
import { appendKey, makeChildPlace } from './makeChildPlace.js'
import { asHolder, type Expander, findLeafNotation, type Holder, type Place } from './placeTable.js'

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
