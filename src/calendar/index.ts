export { addPeriod } from './addPeriod.js'
export type { CalendarCodes } from './codes.js'
export type { DateText, Period, PeriodText } from './dateText.js'
export {
  addToDay,
  compareDates,
  dateFromDay,
  dayNumberOf,
  daysBetween,
  FIRST_DAY,
  LAST_DAY,
  readDay,
} from './dayNumbers.js'
export { isDate } from './isDate.js'
export { scanPeriod } from './parsePeriod.js'
