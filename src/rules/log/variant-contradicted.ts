import { type Condition, resolveVariant } from '../../spec/index.js'
import { lookUp } from '../lookup/lookUp.js'
import { serialMistake } from '../lookup/serialMistake.js'
import { defineRule } from '../rule.js'

/**
 * A machine whose stated variant its own serial, model year or market excludes, or which fits no variant of
 * its sheet: one of the facts is wrong, and every figure that differs between the variants with it. Look at
 * the plate. Where a variant's own condition can hold for no machine, the sheet is at fault, and this rule
 * keeps silent. House rule: a contradiction is never settled by taking one side.
 */
export const variantContradicted = defineRule({
  code: 'log/variant-contradicted',
  severity: 'error',
  about: ['machine-log', 'procedure'],
  check: ({ document: { identity }, sheet }) => {
    if (sheet === undefined) return []
    const { variants } = sheet.document.machine
    const { variant } = identity
    if (variant !== undefined && lookUp(variants, variant) === undefined) return []
    const isDoubtful = Object.values(variants).some(({ when }) => cannotHold(when))
    if (isDoubtful) return []
    const verdict = resolveVariant(sheet.document, identity)
    if (verdict.kind !== 'contradiction') return []
    return [{ path: '/identity', params: { variant, candidates: verdict.candidates } }]
  },
})

function cannotHold(when: Condition | undefined): boolean {
  const { from = 0, to = 9999 } = when?.modelYears ?? {}
  return from > to || serialMistake(when?.serials) !== undefined
}
