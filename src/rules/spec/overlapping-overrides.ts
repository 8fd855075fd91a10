import { defineRule } from '../rule.js'
import { canBothHold } from '../walk/canBothHold.js'

/**
 * Two overrides of one leaf that one machine could meet at once: nobody could say which figure holds, and the
 * last one must not win by its place in the file. Narrow one of the conditions. House rule: two answers are
 * no answer.
 */
export const overlappingOverrides = defineRule({
  code: 'spec/overlapping-overrides',
  severity: 'error',
  about: 'spec-sheet',
  check: (sheet) => {
    const entries = (sheet.overrides ?? []).flatMap(({ when, set }, place) =>
      set.map((entry, at) => ({ when, target: entry.path, path: `/overrides/${place}/set/${at}` })),
    )
    return entries.flatMap((later, place) => {
      const clashing = entries
        .slice(0, place)
        .filter((earlier) => earlier.target === later.target && canBothHold(sheet, earlier.when, later.when))
      if (clashing.length === 0) return []
      const related = clashing.map(({ path }) => ({
        document: { kind: 'spec-sheet' as const, id: sheet.id },
        path,
      }))
      return [
        {
          path: later.path,
          related,
          params: { target: later.target, with: clashing.map(({ path }) => path) },
        },
      ]
    })
  },
})
