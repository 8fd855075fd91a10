import { defineRule } from '../rule.js'

/**
 * A torque wrench calibrated after today: the year or the month is mistyped, and its next calibration would come too late.
 * Not judged where the caller does not say what day it is. House rule; today itself is fine.
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
