export {
  addPeriod,
  type CalendarCodes,
  type DateText,
  type Period,
  type PeriodText,
} from '../calendar/index.js'
