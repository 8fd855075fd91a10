import { checkTurns } from '../../torque/index.js'
import { defineRule } from '../rule.js'

/**
 * A taper plug that was turned less or more past finger tight than the sheet states: it may leak, or have
 * split the housing. Source: the judgement of `checkTurns`, a house rule; both ends belong to the band.
 */
export const turnsOutsideBand = defineRule({
  code: 'record/turns-outside-band',
  severity: 'error',
  about: 'service-record',
  check: ({ record }) =>
    record.tightenings.flatMap(({ path, done, part, required }) => {
      if (done.kind !== 'turns' || required === undefined) return []
      const { verdict } = checkTurns(required, Math.min(done.turns, 1e9))
      if (required.kind !== 'turns' || (verdict !== 'too few' && verdict !== 'too many')) return []
      const { min, max } = required
      return [{ path: `${path}/turns`, params: { part, turns: done.turns, min, max } }]
    }),
})
