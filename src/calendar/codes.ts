/** What the calendar room can report, with what each text may name. */
export interface CalendarCodes {
  'calendar/not-a-date': { text: string }
  'calendar/not-a-period': { text: string }
}
