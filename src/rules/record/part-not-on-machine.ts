import { judgePart } from '../../spec/index.js'
import { recordEntries } from '../lookup/recordEntries.js'
import { sheetParts } from '../lookup/sheetParts.js'
import { defineRule } from '../rule.js'

/**
 * Work recorded on a part that this machine does not have, by its variant, serial, model year or market: the
 * record belongs to another machine, or the wrong plug was written down. House rule.
 */
export const partNotOnMachine = defineRule({
  code: 'record/part-not-on-machine',
  severity: 'error',
  about: 'service-record',
  check: (record, set) =>
    recordEntries(record, set).flatMap(({ path, entry, sheet, gearcase, identity }) => {
      const isAway = (part: string) => judgePart(sheet, identity, part).answer === 'no'
      if (isAway(`/gearcases/${entry.gearcase}`))
        return [{ path: `${path}/gearcase`, params: { part: gearcase.name } }]
      const parts = sheetParts(sheet)
      return entry.opened.flatMap((opened, place) => {
        const part = parts.find((one) => one.path === opened)
        if (part === undefined || !isAway(part.path)) return []
        return [{ path: `${path}/opened/${place}`, params: { part: part.name } }]
      })
    }),
})
