import { canBothBeMet } from '../lookup/canBothBeMet.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * Two overrides of one leaf whose conditions the same machine could meet. It is unknown which figure applies,
 * and the order in the file must not decide. Narrow one of the conditions.
 * Judges: Every two override entries with the same `path`. They overlap if one machine can meet both
 * conditions. That is so if, for some variant that both permit (or without one, if the sheet has no
 * variants), the first condition, the second, and the variant's condition are compatible in pairs. Two
 * conditions are compatible if their markets share an entry, their model years share a year, and their
 * serials can be equal: with the same prefix, neither range ends before the other starts; with different
 * prefixes, one is the other followed by digits. Omitted parts of a condition are compatible with everything.
 * Ends of serials are compared only if their widths are equal. The later entry gets one finding, which names
 * the first earlier entry that it overlaps.
 * Place: `/overrides/<place>/set/<place>`
 * Params: target: the shared path; with: pointer to the earlier entry
 * Harm: machine
 * House rule: a conflict is reported, never resolved by the order of overrides.
 */
export const rule = sheetRule('spec/overlapping-overrides', 'error', ({ document }) => {
  const entries = (document.overrides ?? []).flatMap(({ when, set }, place) =>
    set.map((entry, at) => ({ when, target: entry.path, path: `/overrides/${place}/set/${at}` })),
  )
  const earlierByTarget = new Map<string, typeof entries>()
  return entries.flatMap(({ when, target, path }) => {
    const earlierEntries = earlierByTarget.get(target) ?? []
    const overlappingEntry = earlierEntries.find((earlierEntry) =>
      canBothBeMet(document, earlierEntry.when, when),
    )
    earlierByTarget.set(target, earlierEntries)
    earlierEntries.push({ when, target, path })
    if (overlappingEntry === undefined) return []
    const related = [
      { document: { kind: 'spec-sheet' as const, id: document.id }, path: overlappingEntry.path },
    ]
    return [{ path, related, params: { target, with: overlappingEntry.path } }]
  })
})
