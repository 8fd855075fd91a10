import { unknownName } from '../lookup/unknownName.js'
import { recordRule } from '../ruleMakers.js'

/**
 * A torque set with a wrench that no toolbox of the set holds: its range and its calibration are unknown.
 * Judges: The `tool` of every `torque set`. Finds an id that is no wrench of a toolbox. Not judged in a set without a
 * toolbox.
 * Place: `<tightening>/tool`
 * Params: id: as written; known: up to eight ids of wrenches; more: how many more exist; meant: the likely one, if
 * one is near
 * House rule.
 */
export const rule = recordRule(
  'record/unknown-tool',
  'warning',
  ({ document: record, set: { toolboxes } }) => {
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
)
