import { wrenchRule } from '../ruleMakers.js'

/**
 * A torque wrench calibrated after today. The year or the month is mistyped, and the next calibration would
 * come too late.
 * Judges: Every wrench with `calibration`. Finds a date after today; today is allowed. Skipped if `today` is
 * not given.
 * Place: `/wrenches/<id>/calibration/date`
 * Params: wrench: its name; date: as written; today: today's date
 * Harm: machine
 * House rule.
 */
export const rule = wrenchRule(
  'toolbox/calibration-in-the-future',
  'error',
  ([id, { name, calibration }], { facts: { today } }) => {
    if (today === undefined || calibration === undefined || calibration.date <= today) return []
    const params = { wrench: name, date: calibration.date, today }
    return [{ path: `/wrenches/${id}/calibration/date`, params }]
  },
)
