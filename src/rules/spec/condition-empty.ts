import { conditionRule } from '../ruleMakers.js'

/**
 * A condition without content, or with an empty list. Either every machine meets it or none does, so
 * something is missing. Omit a condition that applies to all machines.
 * Judges: Every condition. Finds an empty `variants`, else an empty `market`; else a condition without keys,
 * or with only empty objects as values.
 * Place: `<condition>/variants` or `<condition>/market`; the condition itself if it has no content
 * Params: holds: `never` for an empty list, `always` for a condition without content
 * Harm: job
 * House rule.
 */
export const rule = conditionRule('spec/condition-empty', 'warning', ({ path, condition }) => {
  const emptyKey = (['variants', 'market'] as const).find((list) => condition[list]?.length === 0)
  if (emptyKey !== undefined) return [makeFinding(`${path}/${emptyKey}`, 'never')]
  const hasContent = Object.values(condition).some(
    (part) => Array.isArray(part) || Object.keys(part).length > 0,
  )
  return hasContent ? [] : [makeFinding(path, 'always')]
})

function makeFinding(path: string, holds: 'always' | 'never') {
  return { path, params: { holds } }
}
