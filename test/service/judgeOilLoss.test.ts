import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import { renderMessage } from '../../src/v1/message.js'
import { judgeOilLoss, type OilLoss, planVisit } from '../../src/v1/service.js'
import type { MachineLog, SpecSheet, TopUp } from '../../src/v1/spec.js'
import { readFolder, setOf } from '../rules/support/goodSets.js'
import { law } from '../support/law.js'

const TODAY = '2023-10-09'
const documents = (example: string) => {
  const { sheets, logs } = setOf(readFolder(`examples/${example}`))
  return { sheet: sheets[0]?.document as SpecSheet, log: logs[0]?.document as MachineLog }
}
const { sheet, log } = documents('tind-4')

const topUp = (date: string, value: number, more: object = {}): TopUp => ({
  date,
  gearcase: 'front',
  volume: { value, unit: 'mL' },
  oil: 'station gear oil 80W-90',
  ...more,
})
const withTopUps = (...topUps: readonly TopUp[]): MachineLog => ({ ...log, topUps })
const judge = (candidate: MachineLog, today = TODAY) => judgeOilLoss({ sheet, log: candidate, today })
const front = (candidate: MachineLog, today = TODAY) => judge(candidate, today)[0] as OilLoss
const say = ({ reasons }: OilLoss) =>
  reasons.map((reason) => renderMessage(reason, en).replaceAll('\u00a0', ' ')).join(' ')
const readingOn = (date: string, value: number, candidate: MachineLog): MachineLog => ({
  ...candidate,
  meters: {
    ...candidate.meters,
    hours: { unit: 'h', readings: [...(candidate.meters.hours?.readings ?? []), { date, value }] },
  },
})

