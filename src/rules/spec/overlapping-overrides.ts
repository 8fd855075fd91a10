import { canBothBeMet } from '../lookup/canBothBeMet.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * Two overrides of one leaf whose conditions one machine could meet at once: it is not known which figure applies,
 * and the order in the file must not decide. Narrow one of the conditions.
 * Judges: Every two entries of overrides with the same `path`. They overlap when one variant permitted by both exists
 * (or the sheet has none) for which both conditions, and the variant's own, agree in each two of market (a common
 * entry), model years (a common year) and serials (same prefix: neither range ends before the other starts; else one
 * prefix is the other followed by digits); what a condition omits agrees with everything. Ends of serials are
 * compared only if their widths are equal. The later entry gets one finding, with the first earlier one that it
 * overlaps.
 * Place: `/overrides/<place>/set/<place>`
 * Params: target: the path that both set; with: pointer to the earlier entry
 * Harm: machine
 * House rule: a conflict is reported, never resolved by the order of overrides.
 */
export const rule = sheetRule('spec/overlapping-overrides', 'error', ({ document }) => {
  const entries = (document.overrides ?? []).flatMap(({ when, set }, place) =>
    set.map((entry, at) => ({ when, target: entry.path, path: `/overrides/${place}/set/${at}` })),
  )
  const earlierOf = new Map<string, typeof entries>()
  return entries.flatMap(({ when, target, path }) => {
    const earlier = earlierOf.get(target) ?? []
    const clash = earlier.find((one) => canBothBeMet(document, one.when, when))
    earlierOf.set(target, earlier)
    earlier.push({ when, target, path })
    if (clash === undefined) return []
    const related = [{ document: { kind: 'spec-sheet' as const, id: document.id }, path: clash.path }]
    return [{ path, related, params: { target, with: clash.path } }]
  })
})
