import { recordRule } from '../ruleMakers.js'

/**
 * A record dated after today. The year or the month is mistyped, and the next service would be counted from a
 * future date.
 * Judges: Finds a `date` after today; today is allowed. Skipped if `today` is not given.
 * Place: `/date`
 * Params: date: as written; today: today's date
 * Harm: record
 * House rule.
 */
export const rule = recordRule(
  'record/date-in-the-future',
  'error',
  ({ document: { date }, facts: { today } }) =>
    today === undefined || date <= today ? [] : [{ path: '/date', params: { date, today } }],
)
