import type { JsonPointer } from '../../base/index.js'
import type { RecordEntry } from '../../spec/index.js'
import type { SheetIndex } from '../lookup/indexSheet.js'
import type { SheetPart } from '../lookup/listSheetParts.js'
import { findUnknownIds, type IdToCheck, lookUp } from '../lookup/lookUp.js'
import { recordRule } from '../ruleMakers.js'

/**
 * A record that names a service, gearcase, instance, opening, seal, filter or shield that is not on its
 * sheet, or is on another part of the sheet. The work would not be counted.
 * Judges: Every entry: its gearcase; then its service, and whether that service names the gearcase; its
 * instance; `opened` and `tightened/on` against the openings and covers of that gearcase, `seals/on` against
 * their seals, `filters/on` against its filters. Then `shields/on`. Pointers lead to a whole opening, cover,
 * shield or seal of the sheet. If the gearcase is unknown, that is the entry's only finding. Skipped without
 * the sheet.
 * Place: the id or pointer
 * Params: id: as written; known: up to eight existing ids or pointers; more: how many more exist; meant: the
 * probable id, if one is similar
 * Harm: record
 * House rule.
 */
export const rule = recordRule('record/unknown-part', 'error', ({ document: record, sheet }) => {
  if (sheet === undefined) return []
  const shields = Object.keys(sheet.document.shields ?? {}).map((id) => `/shields/${id}`)
  return findUnknownIds([
    ...record.entries.flatMap((entry, place) => listIds(entry, sheet, `/entries/${place}`)),
    ...(record.shields ?? []).map(({ on: id }, place) => ({
      path: `/shields/${place}/on`,
      id,
      known: shields,
    })),
  ])
})

function listIds(entry: RecordEntry, { document: sheet, parts }: SheetIndex, path: JsonPointer): IdToCheck[] {
  const { service, gearcase, instance } = entry
  const sheetGearcase = lookUp(sheet.gearcases, gearcase)
  if (sheetGearcase === undefined)
    return [{ path: `${path}/gearcase`, id: gearcase, known: Object.keys(sheet.gearcases) }]
  const servicedGearcases = lookUp(sheet.services, service)?.gearcases
  const gearcaseParts = parts.filter((part) => part.path.startsWith(`/gearcases/${gearcase}/`))
  const opened = gearcaseParts.map((part) => part.path)
  const seals = gearcaseParts.flatMap(listSealPaths)
  const filters = gearcaseParts.filter(({ kind }) => kind === 'filter').map((part) => part.path)
  const listItemIds = (key: string, ids: readonly JsonPointer[], known: readonly string[], suffix = '') =>
    ids.map((id, place) => ({ path: `${path}/${key}/${place}${suffix}`, id, known }))
  const getPath = (done: { readonly on: JsonPointer }) => done.on
  return [
    servicedGearcases === undefined
      ? { path: `${path}/service`, id: service, known: Object.keys(sheet.services) }
      : { path: `${path}/gearcase`, id: gearcase, known: servicedGearcases },
    ...(instance === undefined
      ? []
      : [{ path: `${path}/instance`, id: instance, known: Object.keys(sheetGearcase.instances ?? {}) }]),
    ...listItemIds('opened', entry.opened, opened),
    ...listItemIds('tightened', entry.tightened.map(getPath), opened, '/on'),
    ...listItemIds('seals', entry.seals.map(getPath), seals, '/on'),
    ...listItemIds('filters', (entry.filters ?? []).map(getPath), filters, '/on'),
  ]
}

function listSealPaths(at: SheetPart): readonly JsonPointer[] {
  if (at.kind === 'opening' || at.kind === 'filter')
    return at.part.seals.map((_seal, place) => `${at.path}/seals/${place}`)
  return at.kind === 'cover' ? [`${at.path}/seal`] : []
}
