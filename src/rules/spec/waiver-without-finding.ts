import { defineRule } from '../rule.js'

/**
 * A waiver of a finding that no rule makes: the mistake was mended, or the code or the pointer is mistyped
 * and the finding still stands elsewhere. Take it out, or point it right. The runner says which waivers were
 * used, so this rule is asked last. House rule: a waiver that waives nothing would hide the next finding
 * there.
 */
export const waiverWithoutFinding = defineRule({
  code: 'spec/waiver-without-finding',
  severity: 'warning',
  about: 'spec-sheet',
  check: ({ document, facts: { unusedWaivers = [] } }) =>
    unusedWaivers.flatMap((place) => {
      const waiver = document.waivers?.[place]
      if (waiver === undefined) return []
      return [{ path: `/waivers/${place}`, params: { code: waiver.code, waived: waiver.path } }]
    }),
})
