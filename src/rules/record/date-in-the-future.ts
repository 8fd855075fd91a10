import { recordRule } from '../ruleMakers.js'

/**
 * A record dated after today: the year or the month is mistyped, and the next service would be counted from a day in
 * the future.
 * Judges: Finds a `date` after today; today itself passes. Not judged without today.
 * Place: `/date`
 * Params: date: as written; today: the day given
 * Harm: record
 * House rule.
 */
export const rule = recordRule(
  'record/date-in-the-future',
  'error',
  ({ document: { date }, facts: { today } }) =>
    today === undefined || date <= today ? [] : [{ path: '/date', params: { date, today } }],
)
