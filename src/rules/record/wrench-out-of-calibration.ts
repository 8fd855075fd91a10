import { addPeriod } from '../../calendar/index.js'
import { listRecordedTightenings } from '../lookup/indexRecord.js'
import { lookUp } from '../lookup/lookUp.js'
import { recordRule } from '../ruleMakers.js'

/**
 * A torque set with a wrench whose calibration had expired by that day. The actual torque of the plug is
 * unknown.
 * Judges: Every record: each tool of a `torque set` of entries and shields, once, if its wrench is in a
 * toolbox of the set with a calibration on or before the date of the record. Finds a wrench if the record is
 * dated 12 months or more after the calibration. A record dated after today, and dates in the year 9999, are
 * not judged.
 * Place: the `tool` of the first tightening with that wrench
 * Params: wrench: its name; calibrated: date of the calibration; date: date of the record
 * Harm: machine
 * Source: ISO 6789: 12 months unless agreed otherwise, as quoted by tool makers.
 */
export const rule = recordRule(
  'record/wrench-out-of-calibration',
  'warning',
  ({ document, set, facts: { today } }) => {
    if (today !== undefined && document.date > today) return []
    const toolUses = listRecordedTightenings(document).flatMap(({ path, done }) =>
      done.kind === 'torque set' ? [{ path: `${path}/tool`, tool: done.tool }] : [],
    )
    const firstToolUses = toolUses.filter(
      ({ tool }, place) => toolUses.findIndex((toolUse) => toolUse.tool === tool) === place,
    )
    return firstToolUses.flatMap(({ path, tool }) => {
      const wrench = set.toolboxes
        .map((toolbox) => lookUp(toolbox.document.wrenches, tool))
        .find((found) => found !== undefined)
      const calibrated = wrench?.calibration?.date
      if (wrench === undefined || calibrated === undefined || calibrated > document.date) return []
      if (calibrated >= '9999' || addPeriod(calibrated, 'P12M') > document.date) return []
      return [{ path, params: { wrench: wrench.name, calibrated, date: document.date } }]
    })
  },
)
