import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sumUsedOil } from '../../src/record/index.js'
import type { MachineLog, RecordEntry, ServiceRecord, UsedOil } from '../../src/spec/index.js'
import { law } from '../support/law.js'

const sheet = { id: 'example', revision: '1' }
const entry = (more: Partial<RecordEntry>): RecordEntry => ({
  service: 'change',
  gearcase: 'rear',
  opened: [],
  tightened: [],
  seals: [],
  ...more,
})
const record = (id: string, date: string, more: Partial<ServiceRecord> = {}): ServiceRecord => ({
  kind: 'service-record',
  version: '1.0',
  id,
  machine: 'one',
  sheet,
  detail: 'full',
  date,
  readings: {},
  entries: [],
  ...more,
})
const logOf = (...records: readonly ServiceRecord[]): MachineLog => ({
  kind: 'machine-log',
  version: '1.0',
  id: 'one',
  name: 'One',
  sheet,
  identity: {},
  meters: {},
  records,
})
const litres = (value: number) => ({ value, unit: 'L' })
const mL = (value: number) => ({ value, unit: 'mL' }) as const

describe('sumUsedOil', () => {
  it('a year: by carrier, without a receipt, kept apart, and lines without a volume', () => {
    const log = logOf(
      record('march', '2031-03-02', {
        usedOilLog: [
          { volume: { value: 1.1, unit: 'L' }, to: 'Nordfoss', receipt: 'K-1' },
          { volume: mL(700), to: 'solvent store', keptApart: 'coolant' },
        ],
      }),
      record('june', '2031-06-01', { usedOil: 'station drum', entries: [entry({ drained: mL(930) })] }),
      record('may', '2031-05-01', { usedOilLog: [{ volume: { value: 2.2, unit: 'L' }, to: 'Nordfoss' }] }),
      record('july', '2031-07-01', {
        entries: [entry({ drained: mL(400) }), entry({ drained: 'not judged' })],
      }),
      record('history', '2031-08-01', { detail: 'date and meters only', entries: [entry({})] }),
    )
    const { lines, carriers, ...all } = sumUsedOil([log])
    expect(all).toEqual({
      volume: litres(4),
      keptApart: litres(0.7),
      withoutReceipt: litres(2.9),
      withoutVolume: 2,
      drained: litres(1.33),
    })
    expect(carriers).toMatchObject([
      { to: 'Nordfoss', volume: litres(3.3), withoutReceipt: litres(2.2), withoutVolume: 0 },
      { to: 'solvent store', volume: litres(0.7), keptApart: litres(0.7) },
      { to: 'station drum', volume: litres(0), withoutVolume: 1, drained: litres(0.93) },
      { volume: litres(0), withoutVolume: 1, drained: litres(0.4) },
    ])
    expect(carriers[3]).not.toHaveProperty('to')
    expect(lines.map(({ record: id }) => id)).toEqual(['march', 'march', 'may', 'june', 'july'])
  })

  it('both ends of the period count', () => {
    const log = logOf(
      ...['2031-01-01', '2031-01-02', '2031-01-03', '2031-01-04'].map((date) =>
        record(`r-${date}`, date, { usedOilLog: [{ volume: litres(1) as { value: 1; unit: 'L' } }] }),
      ),
    )
    expect(sumUsedOil([log], { from: '2031-01-02', to: '2031-01-03' }).volume.value).toBe(2)
    expect(sumUsedOil([log], { from: '2031-01-02' }).volume.value).toBe(3)
    expect(sumUsedOil([log], { to: '2031-01-01' }).volume.value).toBe(1)
    expect(sumUsedOil([], {}).lines).toEqual([])
  })

  it('a correction takes the place of the used oil, and counts once', () => {
    const first = record('first', '2031-01-01', { usedOilLog: [{ volume: mL(500), to: 'tank' }] })
    const correction = record('second', '2031-02-01', {
      corrects: 'first',
      usedOilLog: [{ volume: mL(450), to: 'tank', receipt: 'K-2' }],
    })
    expect(sumUsedOil([logOf(first, correction)])).toMatchObject({
      volume: litres(0.45),
      withoutReceipt: litres(0),
      lines: [{ record: 'first', date: '2031-01-01' }],
    })
  })

  it('a drained volume is a stand-in only where no volume is stated', () => {
    const drained = [entry({ drained: mL(900) })]
    const stated: readonly UsedOil[] = [{ volume: mL(850), to: 'tank' }]
    const [line] = sumUsedOil([
      logOf(record('r', '2031-01-01', { usedOilLog: stated, entries: drained })),
    ]).lines
    expect(line).not.toHaveProperty('drained')
    const twoRecords = sumUsedOil([
      logOf(record('r', '2031-01-01', { usedOilLog: [{ to: 'a' }, { to: 'b' }], entries: drained })),
    ])
    expect(twoRecords).toMatchObject({ withoutVolume: 2, drained: litres(0) })
    const none = sumUsedOil([logOf(record('r', '2031-01-01', { usedOilLog: [], entries: drained }))])
    expect(none.lines).toEqual([{ machine: 'one', record: 'r', date: '2031-01-01', drained: litres(0.9) }])
  })

  it('the carriers add up to the whole, in whole millilitres', () => {
    const usedOil = fc.record(
      {
        volume: fc.integer({ min: 0, max: 1_000_000 }).map(mL),
        to: fc.constantFrom('tank', 'Nordfoss', '__proto__', 'constructor'),
        receipt: fc.constant('K-1'),
        keptApart: fc.constantFrom('coolant', 'not known'),
      },
      { requiredKeys: [] },
    )
    law(200, fc.array(fc.array(usedOil, { maxLength: 3 }), { maxLength: 6 }), (lists) => {
      const records = lists.map((list, at) => record(`r-${at}`, '2031-01-01', { usedOilLog: list }))
      const { carriers, lines, ...all } = sumUsedOil([logOf(...records)])
      const toMilli = ({ value }: { readonly value: number }) => Math.round(value * 1000)
      for (const key of ['volume', 'keptApart', 'withoutReceipt'] as const)
        expect(carriers.reduce((sum, carrier) => sum + toMilli(carrier[key]), 0)).toBe(toMilli(all[key]))
      expect(toMilli(all.volume)).toBe(
        lists.flat().reduce((sum, { volume }) => sum + (volume?.value ?? 0), 0),
      )
      expect(lines.length).toBe(lists.flat().length)
    })
  })

  it('refuses an invalid log, day and volume', () => {
    const withVolume = (value: unknown) => [
      logOf(record('r', '2031-01-01', { usedOilLog: [{ volume: { value, unit: 'L' } as never }] })),
    ]
    expect(() => sumUsedOil(null as never)).toThrow(TypeError)
    expect(() => sumUsedOil([{}] as never)).toThrow(/logs\[0\]/)
    expect(() => sumUsedOil([], { from: '2031-02-30' })).toThrow(/period.from must be a date/)
    expect(() => sumUsedOil([], { from: '2031-02-02', to: '2031-02-01' })).toThrow(/2031-02-02 or later/)
    expect(() => sumUsedOil([], { since: '2031-02-02' } as never)).toThrow(/key .since/)
    expect(() => sumUsedOil(withVolume(Number.NaN))).toThrow(/usedOilLog\[0\].volume.value/)
    expect(() => sumUsedOil(withVolume(-1))).toThrow(RangeError)
    expect(sumUsedOil(withVolume(1e300)).volume.value).toBe(1e300)
  })
})
