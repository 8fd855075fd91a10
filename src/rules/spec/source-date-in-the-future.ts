import { sheetRule } from '../ruleMakers.js'

/**
 * A source dated after today. The year is mistyped, and a later edition would seem older.
 * Judges: The `date` of every source. Finds a date after today; today is allowed. Skipped if `today` is not
 * given.
 * Place: `/sources/<id>/date`
 * Params: date: as written; today: today's date
 * Harm: record
 * House rule.
 */
export const rule = sheetRule('spec/source-date-in-the-future', 'warning', ({ document, facts: { today } }) =>
  Object.entries(document.sources).flatMap(([id, { date }]) =>
    date === undefined || today === undefined || date <= today
      ? []
      : [{ path: `/sources/${id}/date`, params: { date, today } }],
  ),
)
