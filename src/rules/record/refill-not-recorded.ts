import { entryRule } from '../ruleMakers.js'

/**
 * An oil change without a refilled quantity. It was not recorded, or no oil was filled in.
 * Judges: Every judged change, on a gearcase with its own oil. Finds a change without `refilled`; as a
 * warning if its `level` is `at the mark`, since oil was then filled in.
 * Place: `/entries/<place>`
 * Params: gearcase: its name
 * Harm: machine
 * Common practice, no source.
 */
export const rule = entryRule(
  'record/refill-not-recorded',
  'error',
  ({ path, entry, gearcase, isChange }) => {
    if (!isChange || entry.refilled !== undefined || gearcase.oilSpace.kind === 'shared') return []
    const isAtMark = entry.level === 'at the mark'
    return [{ path, params: { gearcase: gearcase.name }, severity: isAtMark ? 'warning' : 'error' }]
  },
)
