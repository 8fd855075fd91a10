export {
  addDays,
  addPeriod,
  type CalendarCodes,
  compareDates,
  type DateText,
  daysBetween,
  isDate,
  type Period,
  type PeriodText,
  parsePeriod,
} from '../calendar/index.js'
