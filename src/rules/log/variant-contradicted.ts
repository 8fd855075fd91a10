import { type Condition, resolveVariant } from '../../spec/index.js'
import { findSerialMistake } from '../lookup/findSerialMistake.js'
import { lookUp } from '../lookup/lookUp.js'
import { documentRule } from '../ruleMakers.js'

/**
 * A machine whose serial, model year or market excludes its stated variant, or that fits no variant of its
 * sheet. One of these facts is wrong, and every figure that differs between variants may be wrong too. Check
 * the plate.
 * Judges: `identity` against the `when` of each variant of the sheet. Finds a stated variant whose `when` is
 * not met by the other facts. If no variant is stated, finds facts that meet no variant's `when`. Skipped
 * without the sheet, if the stated variant does not exist, or if the `when` of a variant has reversed model
 * years or a wrong serial range.
 * Place: `/identity`
 * Params: variant: the stated variant, absent if none is stated; candidates: ids of the variants that the
 * facts do not exclude
 * Harm: machine
 * House rule: a contradiction is never settled by choosing one side.
 */
export const rule = documentRule('machine-log', 'procedure')(
  'log/variant-contradicted',
  'error',
  ({ document: { identity }, sheet }) => {
    if (sheet === undefined) return []
    const { variants } = sheet.document.machine
    const { variant } = identity
    if (variant !== undefined && lookUp(variants, variant) === undefined) return []
    const hasImpossibleCondition = Object.values(variants).some(({ when }) => isImpossibleCondition(when))
    if (hasImpossibleCondition) return []
    const verdict = resolveVariant(sheet.document, identity)
    if (verdict.verdict !== 'contradiction') return []
    return [{ path: '/identity', params: { variant, candidates: verdict.candidates } }]
  },
)

function isImpossibleCondition(when: Condition | undefined): boolean {
  const { from = 0, to = 9999 } = when?.modelYears ?? {}
  return from > to || findSerialMistake(when?.serials) !== undefined
}
