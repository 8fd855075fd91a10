import { compareExact, exactIn, exactOf, multiply } from '../../quantity/index.js'
import { entryRule } from '../ruleMakers.js'

/**
 * A change with far less oil drained than refilled. Either the gearcase lost oil through a leak that was not
 * found, or it was not fully drained and is now overfilled.
 * Judges: Every judged change with both `drained` (a volume) and `refilled`. Finds a drained volume below two
 * thirds of the refilled volume.
 * Place: `/entries/<place>/drained`
 * Params: gearcase: its name; drained: as written; refilled: as written
 * Harm: machine
 * Common practice, no source: the limit of two thirds is our own estimate.
 */
export const rule = entryRule(
  'record/drained-far-below-refill',
  'warning',
  ({ path, entry, gearcase, isChange }) => {
    const { drained, refilled } = entry
    if (!isChange || refilled === undefined) return []
    if (drained === undefined || drained === 'not judged') return []
    if (
      compareExact(
        multiply(exactIn(drained, 'mL'), exactOf(3)),
        multiply(exactIn(refilled, 'mL'), exactOf(2)),
      ) >= 0
    )
      return []
    const params = { gearcase: gearcase.name, drained: { ...drained }, refilled: { ...refilled } }
    return [{ path: `${path}/drained`, params }]
  },
)
