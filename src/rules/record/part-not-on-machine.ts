import { judgePart } from '../../spec/judgePart.js'
import { readPointer } from '../../spec/readPointer.js'
import { defineRule } from '../rule.js'
import { recordEntries } from '../walk/recordEntries.js'

/**
 * Work recorded on a part that this machine does not have, by its variant, serial, model year or market: the record belongs
 * to another machine, or the wrong plug was written down. House rule.
 */
export const partNotOnMachine = defineRule({
  code: 'record/part-not-on-machine',
  severity: 'error',
  about: 'service-record',
  check: (record, set) =>
    recordEntries(record, set).flatMap(({ path, entry, sheet, identity }) => {
      const isAway = (part: string) =>
        readPointer(sheet, part) !== undefined && judgePart(sheet, identity, part).answer === 'no'
      const gearcase = `/gearcases/${entry.gearcase}`
      if (isAway(gearcase)) return [{ path: `${path}/gearcase`, params: { part: gearcase } }]
      return entry.opened
        .map((part, place) => ({ path: `${path}/opened/${place}`, params: { part } }))
        .filter(({ params }) => isAway(params.part))
    }),
})
