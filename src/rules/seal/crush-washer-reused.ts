import { sealRule } from '../ruleMakers.js'

/**
 * A crush washer to be replaced only `on condition`. Once crushed it has hardened, and needs more torque to
 * seal again. If the manual really states this exception, waive the finding and name the page.
 * Judges: Every crush washer, including overrides (see terms: leaf of a part). Finds a `replace` of `on
 * condition`.
 * Place: `<seal>/replace`
 * Params: part: the name of the part (see terms)
 * Harm: machine
 * Common practice. No source that we read says single use.
 */
export const rule = sealRule('seal/crush-washer-reused', 'warning', ({ path, seal, on }) => {
  if (seal.kind !== 'crush washer' || seal.replace !== 'on condition') return []
  const at = `${path}/replace`
  const fixes = [{ op: 'replace' as const, path: at, value: 'every opening' }]
  return [{ path: at, params: { part: on.name }, cures: fixes }]
})
