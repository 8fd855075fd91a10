import type { DateText } from '../calendar/index.js'
import { writeCsv } from '../exchange/index.js'
import { DUE_STATES, type DueState } from '../interval/index.js'
import type { ServiceDue } from '../service/index.js'

/** Machines of one place whose first service is due on one day. */
interface DayAtPlace {
  readonly day: string
  readonly place: string
  machines: number
  notToBeUsed: number
  readonly byVerdict: Map<DueState, number>
}

export interface DueSummary {
  readonly add: (place: string | undefined, due: readonly ServiceDue[], faults: number) => void
  /** The table, ordered by day and place; machines without a known day are last. */
  readonly write: () => string
}

/**
 * Counts machines by the day of their first due service and by place, each under its most urgent verdict. A machine that
 * is due or overdue counts on `today`. Keeps one row for each day and place, not one for each machine.
 */
export function createDueSummary(today: DateText): DueSummary {
  const rows = new Map<string, DayAtPlace>()
  return {
    add: (place = '', due, faults) => {
      const verdicts = due.map(({ verdict }) => verdict)
      const verdict = DUE_STATES.find((state) => verdicts.includes(state))
      const isDue = verdict === 'overdue' || verdict === 'due'
      const [firstDay = ''] = due.flatMap(({ dueOn = [] }) => dueOn).sort()
      const day = isDue ? today : firstDay
      const key = `${day} ${place}`
      const row = rows.get(key) ?? { day, place, machines: 0, notToBeUsed: 0, byVerdict: new Map() }
      rows.set(key, row)
      row.machines += 1
      if (faults > 0) row.notToBeUsed += 1
      if (verdict !== undefined) row.byVerdict.set(verdict, (row.byVerdict.get(verdict) ?? 0) + 1)
    },
    write: () => {
      const rank = ({ day, place }: DayAtPlace) => `${day || '9999-99-99'} ${place}`
      const sortedRows = [...rows.values()].sort((row, other) => (rank(row) < rank(other) ? -1 : 1))
      const head = ['day', 'place', 'machines', 'not_to_be_used', ...DUE_STATES.map(nameColumn)]
      return writeCsv([
        head,
        ...sortedRows.map(({ day, place, machines, notToBeUsed, byVerdict }) => [
          day,
          place,
          machines,
          notToBeUsed,
          ...DUE_STATES.map((state) => byVerdict.get(state) ?? 0),
        ]),
      ])
    },
  }
}

const nameColumn = (state: DueState): string => state.replaceAll(' ', '_')
