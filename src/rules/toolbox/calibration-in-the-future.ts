import { wrenchRule } from '../ruleMakers.js'

/**
 * A torque wrench calibrated after today: the year or the month is mistyped, and its next calibration would come too
 * late.
 * Judges: Every wrench with `calibration`. Finds a date after today; today itself passes. Not judged without today.
 * Place: `/wrenches/<id>/calibration/date`
 * Params: wrench: its name; date: as written; today: the day given
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
