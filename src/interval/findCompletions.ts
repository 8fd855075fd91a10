import type { Reason } from '../base/index.js'
import { dayNumberOf } from '../calendar/index.js'
import type { ServiceRecord } from '../spec/index.js'
import type { Origin } from './dueCase.js'
import { insertByDay } from './insertByDay.js'
import type { IntervalFacts } from './intervalFacts.js'

/** When the service was done on this gearcase and instance, oldest first. Records after today are named, not counted. */
export function findCompletions(facts: IntervalFacts, today: number, reasons: Reason[]): Origin[] {
  const { service, instance, log } = facts
  const completions: Origin[] = []
  let record = -1
  for (const done of log.records) {
    record += 1
    const entry = entryOf(done, facts)
    if (entry === undefined) continue
    const { date } = done
    const day = dayNumberOf(date)
    if (day > today) reasons.push({ code: 'interval/in-the-future', params: { what: done.id, date } })
    if (!(day <= today)) continue
    if (instance !== undefined && entry.instance === undefined)
      reasons.push({ code: 'interval/record-for-all-instances', params: { date, instance } })
    if (entry.service !== service)
      reasons.push({ code: 'interval/done-by-other', params: { date, service: entry.service } })
    insertByDay(completions, { since: 'last service', day, date, record })
  }
  return completions
}

/** The first entry of a record that is this service, or one that counts as it, on this gearcase and instance. */
function entryOf({ entries }: ServiceRecord, { service, doneBy, gearcase, instance }: IntervalFacts) {
  for (const entry of entries) {
    if (entry.gearcase !== gearcase || (entry.service !== service && !doneBy?.includes(entry.service)))
      continue
    if (entry.instance === instance || entry.instance === undefined) return entry
  }
  return undefined
}
