import { unknownName } from '../lookup/unknownName.js'
import { defineRule } from '../rule.js'

/**
 * A torque set with a wrench that no toolbox of the set holds: nobody can say whether it was in its range or
 * in calibration. Not judged in a set without a toolbox. House rule.
 */
export const unknownTool = defineRule({
  code: 'record/unknown-tool',
  severity: 'warning',
  about: 'service-record',
  check: ({ document: record, set: { toolboxes } }) => {
    if (toolboxes.length === 0) return []
    const known = toolboxes.flatMap(({ document }) => Object.keys(document.wrenches))
    const used = [
      ...record.entries.flatMap(({ tightened }, entry) =>
        tightened.map((done, place) => ({ done, path: `/entries/${entry}/tightened/${place}/tool` })),
      ),
      ...(record.shields ?? []).map((done, place) => ({ done, path: `/shields/${place}/tool` })),
    ]
    return used.flatMap(({ done, path }) => {
      if (done.kind !== 'torque set' || known.includes(done.tool)) return []
      return [unknownName(path, done.tool, known)]
    })
  },
})
