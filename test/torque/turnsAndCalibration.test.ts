import { describe, expect, it } from 'vitest'
import type { Tightening } from '../../src/spec/leaf.js'
import { judgeTurns, readTurnsBand } from '../../src/torque/judgeTurns.js'
import { judgeWrenchSetting } from '../../src/torque/judgeWrenchSetting.js'
import { readCalibrationInputs } from '../../src/torque/readCalibrationInputs.js'
import { clickWrench, nominal } from './wrenches.js'

const turns = (min: string, max?: string): Tightening => ({
  kind: 'turns',
  min,
  threadCondition: 'sealant',
  ...(max === undefined ? {} : { max }),
})
const NOT_STATED: Tightening = { kind: 'not stated', threadCondition: 'not stated' }

describe('readTurnsBand and judgeTurns', () => {
  it('reads least and most', () => {
    expect(readTurnsBand(turns('1.5', '3'))).toEqual({
      verdict: 'turns',
      min: 1.5,
      max: 3,
      reasons: [{ code: 'torque/turns', params: { min: '1.5', max: '3' } }],
    })
    const openBand = readTurnsBand(turns('2'))
    expect(openBand.verdict === 'turns' && [openBand.min, openBand.max]).toEqual([2, undefined])
    expect(openBand.reasons[0]?.code).toBe('torque/turns-without-maximum')
  })

  it('cannot tell where nothing is stated, or a torque is', () => {
    expect(readTurnsBand(NOT_STATED).reasons[0]?.code).toBe('torque/not-stated')
    expect(readTurnsBand(nominal('40')).reasons[0]?.code).toBe('torque/by-torque')
    expect(judgeTurns(NOT_STATED, 2).verdict).toBe('cannot tell')
    expect(judgeTurns(nominal('40'), 2).verdict).toBe('cannot tell')
  })

  it('both ends belong to the band: at, just below and just above', () => {
    const verdicts = [1.9999, 2, 2.0001, 2.9999, 3, 3.0001].map(
      (done) => judgeTurns(turns('2', '3'), done).verdict,
    )
    expect(verdicts).toEqual(['too few', 'inside', 'inside', 'inside', 'inside', 'too many'])
    expect(judgeTurns(turns('0.3', '0.3'), 0.3).verdict).toBe('inside')
  })

  it('without a maximum, more than the minimum cannot be judged', () => {
    expect([1.9, 2, 2.1].map((done) => judgeTurns(turns('2'), done).verdict)).toEqual([
      'too few',
      'inside',
      'cannot tell',
    ])
  })
})

describe('readCalibrationInputs (12 months or 5,000 cycles: ISO 6789:2003 default, R2)', () => {
  const used = (cyclesSince?: number) =>
    readCalibrationInputs(
      clickWrench(10, 100, 1, {
        calibration: { date: '2030-03-01', ...(cyclesSince === undefined ? {} : { cyclesSince }) },
      }),
    )

  it('gives date and interval to the interval engine', () => {
    expect(used(12)).toEqual({
      from: '2030-03-01',
      interval: { kind: 'interval', period: 'P12M' },
      cycles: { limit: 5000, used: 12 },
      byCycles: 'not due',
      reasons: [{ code: 'torque/cycles-left', params: { used: 12, limit: 5000 } }],
    })
  })

  it('is due at the 5,000th cycle: at, just below and just above', () => {
    expect([4999, 5000, 5001].map((cycles) => used(cycles).byCycles)).toEqual(['not due', 'due', 'due'])
  })

  it('says what is missing', () => {
    expect(used().byCycles).toBe('cannot tell')
    expect(used().reasons.map(({ code }) => code)).toEqual(['torque/cycles-not-counted'])
    const none = readCalibrationInputs(clickWrench(10, 100))
    expect(none.from).toBeUndefined()
    expect(none.reasons.map(({ code }) => code)).toEqual([
      'torque/calibration-date-missing',
      'torque/cycles-not-counted',
    ])
  })
})

describe('judgeWrenchSetting', () => {
  const wrench = clickWrench(10, 100)
  const judge = (value: number, unit: 'N.m' | 'dN.m' = 'N.m') =>
    judgeWrenchSetting(wrench, { value, unit }, '2017')

  it('a mark can be set; both ends of the scale are marks', () => {
    expect([10, 39, 100].map((value) => judge(value).verdict)).toEqual(['can', 'can', 'can'])
  })

  it('a torque between marks, or out of range, cannot have come from that wrench', () => {
    const codes = (value: number) => judge(value).reasons.map(({ code }) => code)
    expect([9, 9.9999, 38.9999, 100.0001].map((value) => judge(value).verdict)).toEqual(
      Array(4).fill('cannot'),
    )
    expect(codes(40.5)).toEqual(['torque/setting-not-a-mark'])
    expect(codes(9)).toEqual(['torque/below-lowest-mark'])
    expect(codes(101)).toEqual(['torque/above-highest-mark'])
    expect(judgeWrenchSetting(wrench, { value: 15, unit: 'N.m' }, '2003').verdict).toBe('cannot')
  })

  it('another unit is converted exactly', () => {
    expect(judge(400, 'dN.m').verdict).toBe('can')
  })
})
