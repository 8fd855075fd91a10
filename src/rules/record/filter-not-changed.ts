import { judgePart } from '../../spec/index.js'
import { entryRule } from '../ruleMakers.js'

/**
 * An oil change without changing or cleaning the filter or strainer, as the manual requires. Dirt gets into
 * the new oil, and a blocked suction strainer starves the pump.
 * Judges: Every judged change: each filter of its gearcase that the machine certainly has, with a stated
 * `change`. Finds a filter that no entry for the same gearcase and instance lists under `filters`, or that
 * was only `cleaned` although a new one was due.
 * Place: the filter in this entry, `/entries/<place>/filters/<place>/done`; else `/entries/<place>`
 * Params: part: the name of the part (see terms); change: as the sheet states it
 * Harm: machine
 * Common practice, no source.
 */
export const rule = entryRule('record/filter-not-changed', 'error', (indexedEntry, { document }) => {
  const { path, entry, sheet, gearcase, identity, isChange } = indexedEntry
  if (!isChange) return []
  const filterNotes = document.entries
    .filter(
      (recordEntry) => recordEntry.gearcase === entry.gearcase && recordEntry.instance === entry.instance,
    )
    .flatMap((recordEntry) => recordEntry.filters ?? [])
  return Object.entries(gearcase.filters ?? {}).flatMap(([id, { change, name }]) => {
    const on = `/gearcases/${entry.gearcase}/filters/${id}`
    const isServiced = filterNotes.some(
      (filterNote) => filterNote.on === on && (filterNote.done === 'new' || change !== 'every change'),
    )
    if (change === 'not stated' || isServiced) return []
    if (judgePart(sheet.document, identity, on).verdict !== 'yes') return []
    const place = (entry.filters ?? []).findIndex((filter) => filter.on === on)
    const params = { part: `${gearcase.name}, ${name}`, change }
    return [{ path: place === -1 ? path : `${path}/filters/${place}/done`, params }]
  })
})
