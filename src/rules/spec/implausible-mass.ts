import { pickFirstPrinted } from '../lookup/printedValues.js'
import { hasDisagreement, readStatedRange } from '../lookup/statedValues.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A machine mass of 0.8 kg, or above that of any small utility machine. Tonnes and kilograms were confused.
 * Stands and jacks are judged by this mass.
 * Judges: The stated `mass` of the machine, including overrides, by its first printed figure. Finds one below
 * 50 kg or above 40,000 kg. Skipped if a second printed figure disagrees with the first.
 * Place: the value
 * Params: mass: as first printed
 * Harm: injury
 * Common practice, no source: the limits are our own estimates.
 */
export const rule = sheetRule('spec/implausible-mass', 'error', ({ sheet }) =>
  sheet.leaves.flatMap(({ kind, leaf, path, replaces }) => {
    if (kind !== 'value' || leaf.kind === 'not stated' || (replaces ?? path) !== '/machine/mass') return []
    const mass = readStatedRange(leaf, 'kg')
    if (mass === undefined || (mass.low >= 50 && mass.high <= 40_000) || hasDisagreement(sheet, path))
      return []
    return [{ path, params: { mass: pickFirstPrinted(leaf) } }]
  }),
)
