import type { CalendarCodes } from '../../calendar/index.js'
import type { Texts } from '../catalogue.js'

export const calendarTexts: Texts<CalendarCodes> = {
  'calendar/not-a-date': ({ text }) =>
    `“${text}” no es una fecha del calendario. Escribir año, mes y día como en 2031-01-12.`,
  'calendar/not-a-period': ({ text }) =>
    `“${text}” no es un período del calendario. Escribir años, meses, semanas o días enteros, como P6M o P1Y.`,
}
