import { listRecordedTightenings } from '../lookup/indexRecord.js'
import { findUnknownIds } from '../lookup/lookUp.js'
import { recordRule } from '../ruleMakers.js'

/**
 * A torque set with a wrench that is in no toolbox of the set. Its range and calibration are unknown.
 * Judges: The `tool` of every `torque set`. Finds an id that is not a wrench of a toolbox. Skipped in a set
 * without a toolbox.
 * Place: `<tightening>/tool`
 * Params: id: as written; known: up to eight ids of wrenches; more: how many more exist; meant: the probable
 * id, if one is similar
 * Harm: record
 * House rule.
 */
export const rule = recordRule(
  'record/unknown-tool',
  'warning',
  ({ document: record, set: { toolboxes } }) => {
    const known = toolboxes.flatMap(({ document }) => Object.keys(document.wrenches))
    const namedTools = listRecordedTightenings(record).flatMap(({ path, done }) =>
      done.kind === 'torque set' ? [{ path: `${path}/tool`, id: done.tool, known }] : [],
    )
    return toolboxes.length === 0 ? [] : findUnknownIds(namedTools)
  },
)
