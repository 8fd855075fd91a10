import { refuse, requireObject } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import type { Id } from '../spec/index.js'
import { DUE_STATES } from './dueColumns.js'
import type { DueState, DueVerdict } from './dueVerdict.js'

/** One verdict with its machine, gearcase and service; `place` is where the machine is, in the caller's words. */
export interface DueListEntry {
  readonly machine: Id
  readonly place: string
  readonly service: Id
  readonly gearcase: Id
  readonly instance?: Id
  readonly due: Pick<DueVerdict, 'verdict' | 'dueOn'>
}

interface DueDay {
  /** Absent: the day is not known. */
  readonly day?: DateText
  readonly places: readonly { readonly place: string; readonly entries: readonly DueListEntry[] }[]
}

export interface DueList {
  /** Overdue or due, by place: today's work. */
  readonly now: DueDay
  /** Due later, earliest day first; entries without a known day come last. */
  readonly later: readonly DueDay[]
  /** It is not known whether these are due: read the meters first. */
  readonly cannotTell: DueDay
}

/** Sorts the work of a fleet by day and place, and within a place by machine, gearcase, instance and service. */
export function listDueByDay(entries: readonly DueListEntry[]): DueList {
  requireEntries(entries)
  const sorted = [...entries].sort(compareEntries)
  const entriesWith = (...verdicts: readonly DueState[]): DueListEntry[] =>
    sorted.filter((entry) => verdicts.includes(entry.due.verdict))
  const byDay = groupBy(entriesWith('due soon', 'not due'), (entry) => entry.due.dueOn ?? '')
  const later = [...byDay.keys()]
    .sort((first, second) => (first === '' ? 1 : second === '' ? -1 : first < second ? -1 : 1))
    .map((day) => groupByPlace(byDay.get(day) ?? [], day === '' ? undefined : day))
  return {
    now: groupByPlace(entriesWith('overdue', 'due')),
    later,
    cannotTell: groupByPlace(entriesWith('cannot tell')),
  }
}

/** Values to sort or group by must be strings, or the order would be undefined. */
function requireEntries(entries: readonly DueListEntry[]): void {
  if (!Array.isArray(entries)) throw refuse('entries', entries, 'a list')
  for (const [index, entry] of entries.entries()) {
    const at = `entries[${index}]`
    requireObject(at, entry)
    const { machine, place, service, gearcase, instance = '', due } = entry
    requireObject(`${at}.due`, due)
    const { verdict, dueOn = '' } = due
    for (const [name, text] of Object.entries({ machine, place, service, gearcase, instance }))
      if (typeof text !== 'string') throw refuse(`${at}.${name}`, text, 'a string')
    if (typeof dueOn !== 'string') throw refuse(`${at}.due.dueOn`, dueOn, 'a date')
    if (!DUE_STATES.includes(verdict))
      throw refuse(`${at}.due.verdict`, verdict, `one of ${DUE_STATES.join(', ')}`, 'string')
  }
}

function groupByPlace(entries: readonly DueListEntry[], day?: DateText): DueDay {
  const byPlace = groupBy(entries, (entry) => entry.place)
  const places = [...byPlace].map(([place, list]) => ({ place, entries: list }))
  return day === undefined ? { places } : { day, places }
}

function groupBy(
  entries: readonly DueListEntry[],
  keyOf: (entry: DueListEntry) => string,
): ReadonlyMap<string, readonly DueListEntry[]> {
  const groups = new Map<string, DueListEntry[]>()
  for (const entry of entries) {
    const list = groups.get(keyOf(entry))
    if (list === undefined) groups.set(keyOf(entry), [entry])
    else list.push(entry)
  }
  return groups
}

/** By code units, so that the order is the same in every locale. */
function compareEntries(first: DueListEntry, second: DueListEntry): number {
  return (
    compareTexts(first.place, second.place) ||
    compareTexts(first.machine, second.machine) ||
    compareTexts(first.gearcase, second.gearcase) ||
    compareTexts(first.instance ?? '', second.instance ?? '') ||
    compareTexts(first.service, second.service)
  )
}

function compareTexts(first: string, second: string): number {
  return first < second ? -1 : first > second ? 1 : 0
}
