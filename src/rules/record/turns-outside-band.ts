import { compareExact } from '../../quantity/exact.js'
import { exactOf } from '../../torque/exact.js'
import { defineRule } from '../rule.js'
import { recordTightenings } from '../walk/recordTightenings.js'

/**
 * A taper plug that was turned less or more past finger tight than the sheet states: it may leak, or have split the
 * housing. Both ends belong to the band; a sheet that gives one figure means at least that. Common practice, no source.
 */
export const turnsOutsideBand = defineRule({
  code: 'record/turns-outside-band',
  severity: 'error',
  about: 'service-record',
  check: (record, set) =>
    recordTightenings(record, set).flatMap(({ path, done, part, wanted }) => {
      if (done.kind !== 'turns' || wanted?.kind !== 'turns') return []
      const { min, max } = wanted
      const turns = exactOf(done.turns)
      const inside =
        compareExact(turns, exactOf(min)) >= 0 &&
        (max === undefined || compareExact(turns, exactOf(max)) <= 0)
      return inside ? [] : [{ path: `${path}/turns`, params: { part, turns: done.turns, min, max } }]
    }),
})
