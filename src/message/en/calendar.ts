import type { CalendarCodes } from '../../calendar/index.js'
import type { Texts } from '../catalogue.js'

export const calendarTexts: Texts<CalendarCodes> = {
  'calendar/not-a-date': ({ text }) =>
    `“${text}” is not a calendar date. Write year, month and day as in 2031-01-12.`,
  'calendar/not-a-period': ({ text }) =>
    `“${text}” is not a calendar period. Write whole years, months, weeks or days, such as P6M or P1Y.`,
}
