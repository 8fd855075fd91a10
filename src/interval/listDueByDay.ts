import { refuse } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import type { Id } from '../spec/index.js'
import { DUE_STATES } from './dueColumns.js'
import type { DueState, DueVerdict } from './dueVerdict.js'
import { requireObject } from './requireObject.js'

/** One verdict with what it is about; `place` is where the machine stands, in the caller's words. */
export interface DueListEntry {
  readonly machine: Id
  readonly place: string
  readonly service: Id
  readonly gearcase: Id
  readonly instance?: Id
  readonly due: Pick<DueVerdict, 'verdict' | 'dueOn'>
}

export interface DueDay {
  /** Absent: cannot tell on which day. */
  readonly day?: DateText
  readonly places: readonly { readonly place: string; readonly entries: readonly DueListEntry[] }[]
}

export interface DueList {
  /** Overdue or due, by place: today's work. */
  readonly now: DueDay
  /** Due later, earliest day first; those whose day is not known come last. */
  readonly later: readonly DueDay[]
  /** Nobody can tell whether these are due: read the meters first. */
  readonly cannotTell: DueDay
}

/**
 * The work of a fleet as a list by day and place, for those who send people out. The order of the entries given does not
 * matter: within a place they stand by machine, gearcase, instance and service.
 *
 * @param entries - verdicts with machine, place, service, gearcase
 * @returns three lists; every entry stands in exactly one
 * @throws TypeError, RangeError when `entries` is no list of such entries
 *
 * Source: house rule.
 *
 * @example
 * ```ts
 * // Where is work waiting now?
 * import { listDueByDay } from 'drivetrain-service/v1/interval/fleet'
 * const list = listDueByDay([
 *   { machine: 'two', place: 'north hut', service: 'change', gearcase: 'rear', due: { verdict: 'due' } },
 * ])
 * list.now.places[0]?.place // => 'north hut'
 * ```
 */
export function listDueByDay(entries: readonly DueListEntry[]): DueList {
  checkEntries(entries)
  const sorted = [...entries].sort(compareEntries)
  const of = (...verdicts: readonly DueState[]): DueListEntry[] =>
    sorted.filter((entry) => verdicts.includes(entry.due.verdict))
  const byDay = new Map<DateText, DueListEntry[]>()
  for (const entry of of('due soon', 'not due')) {
    const day = entry.due.dueOn ?? ''
    const list = byDay.get(day)
    if (list === undefined) byDay.set(day, [entry])
    else list.push(entry)
  }
  const later = [...byDay.keys()]
    .sort((one, other) => (one === '' ? 1 : other === '' ? -1 : one < other ? -1 : 1))
    .map((day) => groupPlaces(byDay.get(day) ?? [], day === '' ? undefined : day))
  return { now: groupPlaces(of('overdue', 'due')), later, cannotTell: groupPlaces(of('cannot tell')) }
}

/** What is compared or grouped by must be a text, or the list would be in no order. */
function checkEntries(entries: readonly DueListEntry[]): void {
  if (!Array.isArray(entries)) throw refuse('entries', entries, 'a list')
  for (const [index, entry] of entries.entries()) {
    const at = `entries[${index}]`
    requireObject(at, entry)
    const { machine, place, service, gearcase, instance = '', due } = entry
    requireObject(`${at}.due`, due)
    const { verdict, dueOn = '' } = due
    for (const [name, text] of Object.entries({ machine, place, service, gearcase, instance }))
      if (typeof text !== 'string') throw refuse(`${at}.${name}`, text, 'a text')
    if (typeof dueOn !== 'string') throw refuse(`${at}.due.dueOn`, dueOn, 'a date')
    if (!DUE_STATES.includes(verdict))
      throw refuse(`${at}.due.verdict`, verdict, `one of ${DUE_STATES.join(', ')}`, 'string')
  }
}

function groupPlaces(entries: readonly DueListEntry[], day?: DateText): DueDay {
  const byPlace = new Map<string, DueListEntry[]>()
  for (const entry of entries) {
    const list = byPlace.get(entry.place)
    if (list === undefined) byPlace.set(entry.place, [entry])
    else list.push(entry)
  }
  const places = [...byPlace].map(([place, list]) => ({ place, entries: list }))
  return day === undefined ? { places } : { day, places }
}

/** By code units, so that every machine sorts alike in every country. */
function compareEntries(one: DueListEntry, other: DueListEntry): number {
  return (
    compareTexts(one.place, other.place) ||
    compareTexts(one.machine, other.machine) ||
    compareTexts(one.gearcase, other.gearcase) ||
    compareTexts(one.instance ?? '', other.instance ?? '') ||
    compareTexts(one.service, other.service)
  )
}

function compareTexts(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0
}
