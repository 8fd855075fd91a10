export type { CalendarCodes, DateText, Period, PeriodText } from '../calendar/index.js'
export { addPeriod } from '../calendar/index.js'
