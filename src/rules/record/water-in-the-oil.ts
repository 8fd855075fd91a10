import { entryRule } from '../ruleMakers.js'

/**
 * Milky oil: water has entered the gearcase. Find where (breather, shaft seal, plug), and change the oil
 * again after a short run. It is a warning, since the change itself was right.
 * Judges: Every judged entry. Finds `oilFinding` of `milky`.
 * Place: `/entries/<place>/oilFinding`
 * Params: gearcase: its name
 * Harm: machine
 * Common practice, no source.
 */
export const rule = entryRule('record/water-in-the-oil', 'warning', ({ path, entry, gearcase }) =>
  entry.oilFinding === 'milky' ? [{ path: `${path}/oilFinding`, params: { gearcase: gearcase.name } }] : [],
)
