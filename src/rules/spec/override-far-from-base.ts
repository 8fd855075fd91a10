import { measureOf } from '../../quantity/index.js'
import type { FoundLeaf, StatedValue } from '../../spec/index.js'
import { pickFirstPrinted } from '../lookup/printedValues.js'
import { hasDisagreement, readStatedRange } from '../lookup/statedValues.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A figure for some machines that is more than five times the figure for the others, or less than a fifth.
 * Variants of one machine are alike, so a decimal point or a unit is wrong.
 * Judges: Every override of a stated value that is not a temperature, or of a torque, whose base leaf states
 * a figure of the same measure, if both are above zero. Compares the highest first printed figures. Finds a
 * figure more than 5 times the other, or less than a fifth. Skipped if a second printed figure disagrees with the first.
 * Place: `/overrides/<place>/set/<place>/to`, or its `torque`
 * Params: figure: as first printed in the override; base: as first printed on the sheet
 * Harm: machine
 * Common practice, no source: the factor of 5 is our own estimate.
 */
export const rule = sheetRule('spec/override-far-from-base', 'warning', ({ sheet }) =>
  sheet.leaves.flatMap((found) => {
    const { path, replaces } = found
    if (replaces === undefined) return []
    const one = readFigure(found)
    const baseLeaf = sheet.leaves.find((other) => other.path === replaces && other.kind === found.kind)
    const other = baseLeaf && readFigure(baseLeaf)
    if (one === undefined || other === undefined || measureOf(one.unit) === 'temperature') return []
    const overrideHigh = readStatedRange(one, other.unit)?.high ?? 0
    const baseHigh = readStatedRange(other, other.unit)?.high ?? 0
    if (overrideHigh <= 0 || baseHigh <= 0 || hasDisagreement(sheet, path)) return []
    if (Math.max(overrideHigh, baseHigh) <= MAX_RATIO * Math.min(overrideHigh, baseHigh)) return []
    const at = found.kind === 'tightening' ? `${path}/torque` : path
    return [{ path: at, params: { figure: pickFirstPrinted(one), base: pickFirstPrinted(other) } }]
  }),
)

/** The value of a leaf, or the torque of a tightening. */
function readFigure({ kind, leaf }: FoundLeaf): StatedValue | undefined {
  if (kind === 'value') return leaf.kind === 'not stated' ? undefined : leaf
  return kind === 'tightening' && leaf.kind === 'torque' ? leaf.torque : undefined
}

const MAX_RATIO = 5
