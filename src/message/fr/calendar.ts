import type { CalendarCodes } from '../../calendar/index.js'
import type { Texts } from '../catalogue.js'
import { quote } from './words.js'

export const calendarTexts: Texts<CalendarCodes> = {
  'calendar/not-a-date': ({ text }) =>
    `${quote(text)} n’est pas une date du calendrier. Écrire année, mois et jour comme dans 2031-01-12.`,
  'calendar/not-a-period': ({ text }) =>
    `${quote(text)} n’est pas une durée du calendrier. Écrire des années, mois, semaines ou jours entiers, par exemple P6M ou P1Y.`,
}
