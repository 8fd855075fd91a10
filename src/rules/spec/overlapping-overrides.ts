import { canBothHold } from '../lookup/canBothHold.js'
import { defineRule } from '../rule.js'

/**
 * Two overrides of one leaf that one machine could meet at once: nobody could say which figure holds, and the
 * last one must not win by its place in the file. Narrow one of the conditions. House rule: two answers are
 * no answer.
 */
export const overlappingOverrides = defineRule({
  code: 'spec/overlapping-overrides',
  severity: 'error',
  about: 'spec-sheet',
  check: ({ document }) => {
    const entries = (document.overrides ?? []).flatMap(({ when, set }, place) =>
      set.map((entry, at) => ({ when, target: entry.path, path: `/overrides/${place}/set/${at}` })),
    )
    const earlierOf = new Map<string, typeof entries>()
    return entries.flatMap(({ when, target, path }) => {
      const earlier = earlierOf.get(target) ?? []
      const clash = earlier.find((one) => canBothHold(document, one.when, when))
      earlierOf.set(target, earlier)
      earlier.push({ when, target, path })
      if (clash === undefined) return []
      const related = [{ document: { kind: 'spec-sheet' as const, id: document.id }, path: clash.path }]
      return [{ path, related, params: { target, with: clash.path } }]
    })
  },
})
