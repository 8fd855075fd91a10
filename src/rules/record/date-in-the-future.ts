import { defineRule } from '../rule.js'

/**
 * A record dated after today: the year or the month is mistyped, and the next service would be counted from a
 * day that has not come. Not judged where the caller does not say what day it is. House rule; today itself is
 * fine.
 */
export const recordInTheFuture = defineRule({
  code: 'record/date-in-the-future',
  severity: 'error',
  about: 'service-record',
  check: ({ document: { date }, facts: { today } }) =>
    today === undefined || date <= today ? [] : [{ path: '/date', params: { date, today } }],
})
