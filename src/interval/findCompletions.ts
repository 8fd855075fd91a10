import { dayNumberOf } from '../calendar/dayNumberOf.js'
import type { DateText } from '../calendar/index.js'
import type { Reason } from '../finding.js'
import type { DueQuestion } from './dueQuestion.js'

export interface Completion {
  readonly day: number
  readonly date: DateText
  /** Index of the record in the log. */
  readonly record: number
}

/** When the service was done on this gearcase and instance, oldest first. Records after today are named, not counted. */
export function findCompletions(question: DueQuestion, today: number, reasons: Reason[]): Completion[] {
  const { service, doneBy, gearcase, instance } = question
  const records = question.log.records
  const completions: Completion[] = []
  let sorted = true
  for (let index = 0; index < records.length; index++) {
    const record = records[index]
    if (record === undefined) continue
    const { entries } = record
    for (let at = 0; at < entries.length; at++) {
      const entry = entries[at]
      if (entry === undefined || entry.gearcase !== gearcase) continue
      if (entry.service !== service && !doneBy?.includes(entry.service)) continue
      if (entry.instance !== instance && entry.instance !== undefined) continue
      const date = record.date
      const day = dayNumberOf(date)
      if (!(day <= today)) {
        if (day > today) reasons.push({ code: 'interval/in-the-future', params: { what: record.id, date } })
        break
      }
      if (instance !== undefined && entry.instance === undefined) {
        reasons.push({ code: 'interval/record-for-all-instances', params: { date, instance } })
      }
      if (entry.service !== service) {
        reasons.push({ code: 'interval/done-by-other', params: { date, service: entry.service } })
      }
      const before = completions[completions.length - 1]
      if (before !== undefined && before.day > day) sorted = false
      completions.push({ day, date, record: index })
      break
    }
  }
  if (!sorted) completions.sort((one, other) => one.day - other.day)
  return completions
}