describe('the oil that a gearcase lost', () => {
  // The front was changed on 2022-11-20 at 301.4 h and holds 450 mL.
  it('two top-ups, with a reading on the day of the last: 120 mL in 80 h are 150 mL per 100 h', () => {
    const losesOil = front(
      readingOn('2023-04-01', 381.4, withTopUps(topUp('2023-02-01', 50), topUp('2023-04-01', 70))),
    )
    expect(losesOil).toMatchObject({
      verdict: 'loses oil',
      since: '2022-11-20',
      count: 2,
      added: { value: 120, unit: 'mL' },
      days: 132,
      hours: { min: 80, max: 80, unit: 'h' },
      per100Hours: { min: 150, max: 150, unit: 'mL' },
    })
    expect(say(losesOil)).toBe(
      'Front differential: 120 mL added in 2 top-ups since 2022-11-20, 80 h, about 150 mL per 100 h, 27 % of the fill. Find the leak before you top up the oil.',
    )
  })

  it('without a reading on that day, hours and loss are a range', () => {
    // 301.4 h on 2022-11-20, 431 h on 2023-06-02, 512.6 h on 2023-10-04.
    const { hours, per100Hours } = front(withTopUps(topUp('2023-08-01', 120)))
    expect(hours).toEqual({ min: 129.6, max: 211.2, unit: 'h' })
    expect(per100Hours?.min).toBeCloseTo(12_000 / 211.2, 10)
    expect(per100Hours?.max).toBeCloseTo(12_000 / 129.6, 10)
  })

  it('after the last reading only the shortest time and the greatest loss are known', () => {
    const losesOil = front(withTopUps(topUp('2023-10-08', 120)))
    expect(losesOil.hours).toEqual({ min: 211.2, unit: 'h' })
    expect(Object.keys(losesOil.per100Hours ?? {})).toEqual(['max', 'unit'])
    expect(say(losesOil)).toContain('at least 211.2 h, at most 57 mL per 100 h')
  })

  it('hours go on through a swap of the meter, and end where the readings cannot be followed', () => {
    const swap = {
      kind: 'meter swap',
      date: '2023-01-10',
      meter: 'hours',
      oldReading: 340,
      newReading: 0,
    } as const
    const readings = [
      { date: '2022-11-20', value: 301.4 },
      { date: '2023-02-01', value: 20 },
    ]
    const swappedMeter = {
      ...withTopUps(topUp('2023-02-01', 60)),
      meters: { hours: { unit: 'h', readings } },
    } as const
    const records = swappedMeter.records.slice(0, 2)
    expect(front({ ...swappedMeter, records, events: [swap] }).hours).toEqual({
      min: 58.6,
      max: 58.6,
      unit: 'h',
    })
    expect(front({ ...swappedMeter, records }).hours).toBeUndefined()
    expect(say(front({ ...swappedMeter, records }))).toContain('73 days')
  })

  it('one small top-up: look for leaks; more than a tenth of the fill: find the leak', () => {
    expect(front(withTopUps(topUp('2023-08-01', 45))).reasons.at(-1)?.code).toBe('service/look-for-leaks')
    expect(front(withTopUps(topUp('2023-08-01', 46))).reasons.at(-1)?.code).toBe('service/find-the-leak')
  })

  it('one small top-up in the first 10 h may have settled', () => {
    const at = (value: number) => front(readingOn('2022-11-25', value, withTopUps(topUp('2022-11-25', 40))))
    expect(at(311.4)).toMatchObject({ verdict: 'cannot tell', hours: { max: 10 } })
    expect(at(311.4).reasons.at(-1)?.code).toBe('service/oil-may-have-settled')
    expect(at(311.5).verdict).toBe('loses oil')
  })

  it('counts from the last change, so its day and what was before do not count; corrections apply', () => {
    expect(front(withTopUps(topUp('2022-11-20', 50), topUp('2022-01-01', 50)))).toMatchObject({
      verdict: 'no loss',
      count: 0,
      since: '2022-11-20',
    })
    const correction = {
      ...log.records[1],
      id: 'not-done',
      corrects: 'station-2-2022',
      entries: [
        {
          service: 'gear-oil-change',
          gearcase: 'front',
          notDone: 'no oil',
          opened: [],
          tightened: [],
          seals: [],
        },
      ],
    } as MachineLog['records'][0]
    const corrected = withTopUps(topUp('2022-01-01', 50))
    expect(front({ ...corrected, records: [...corrected.records, correction] })).toMatchObject({
      verdict: 'loses oil',
      since: '2021-07-10',
    })
  })

  it('a rebuild ends the count, and what is later than today is not counted', () => {
    const rebuildEvent = { kind: 'rebuild', date: '2023-08-15', gearcases: ['front'] } as const
    const twoTopUps = withTopUps(topUp('2023-08-01', 50), topUp('2023-09-01', 60))
    expect(front({ ...twoTopUps, events: [rebuildEvent] }).added).toEqual({ value: 60, unit: 'mL' })
    expect(front({ ...twoTopUps, events: [{ ...rebuildEvent, gearcases: ['rear'] }] }).count).toBe(2)
    expect(front(twoTopUps, '2023-08-31').added).toEqual({ value: 50, unit: 'mL' })
  })

  it('oil that a check found missing counts too', () => {
    const [, , check] = log.records
    const entries = [
      {
        service: 'gear-oil-check',
        gearcase: 'front',
        refilled: { value: 0.05, unit: 'L' },
        opened: [],
        tightened: [],
        seals: [],
      },
    ] as const
    const checked = { ...log, records: [...log.records.slice(0, 2), { ...check, entries }] } as MachineLog
    expect(front(checked)).toMatchObject({ verdict: 'loses oil', added: { value: 0.05, unit: 'L' } })
  })

  it('no change and no first use: the loss is sure, its speed is not known', () => {
    const { commissioned: _none, ...unknown } = { ...withTopUps(topUp('2023-08-01', 50)), records: [] }
    expect(judge(unknown).map(({ verdict }) => verdict)).toEqual(['loses oil', 'cannot tell'])
    expect(front(unknown).hours).toBeUndefined()
    expect(front(unknown).reasons.at(-1)?.code).toBe('service/oil-start-not-known')
  })

  it('the named one of two hubs; none named: cannot tell which', () => {
    const acre = documents('acre-26')
    const judgeHubs = (instance?: string) =>
      judgeOilLoss({
        ...acre,
        log: {
          ...acre.log,
          topUps: [topUp('2023-09-01', 80, { gearcase: 'hub', ...(instance && { instance }) })],
        },
        today: TODAY,
      }).flatMap(({ gearcase, instance: id, verdict }) => (gearcase === 'hub' ? `${id}: ${verdict}` : []))
    expect(judgeHubs('left')).toEqual(['left: loses oil', 'right: no loss'])
    expect(judgeHubs()).toEqual(['left: cannot tell', 'right: cannot tell'])
  })

  it('is the first thing that a plan warns of', () => {
    const planned = planVisit(
      { sheet, log: withTopUps(topUp('2023-08-01', 120)), today: TODAY },
      {
        services: ['gear-oil-check'],
        due: { soon: {}, staleAfter: { days: 30 }, severity: 'normal' },
        iso6789: '2017',
      },
    )
    const [caution] = planned.ok ? planned.value.cautions : []
    expect(caution && renderMessage(caution, en)).toMatch(
      /^WARNING: Front differential: 120.mL added .* Find the leak before/,
    )
  })
})

