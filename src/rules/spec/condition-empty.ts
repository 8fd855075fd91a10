import { defineRule } from '../rule.js'

/**
 * A condition that asks for nothing, or a list in it that names nobody: it holds for every machine, or for
 * none, and both are a forgotten line rather than a wish. House rule: leave the condition out where it holds
 * for all.
 */
export const conditionEmpty = defineRule({
  code: 'spec/condition-empty',
  severity: 'warning',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.conditions.flatMap(({ path, condition }) => {
      const emptyList = (['variants', 'market'] as const).find((list) => condition[list]?.length === 0)
      if (emptyList !== undefined) return [complain(`${path}/${emptyList}`, 'never')]
      const asks = Object.values(condition).some(
        (part) => Array.isArray(part) || Object.keys(part).length > 0,
      )
      return asks ? [] : [complain(path, 'always')]
    }),
})

function complain(path: string, holds: 'always' | 'never') {
  return { path, params: { holds } }
}
