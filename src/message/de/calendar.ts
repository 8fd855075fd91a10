import type { CalendarCodes } from '../../calendar/index.js'
import type { Texts } from '../catalogue.js'

export const calendarTexts: Texts<CalendarCodes> = {
  'calendar/not-a-date': ({ text }) =>
    `„${text}“ ist kein Kalenderdatum. Jahr, Monat und Tag schreiben wie in 2031-01-12.`,
  'calendar/not-a-period': ({ text }) =>
    `„${text}“ ist kein Zeitraum. Ganze Jahre, Monate, Wochen oder Tage schreiben wie P6M oder P1Y.`,
}
