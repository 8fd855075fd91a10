import { checkTurns } from '../../torque/index.js'
import { recordTightenings } from '../lookup/recordTightenings.js'
import { defineRule } from '../rule.js'

/**
 * A taper plug that was turned less or more past finger tight than the sheet states: it may leak, or have
 * split the housing. Source: the judgement of `checkTurns`, a house rule; both ends belong to the band.
 */
export const turnsOutsideBand = defineRule({
  code: 'record/turns-outside-band',
  severity: 'error',
  about: 'service-record',
  check: (record, set) =>
    recordTightenings(record, set).flatMap(({ path, done, part, wanted }) => {
      if (done.kind !== 'turns' || wanted === undefined) return []
      const { verdict } = checkTurns(wanted, Math.min(done.turns, 1e9))
      if (wanted.kind !== 'turns' || (verdict !== 'too few' && verdict !== 'too many')) return []
      const { min, max } = wanted
      return [{ path: `${path}/turns`, params: { part, turns: done.turns, min, max } }]
    }),
})
