import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type DueListEntry, listDueByDay } from '../../src/interval/listDueByDay.js'
import { DUE_STATES } from '../../src/v1/interval/fleet.js'
import { law } from '../support/law.js'
import { ANYTHING } from './support/anything.js'

const entry = (
  machine: string,
  place: string,
  state: DueListEntry['verdict']['state'],
  dueOn?: string,
): DueListEntry => ({
  machine,
  place,
  service: 'change',
  gearcase: 'rear',
  verdict: dueOn === undefined ? { state } : { state, dueOn },
})

describe('listDueByDay', () => {
  test('now, later by day, and what nobody can tell', () => {
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

  test('every entry stands in exactly one place, in whatever order they came', () => {
    const any = fc.record({
      machine: fc.string({ maxLength: 3 }),
      place: fc.string({ maxLength: 2 }),
      service: fc.constantFrom('change', 'check'),
      gearcase: fc.constantFrom('front', 'rear'),
      instance: fc.constantFrom('left', 'right'),
      verdict: fc.record({
        state: fc.constantFrom(...DUE_STATES),
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
    const good = { machine: 'a', place: 'b', service: 'c', gearcase: 'd', verdict: { state: 'due' } }
    refused(null, 'entries is null; it must be a list')
    refused([good, null], 'entries[1] is null; it must be an object')
    refused([{ ...good, verdict: undefined }], 'entries[0].verdict is undefined; it must be an object')
    for (const [value, shown] of ANYTHING) {
      for (const name of ['machine', 'place', 'service', 'gearcase', 'instance'])
        refused([{ ...good, [name]: value }], `entries[0].${name} is ${shown}; it must be a text`)
      const verdict = { state: 'due', dueOn: value }
      refused([{ ...good, verdict }], `entries[0].verdict.dueOn is ${shown}; it must be a date`)
    }
    // A state of no list would leave the entry out.
    refused(
      [{ ...good, verdict: { state: 'later' } }],
      "entries[0].verdict.state is 'later'; it must be one of",
    )
    expect(listDueByDay([])).toEqual({ now: { places: [] }, later: [], cannotTell: { places: [] } })
  })
})
