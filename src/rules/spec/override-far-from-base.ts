import { measureOf } from '../../quantity/index.js'
import type { SpecValue } from '../../spec/index.js'
import { firstPrinted } from '../lookup/firstPrinted.js'
import { isDisputed } from '../lookup/isDisputed.js'
import { statedRange } from '../lookup/statedRange.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A figure of some machines that is more than five times that of the others, or less than a fifth: variants of one
 * machine are alike, so a decimal point or a unit slipped.
 * Judges: Every override of a stated value that is no temperature, whose base leaf
 * on the sheet states one of the same measure and is not zero; highest first printed figures. Finds where one is
 * more than 5 times the other. Not judged where a printed figure beside it disagrees.
 * Place: `/overrides/<place>/set/<place>/to`
 * Params: figure: as printed first in the override; base: as printed first on the sheet
 * Harm: machine
 * Common practice, no source: the factor of 5 is our own estimate.
 */
export const rule = sheetRule('spec/override-far-from-base', 'warning', ({ sheet }) =>
  sheet.leaves.flatMap(({ kind, leaf, path, replaces }) => {
    if (kind !== 'value' || leaf.kind === 'not stated' || replaces === undefined) return []
    const base = sheet.leaves.find((one) => one.path === replaces && one.kind === 'value')?.leaf as
      | SpecValue
      | undefined
    if (base === undefined || base.kind === 'not stated' || measureOf(leaf.unit) === 'temperature') return []
    const one = statedRange(leaf, base.unit)?.high ?? 0
    const other = statedRange(base, base.unit)?.high ?? 0
    if (one <= 0 || other <= 0 || isDisputed(sheet, path)) return []
    if (Math.max(one, other) <= FAR * Math.min(one, other)) return []
    return [{ path, params: { figure: firstPrinted(leaf), base: firstPrinted(base) } }]
  }),
)

const FAR = 5
