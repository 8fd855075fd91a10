import type { JsonPointer } from '../../base/index.js'
import type { RecordEntry } from '../../spec/index.js'
import type { SheetIndex } from '../lookup/indexSheet.js'
import { lookUp } from '../lookup/lookUp.js'
import type { PartAt } from '../lookup/sheetParts.js'
import { type NameAt, unknownNames } from '../lookup/unknownNames.js'
import { recordRule } from '../ruleMakers.js'

/**
 * A record that names a service, a gearcase, an instance, an opening, a seal, a filter or a shield that its sheet does
 * not have, or that belongs to another part of the sheet: the work would not be counted.
 * Judges: Every entry: its gearcase; then its service, and whether that service names the gearcase; its instance;
 * `opened` and `tightened/on` against the openings and covers of that gearcase, `seals/on` against their seals,
 * `filters/on` against its filters. Then `shields/on`. Pointers lead into the sheet, to the whole opening, cover,
 * shield or seal. An unknown gearcase is the only finding of its entry. Not judged without the sheet.
 * Place: the id or pointer
 * Params: id: as written; known: up to eight that exist there; more: how many more exist; meant: the id that was
 * probably meant, if one is similar
 * Harm: record
 * House rule.
 */
export const rule = recordRule('record/unknown-part', 'error', ({ document: record, sheet }) => {
  if (sheet === undefined) return []
  const shields = Object.keys(sheet.document.shields ?? {}).map((id) => `/shields/${id}`)
  return unknownNames([
    ...record.entries.flatMap((entry, place) => namesOf(entry, sheet, `/entries/${place}`)),
    ...(record.shields ?? []).map(({ on: id }, place) => ({
      path: `/shields/${place}/on`,
      id,
      known: shields,
    })),
  ])
})

function namesOf(entry: RecordEntry, { document: sheet, parts }: SheetIndex, path: JsonPointer): NameAt[] {
  const { service, gearcase, instance } = entry
  const onSheet = lookUp(sheet.gearcases, gearcase)
  if (onSheet === undefined)
    return [{ path: `${path}/gearcase`, id: gearcase, known: Object.keys(sheet.gearcases) }]
  const served = lookUp(sheet.services, service)?.gearcases
  const ownParts = parts.filter((part) => part.path.startsWith(`/gearcases/${gearcase}/`))
  const opened = ownParts.map((part) => part.path)
  const seals = ownParts.flatMap(sealPaths)
  const filters = ownParts.filter(({ kind }) => kind === 'filter').map((part) => part.path)
  const named = (key: string, ids: readonly JsonPointer[], known: readonly string[], end = '') =>
    ids.map((id, place) => ({ path: `${path}/${key}/${place}${end}`, id, known }))
  const on = (done: { readonly on: JsonPointer }) => done.on
  return [
    served === undefined
      ? { path: `${path}/service`, id: service, known: Object.keys(sheet.services) }
      : { path: `${path}/gearcase`, id: gearcase, known: served },
    ...(instance === undefined
      ? []
      : [{ path: `${path}/instance`, id: instance, known: Object.keys(onSheet.instances ?? {}) }]),
    ...named('opened', entry.opened, opened),
    ...named('tightened', entry.tightened.map(on), opened, '/on'),
    ...named('seals', entry.seals.map(on), seals, '/on'),
    ...named('filters', (entry.filters ?? []).map(on), filters, '/on'),
  ]
}

function sealPaths(at: PartAt): readonly JsonPointer[] {
  if (at.kind === 'opening' || at.kind === 'filter')
    return at.part.seals.map((_seal, place) => `${at.path}/seals/${place}`)
  return at.kind === 'cover' ? [`${at.path}/seal`] : []
}
