import { defineRule } from '../rule.js'

/**
 * A torque wrench calibrated after today: the year or the month is mistyped, and its next calibration would come too
 * late.
 * Judges: Every wrench with `calibration`. Finds a date after today; today itself passes. Not judged without today.
 * Place: `/wrenches/<id>/calibration/date`
 * Params: wrench: its name; date: as written; today: the day given
 * House rule.
 */
export const calibrationInTheFuture = defineRule({
  code: 'toolbox/calibration-in-the-future',
  severity: 'error',
  about: 'toolbox',
  check: ({ document: { wrenches }, facts: { today } }) =>
    Object.entries(wrenches).flatMap(([id, { name, calibration }]) => {
      if (today === undefined || calibration === undefined || calibration.date <= today) return []
      const params = { wrench: name, date: calibration.date, today }
      return [{ path: `/wrenches/${id}/calibration/date`, params }]
    }),
})
