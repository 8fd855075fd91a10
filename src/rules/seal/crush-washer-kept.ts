import { defineRule } from '../rule.js'

/**
 * A crush washer to be replaced only `on condition`: once crushed it has hardened, and more torque would be
 * needed to seal with it again. Common practice, no source that was read says single use; where the manual
 * really states this exception, waive it and say where.
 */
export const crushWasherKept = defineRule({
  code: 'seal/crush-washer-kept',
  severity: 'warning',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.seals.flatMap(({ path, seal, on }) => {
      if (seal.kind !== 'crush washer' || seal.replace === 'every opening') return []
      const at = `${path}/replace`
      const cures = [{ op: 'replace' as const, path: at, value: 'every opening' }]
      return [{ path: at, params: { part: on.name }, cures }]
    }),
})
