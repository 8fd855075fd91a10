import { splitPointer } from '../../base/index.js'
import { placeBelow, pointerBelow } from './placeBelow.js'
import { asHolder, type Expander, findLeafNotation, type Holder, type Place } from './placeTable.js'

/** The leaves that an override sets, by their paths: as a map, or as a list as in the full form. */
export function readSet(
  holder: Holder,
  place: Place,
  { table, places, findings, unread, report, readText }: Expander,
): void {
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
      full: pointerBelow(whole.full, 'to'),
      path: given === undefined ? pointerBelow(whole.path, 'to') : written.path,
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
