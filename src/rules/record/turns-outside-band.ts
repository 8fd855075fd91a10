import { judgeTurns } from '../../torque/index.js'
import { recordedTighteningRule } from '../ruleMakers.js'

/**
 * A taper plug turned less or more past finger tight than the sheet states. It may leak, or the housing may
 * have split.
 * Judges: Every recorded tightening by `turns` whose part has stated turns for this machine. Finds fewer than
 * `min` or more than `max`.
 * Place: `<tightening>/turns`
 * Params: part: the name of the part (see terms); turns: as recorded; min: as printed; max: as printed, absent if
 * there is none
 * Harm: machine
 * Source: the judgement of `judgeTurns`, a house rule.
 */
export const rule = recordedTighteningRule(
  'record/turns-outside-band',
  'error',
  ({ path, done, part, required }) => {
    if (done.kind !== 'turns' || required === undefined) return []
    const { verdict } = judgeTurns(required, Math.min(done.turns, 1e9))
    if (required.kind !== 'turns' || (verdict !== 'too few' && verdict !== 'too many')) return []
    const { min, max } = required
    return [{ path: `${path}/turns`, params: { part, turns: done.turns, min, max } }]
  },
)