describe('laws', () => {
  const day = fc
    .integer({ min: 1, max: 28 })
    .map((item) => `2023-0${(item % 9) + 1}-${String(item).padStart(2, '0')}`)
  const topUps = fc.array(
    fc.record({ date: day, millilitres: fc.integer({ min: 1, max: 900 }), isRear: fc.boolean() }),
    { maxLength: 6 },
  )
  const logOf = (list: readonly { date: string; millilitres: number; isRear: boolean }[]) =>
    withTopUps(
      ...list.map(({ date, millilitres, isRear }) =>
        topUp(date, millilitres, isRear ? { gearcase: 'rear' } : {}),
      ),
    )

  it('all oil is counted once, in any order and unit', () => {
    law(150, topUps, (list) => {
      const total = judge(logOf(list)).reduce((sum, { added }) => sum + (added?.value ?? 0), 0)
      expect(total).toBe(list.reduce((sum, { millilitres }) => sum + millilitres, 0))
      const inLitres = list.map((item) => ({ ...item, millilitres: item.millilitres / 1000 }))
      const litres = logOf(inLitres.toReversed())
      const otherJudgement = judge({
        ...litres,
        topUps:
          litres.topUps?.map((topUp) => ({
            ...topUp,
            volume: { ...topUp.volume, unit: 'L' },
          })) ?? [],
      })
      for (const [place, { verdict, percentOfFill, hours }] of judge(logOf(list)).entries())
        expect({ verdict, percentOfFill, hours }).toEqual({
          verdict: otherJudgement[place]?.verdict,
          percentOfFill: otherJudgement[place]?.percentOfFill,
          hours: otherJudgement[place]?.hours,
        })
    })
  })

  it('a reading on the last day is inside the range without it', () => {
    law(150, day, fc.integer({ min: 1, max: 8 }), (date, part) => {
      const before = front(withTopUps(topUp(date, 100)))
      const { min = 0, max = 0 } = before.hours ?? {}
      const value = Math.round((301.4 + min + ((max - min) * part) / 8) * 10) / 10
      const { hours, per100Hours } = front(readingOn(date, value, withTopUps(topUp(date, 100))))
      expect(hours?.min).toBeGreaterThanOrEqual(min)
      expect(hours?.max).toBeLessThanOrEqual(max)
      expect(per100Hours?.min ?? 0).toBeGreaterThanOrEqual(before.per100Hours?.min ?? 0)
      expect(per100Hours?.max ?? Infinity).toBeLessThanOrEqual(before.per100Hours?.max ?? Infinity)
    })
  })
})

describe('misuse', () => {
  const misuse = (change: object) => () =>
    judge(withTopUps({ ...topUp('2023-08-01', 50), ...change } as TopUp))

  it.each([
    [{ volume: { value: Number.NaN, unit: 'mL' } }, /topUps\[0\]\.volume\.value/],
    [{ volume: { value: Infinity, unit: 'mL' } }, /topUps\[0\]\.volume\.value/],
    [{ volume: { value: -1, unit: 'mL' } }, /topUps\[0\]\.volume\.value/],
    [{ volume: { value: 1, unit: 'N.m' } }, /topUps\[0\]\.volume\.unit/],
    [{ volume: null }, /topUps\[0\]\.volume/],
    [{ date: 'yesterday' }, /date/],
    [{ gearcase: 3 }, /topUps\[0\]\.gearcase/],
  ])('%j is refused by its place', (change, message) => {
    expect(misuse(change)).toThrow(message)
  })

  it('hostile names are of no gearcase', () => {
    for (const gearcase of ['__proto__', 'constructor', 'toString', 'x'.repeat(10_000)])
      expect(misuse({ gearcase })().map(({ count }) => count)).toEqual([0, 0])
  })
})
