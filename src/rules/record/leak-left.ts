import { entryRule } from '../ruleMakers.js'

/**
 * A plug that still weeps or drips after the service. Fit a new washer, never use more torque; turn a taper
 * plug further only within its stated turns. A dripping gearcase loses its oil.
 * Judges: Every judged entry. Finds `leaks` of `weeping` or `dripping`; weeping is a warning, dripping an error.
 * Place: `/entries/<place>/leaks`
 * Params: gearcase: its name; found: `weeping` or `dripping`
 * Harm: machine
 * Common practice, no source.
 */
export const rule = entryRule('record/leak-left', 'error', ({ path, entry: { leaks }, gearcase }) =>
  leaks === 'weeping' || leaks === 'dripping'
    ? [
        {
          path: `${path}/leaks`,
          params: { gearcase: gearcase.name, found: leaks },
          severity: leaks === 'weeping' ? 'warning' : 'error',
        },
      ]
    : [],
)
