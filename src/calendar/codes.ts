/** Codes of the calendar functions with their params. */
export interface CalendarCodes {
  'calendar/not-a-date': { text: string }
  'calendar/not-a-period': { text: string }
}
