import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import { renderMessage } from '../../src/v1/message.js'
import { planVisit, type VisitFacts, type VisitOptions } from '../../src/v1/service.js'
import type { MachineLog, ServiceRecord, SpecSheet } from '../../src/v1/spec.js'
import { readFolder, setOf } from '../rules/support/goodSets.js'
import { law } from '../support/law.js'

const { sheets, logs } = setOf(readFolder('examples/tind-4'))
const sheet = sheets[0]?.document as SpecSheet
const log = logs[0]?.document as MachineLog
const [first] = log.records as [ServiceRecord]

const DUE = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
const OPTIONS = { services: ['gear-oil-change'], due: DUE, iso6789: '2017' } as const

let visits = 0
const visit = (minutes: number, change: object = {}): ServiceRecord => ({
  ...first,
  id: `visit-${visits++}`,
  workingTime: { value: minutes, unit: 'min' },
  ...change,
})
const logOf = (...records: readonly ServiceRecord[]): MachineLog => ({ ...log, records })
function timeOf(log: MachineLog, facts: Partial<VisitFacts> = {}, options: Partial<VisitOptions> = {}) {
  const planned = planVisit({ sheet, log, today: '2023-10-06', ...facts }, { ...OPTIONS, ...options })
  if (!planned.ok) throw new Error(JSON.stringify(planned.findings))
  return planned.value.time
}
const say = (time: ReturnType<typeof timeOf>) =>
  time.reasons.map((reason) => renderMessage(reason, en).replaceAll('\u00a0', ' '))
const estimate = timeOf(log).minutes

describe("the workshop's own time", () => {
  it('is the median of three past visits with the same work', () => {
    const time = timeOf(logOf(visit(95), visit(70), visit(85)))
    expect(time).toMatchObject({
      minutes: 85,
      basis: 'own records',
      estimate,
      visits: { count: 3, min: 70, max: 95 },
    })
    expect(say(time).at(-1)).toBe(
      `Median of 3 visits with the same work, 70 to 95 min; our own estimate is ${estimate} min.`,
    )
  })

  it('of an even number is the mean of the two in the middle, in any unit', () => {
    const hours = visit(0, { workingTime: { value: 1.5, unit: 'h' } })
    expect(timeOf(logOf(visit(71), visit(60), hours, visit(80))).minutes).toBe(75.5)
  })

  it('of fewer than three visits: keeps the estimate and says so', () => {
    const time = timeOf(logOf(visit(70), visit(95)))
    expect(time).toMatchObject({ minutes: estimate, basis: 'house estimate', visits: { count: 2 } })
    expect(say(time).at(-1)).toBe(
      '2 visits with the same work on record; from 3 visits on, their median replaces the estimate.',
    )
    expect(timeOf(log)).not.toHaveProperty('visits')
  })

  it('counts only the same work on the same sheet, done, up to today, with the last word on its time', () => {
    const [entry] = first.entries
    const otherLogs = [
      visit(10, { entries: [entry] }),
      visit(10, { sheet: { id: 'other', revision: '1' } }),
      visit(10, { date: '2024-01-01' }),
      visit(10, {
        entries: first.entries.map((recordEntry) => ({ ...recordEntry, service: 'gear-oil-check' })),
      }),
      visit(10, { entries: first.entries.map((recordEntry) => ({ ...recordEntry, notDone: 'no oil' })) }),
      visit(0),
    ]
    const corrected = visit(300)
    const correction = visit(80, { id: 'correction', corrects: corrected.id, entries: [] })
    const time = timeOf(logOf(...otherLogs, visit(70), visit(90), corrected, correction))
    expect(time).toMatchObject({ minutes: 80, visits: { count: 3, min: 70, max: 90 } })
  })

  it('other machines of the sheet count if their logs are given, this one only once', () => {
    const firstLog = logOf(visit(70), visit(80))
    const otherLog = { ...logOf(visit(90)), id: 'station-9' }
    expect(timeOf(firstLog, { otherLogs: [firstLog, otherLog] })).toMatchObject({
      minutes: 80,
      visits: { count: 3 },
    })
  })

  it('law: the median is between the ends, and no order or unit changes it', () => {
    const times = fc.array(fc.integer({ min: 1, max: 600 }), { minLength: 3, maxLength: 9 })
    law(12, times, fc.boolean(), (minutes, isEven) => {
      const all = isEven ? [...minutes, ...minutes] : minutes
      const time = timeOf(logOf(...all.map((item) => visit(item))))
      const sorted = all.toSorted((item, other) => item - other)
      expect(time.minutes).toBeGreaterThanOrEqual(sorted[0] ?? 0)
      expect(time.minutes).toBeLessThanOrEqual(sorted.at(-1) ?? 0)
      expect(sorted.filter((candidate) => candidate < time.minutes).length).toBeLessThanOrEqual(
        all.length / 2,
      )
      expect(sorted.filter((candidate) => candidate > time.minutes).length).toBeLessThanOrEqual(
        all.length / 2,
      )
      expect(timeOf(logOf(...all.toReversed().map((item) => visit(item)))).minutes).toBe(time.minutes)
    })
  })
})

describe('the cost of the labour', () => {
  const ownLog = logOf(visit(85), visit(85), visit(85))
  const costOf = (amount: number, currency = 'EUR') =>
    timeOf(ownLog, {}, { labourRate: { amount, currency } }).labour?.cost.amount

  it('is exact, and rounded once to the coins of the currency', () => {
    expect(costOf(65)).toBe(92.08)
    expect(costOf(65, 'JPY')).toBe(92)
    expect(costOf(65, 'KWD')).toBe(92.083)
    // 85 min at 0.6 are 0.85; the doubles 85 × 0.6 / 60 are less.
    expect(costOf(0.6)).toBe(0.85)
    expect(costOf(0)).toBe(0)
    expect(say(timeOf(ownLog, {}, { labourRate: { amount: 65, currency: 'EUR' } })).at(-1)).toBe(
      'Labour: 92.08 EUR at 65 EUR an hour.',
    )
  })

  it('is of the estimate without records', () => {
    const { labour } = timeOf(log, {}, { labourRate: { amount: 60, currency: 'EUR' } })
    expect(labour?.cost).toEqual({ amount: estimate, currency: 'EUR' })
  })

  it.each([
    [{ amount: Number.NaN, currency: 'EUR' }, /labourRate\.amount/],
    [{ amount: -1, currency: 'EUR' }, /labourRate\.amount/],
    [{ amount: 1e12, currency: 'EUR' }, /labourRate\.amount/],
    [{ amount: '65', currency: 'EUR' }, /labourRate\.amount/],
    [{ amount: 65, currency: 'euro' }, /labourRate\.currency/],
    [{ amount: 65, currency: '__proto__' }, /labourRate\.currency/],
    [{ amount: 65 }, /labourRate\.currency/],
    [{ amount: 65, currency: 'EUR', tax: 1 }, /tax/],
    [null, /labourRate/],
  ])('%j is refused', (labourRate, message) => {
    expect(() => timeOf(log, {}, { labourRate } as never)).toThrow(message)
  })

  it('logs that were not parsed are refused', () => {
    expect(() => timeOf(log, { otherLogs: [{}] as never })).toThrow(/otherLogs\[0\]/)
    expect(() => timeOf(log, { otherLogs: 'x' as never })).toThrow(/otherLogs/)
  })
})
