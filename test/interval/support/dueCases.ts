import type { DueRow } from '../../../src/v1/interval/fleet.js'
import { computeDue, type DueOptions } from '../../../src/v1/interval.js'
import { questionOf, randomRow, seedRandom, TODAY } from './randomRows.js'

/** The options with which columns, SQL and other implementations are compared. */
export const OPTION_SETS: readonly [DueOptions, ...DueOptions[]] = [
  {
    soon: { hours: 20, distance: { value: 200, unit: 'km' }, days: 30, fraction: 0.9 },
    staleAfter: { days: 21 },
    severity: 'normal',
  },
  { soon: { distance: { value: 50, unit: 'mi' } }, staleAfter: { days: 0 }, severity: 'normal' },
  { soon: {}, staleAfter: { days: 1000 }, severity: 'normal' },
]

/** What random rows do not reach: the last day of a window, the day after it, events on and beside the days that count. */
const LIMIT_ROWS: readonly DueRow[] = [
  { lastDate: '2031-01-06', everyMonths: 8, windowMonths: 1 },
  { lastDate: '2031-01-05', everyMonths: 8, windowMonths: 1 },
  { lastDate: '2031-09-15', everyDays: 14, windowDays: 7 },
  { lastDate: '2031-09-14', everyDays: 14, windowDays: 7 },
  { lastDate: '2031-10-01', everyMonths: 6, eventDate: '2031-10-01' },
  { lastDate: '2031-10-01', everyMonths: 6, eventDate: '2031-10-02' },
  { lastDate: '2031-10-01', everyMonths: 6, eventDate: TODAY },
  { lastDate: '2031-10-01', everyMonths: 6, eventDate: '2031-10-07' },
]

/** These rows, then the random ones of the seed: the same for columns, every SQL engine and the cases for others. */
export function drawRows(count: number): readonly DueRow[] {
  const random = seedRandom(20_311_006)
  return Array.from({ length: count }, (_, index) => LIMIT_ROWS[index] ?? randomRow(random, index))
}

const CASES_OF_EACH_VERDICT = 100

/**
 * The cases for other implementations as JSON Lines: of these rows, with each set of options in turn, the first hundred of
 * every verdict of `computeDue`.
 */
export function writeDueCases(): string {
  const counts = new Map<string, number>()
  return drawRows(7000)
    .flatMap(({ id: _id, ...row }, index) => {
      const options = OPTION_SETS[index % OPTION_SETS.length] ?? OPTION_SETS[0]
      const { soon, staleAfter } = options
      const { verdict } = computeDue(questionOf(row), options)
      const count = (counts.get(verdict) ?? 0) + 1
      counts.set(verdict, count)
      return count > CASES_OF_EACH_VERDICT
        ? []
        : [`${JSON.stringify({ question: { today: TODAY, soon, staleAfter, row }, verdict })}\n`]
    })
    .join('')
}
