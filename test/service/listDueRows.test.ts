import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  computeDueColumns,
  createDueColumns,
  DUE_STATES,
  type DueRow,
  writeDueRow,
} from '../../src/v1/interval/fleet.js'
import { type DueFacts, listDue, listDueRows } from '../../src/v1/service.js'
import { addDays } from '../support/addDays.js'
import { cases, law } from '../support/law.js'
import { readExample } from '../support/readExample.js'
import { usedMachines } from './support/usedMachines.js'

/** Wide limits, so that every verdict is common. */
const OPTIONS = {
  soon: { hours: 40, distance: { value: 400, unit: 'km' }, days: 45, fraction: 0.8 },
  staleAfter: { days: 30 },
  severity: 'normal',
} as const

function judgeRows(rows: readonly DueRow[], today: string): readonly (string | undefined)[] {
  const columns = createDueColumns(rows.length)
  for (const [place, row] of rows.entries()) expect(writeDueRow(columns, place, row)).toEqual([])
  return Array.from(computeDueColumns(columns, today, OPTIONS).verdict, (state) => DUE_STATES[state])
}
const verdictsOf = (facts: DueFacts) => listDue(facts, OPTIONS).map(({ verdict }) => verdict)

describe('rows of a machine', () => {
  it('are one for each service, gearcase and instance', () => {
    const facts = {
      sheet: readExample('tind-4', 'sheet'),
      log: readExample('tind-4', 'log'),
      today: '2023-10-06',
    }
    const rows = listDueRows(facts, OPTIONS)
    expect(rows.map(({ id }) => id)).toEqual([
      '/station-2/gear-oil-change/front',
      '/station-2/gear-oil-change/rear',
      '/station-2/gear-oil-check/front',
      '/station-2/gear-oil-check/rear',
    ])
    // Last done at 301.4 h and 2611 km of 512.6 h and 4407 km; every 200 h, window 20 h.
    expect(rows[0]).toMatchObject({ lastHours: 0, everyHours: 200, windowHours: 20, hoursDate: '2023-10-04' })
    expect(rows[0]?.hours).toBeCloseTo(211.2, 9)
  })

  it('get the verdict of listDue (law)', () => {
    const seen = new Map<string, number>()
    law(300, usedMachines, (facts) => {
      const expected = verdictsOf(facts)
      for (const verdict of expected) seen.set(verdict, (seen.get(verdict) ?? 0) + 1)
      expect(judgeRows(listDueRows(facts, OPTIONS), facts.today)).toEqual(expected)
    })
    for (const state of DUE_STATES) expect(seen.get(state) ?? 0, state).toBeGreaterThan(cases(18))
  })

  it('get it on later days too, without new rows (law)', () => {
    law(
      150,
      usedMachines,
      fc.integer({ min: 0, max: 500 }),
      ({ sheet, log: { pauses: _pauses, ...log }, today }, days) => {
        const later = addDays(today, days)
        const rows = listDueRows({ sheet, log, today }, OPTIONS)
        expect(judgeRows(rows, later)).toEqual(verdictsOf({ sheet, log, today: later }))
      },
    )
  })
})
