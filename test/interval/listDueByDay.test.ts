import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type DueListEntry, listDueByDay } from '../../src/interval/listDueByDay.js'
import { DUE_STATES } from '../../src/v1/interval/fleet.js'
import { law } from '../support/law.js'
import { ANYTHING } from './support/anything.js'

const entry = (
  machine: string,
  place: string,
  verdict: DueListEntry['due']['verdict'],
  dueOn?: string,
): DueListEntry => ({
  machine,
  place,
  service: 'change',
  gearcase: 'rear',
  due: dueOn === undefined ? { verdict } : { verdict, dueOn },
})

describe('listDueByDay', () => {
  test('now, later by day, and what is not known', () => {
    const list = listDueByDay([
      entry('two', 'south hut', 'due soon', '2031-03-02'),
      entry('five', 'north hut', 'overdue', '2031-01-01'),
      entry('one', 'north hut', 'due'),
      entry('three', 'north hut', 'not due', '2031-03-01'),
      entry('four', 'north hut', 'cannot tell'),
      entry('six', 'south hut', 'not due'),
    ])
    const names = (day: (typeof list)['now']) =>
      day.places.map(({ place, entries }) => [place, entries.map(({ machine }) => machine)])
    expect(names(list.now)).toEqual([['north hut', ['five', 'one']]])
    expect(list.later.map((day) => [day.day, names(day)])).toEqual([
      ['2031-03-01', [['north hut', ['three']]]],
      ['2031-03-02', [['south hut', ['two']]]],
      [undefined, [['south hut', ['six']]]],
    ])
    expect(names(list.cannotTell)).toEqual([['north hut', ['four']]])
  })

  test('every entry is in exactly one place, in whatever order they came', () => {
    const any = fc.record({
      machine: fc.string({ maxLength: 3 }),
      place: fc.string({ maxLength: 2 }),
      service: fc.constantFrom('change', 'check'),
      gearcase: fc.constantFrom('front', 'rear'),
      instance: fc.constantFrom('left', 'right'),
      due: fc.record({
        verdict: fc.constantFrom(...DUE_STATES),
        dueOn: fc.constantFrom('2031-01-01', '2031-01-02'),
      }),
    })
    law(
      50,
      fc.uniqueArray(any, {
        selector: (e) => JSON.stringify([e.machine, e.place, e.service, e.gearcase, e.instance]),
      }),
      (entries) => {
        const list = listDueByDay(entries)
        const all = [list.now, ...list.later, list.cannotTell].flatMap(({ places }) =>
          places.flatMap((place) => place.entries),
        )
        expect(all.length).toBe(entries.length)
        expect(new Set(all)).toEqual(new Set(entries))
        expect(listDueByDay([...entries].reverse())).toEqual(list)
      },
    )
  })

  test('misuse throws', () => {
    const refused = (entries: unknown, message: string) =>
      expect(() => listDueByDay(entries as DueListEntry[])).toThrow(message)
    const good = { machine: 'a', place: 'b', service: 'c', gearcase: 'd', due: { verdict: 'due' } }
    refused(null, 'entries must be a list, got null')
    refused([good, null], 'entries[1] must be an object, got null')
    refused([{ ...good, due: undefined }], 'entries[0].due must be an object, got undefined')
    for (const [value, shown] of ANYTHING) {
      for (const name of ['machine', 'place', 'service', 'gearcase', 'instance'])
        refused([{ ...good, [name]: value }], `entries[0].${name} must be a string, got ${shown}`)
      const due = { verdict: 'due', dueOn: value }
      refused([{ ...good, due }], `entries[0].due.dueOn must be a date, got ${shown}`)
    }
    // A verdict of no list would leave the entry out.
    refused(
      [{ ...good, due: { verdict: 'later' } }],
      "entries[0].due.verdict must be one of overdue, due, cannot tell, due soon, not due, got 'later'",
    )
    expect(listDueByDay([])).toEqual({ now: { places: [] }, later: [], cannotTell: { places: [] } })
  })
})
