import { conditionRule } from '../ruleMakers.js'

/**
 * Model years that end before they start. No machine could meet the condition, so its override, variant or
 * part is never used.
 * Judges: Every condition with both years. Finds `from` above `to`.
 * Place: `<condition>/modelYears`
 * Params: from: as written; to: as written
 * Harm: job
 * House rule.
 */
export const rule = conditionRule('spec/model-years-reversed', 'error', ({ path, condition }) => {
  const { from, to } = condition.modelYears ?? {}
  if (from === undefined || to === undefined || from <= to) return []
  const fixes = [{ op: 'replace' as const, path: `${path}/modelYears`, value: { from: to, to: from } }]
  return [{ path: `${path}/modelYears`, params: { from, to }, cures: fixes }]
})
