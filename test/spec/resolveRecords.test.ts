import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { resolveRecords } from '../../src/spec/resolveRecords.js'
import type { RecordEntry, ServiceRecord } from '../../src/v1/spec.js'
import { law } from '../support/law.js'

const IDS = ['a', 'b', 'c', 'd', 'e']
const LISTS = { opened: [], tightened: [], seals: [] }

/** Records with different ids; some correct a record of the list, themselves, or a missing record. */
const records = fc
  .array(
    fc.record({
      corrects: fc.option(fc.constantFrom(...IDS, 'none'), { nil: undefined }),
      entries: fc.array(
        fc.record({
          gearcase: fc.constantFrom('front', 'rear'),
          level: fc.option(fc.constantFrom('below', 'above'), { nil: undefined }),
          on: fc.constantFrom('/x', '/y'),
        }),
        { maxLength: 2 },
      ),
    }),
    { maxLength: IDS.length },
  )
  .map((drafts) =>
    drafts.map(
      ({ corrects, entries }, place): ServiceRecord => ({
        kind: 'service-record',
        version: '1.0',
        id: IDS[place] ?? '',
        machine: 'one',
        sheet: { id: 's', revision: '1' },
        detail: 'full',
        date: '2031-01-01',
        readings: {},
        ...(corrects !== undefined && { corrects }),
        entries: entries.map(
          ({ gearcase, level, on }): RecordEntry => ({
            service: 'change',
            gearcase,
            ...LISTS,
            opened: [on],
            ...(level !== undefined && { level: level as 'below' }),
          }),
        ),
      }),
    ),
  )

/** The record at the start of the chain, found in a slow way. */
function rootOf(list: readonly ServiceRecord[], place: number): number | undefined {
  const { corrects } = list[place] ?? {}
  if (corrects === undefined) return place
  const next = list.findIndex(({ id }) => id === corrects)
  const rest = list.map((item, at) => (at === place ? { ...item, corrects: 'gone' } : item))
  return next === -1 || next === place ? undefined : rootOf(rest, next)
}

describe('resolveRecords', () => {
  it('keeps the order of the records, and each part is as in the last record', () => {
    law(2000, records, (list) => {
      const resolved = resolveRecords(list)
      expect(resolved).toHaveLength(list.length)
      for (const [place, { record, root }] of resolved.entries()) {
        expect(record.id).toBe(list[place]?.id)
        expect(root).toBe(rootOf(list, place))
        if (record.corrects !== undefined) {
          expect(record.entries).toEqual([])
          continue
        }
        const corrections = list.filter(
          ({ corrects }, at) => corrects !== undefined && rootOf(list, at) === place,
        )
        for (const gearcase of ['front', 'rear']) {
          const ownEntry = list[place]?.entries.find((candidate) => candidate.gearcase === gearcase)
          const corrected = corrections.flatMap(({ entries }) =>
            entries.filter((candidate) => candidate.gearcase === gearcase),
          )
          const [entry] = record.entries.filter((candidate) => candidate.gearcase === gearcase)
          const words = ownEntry === undefined ? corrected : [ownEntry, ...corrected]
          expect(entry === undefined).toBe(words.length === 0)
          const levels = words.flatMap(({ level }) => level ?? [])
          expect(entry?.level).toBe(levels.at(-1))
        }
      }
    })
  })

  it('gives the source of each part of a correction', () => {
    law(1000, records, (list) => {
      for (const { record, places } of resolveRecords(list))
        for (const [at, from] of places) {
          const [, , entry, key, item] = at.split('/')
          const [, index, , source, ...rest] = from.split('/')
          const written = list[Number(index)]?.entries[Number(source)]
          const now = record.entries[Number(entry)]
          const read = (value: unknown, path: readonly (string | undefined)[]) =>
            path.reduce<unknown>(
              (current, step) => (step === undefined ? current : (current as Record<string, unknown>)[step]),
              value,
            )
          // A later correction may repeat a part of an entry that a correction added; that part has its own place.
          if (key !== undefined) expect(read(now, [key, item])).toEqual(read(written, rest))
        }
    })
  })
})
