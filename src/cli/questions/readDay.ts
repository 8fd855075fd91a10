import { type DateText, isDate } from '../../calendar/index.js'
import type { MetersOnDay } from '../../interval/index.js'
import { type QuestionIo, UsageError } from '../cliIo.js'
import { readQuantity } from './readText.js'

/** `2022-11-20 at 301.4 h, 1200 mi`; without a date, the given one. */
export function readDay(option: string, text: string, io: QuestionIo, today?: DateText): MetersOnDay {
  const [, date = today, , meters] = /^(\d{4}-\d{2}-\d{2})?(?:(^|\s+at\s+)(.+))?$/s.exec(text.trim()) ?? []
  if (date === undefined || !isDate(date))
    throw new UsageError('badDay', { given: `${option} ${JSON.stringify(text)}` })
  const day: { -readonly [Key in keyof MetersOnDay]: MetersOnDay[Key] } = { date }
  for (const meter of meters?.split(/,\s+/) ?? []) {
    if (/\d\s*h(ours?|rs?)?$/i.test(meter)) {
      const { value, unit } = readQuantity(option, meter, 'duration', io)
      if (unit === 'h') day.hours = value
    } else day.distance = readQuantity(option, meter, 'distance', io)
  }
  return day
}
