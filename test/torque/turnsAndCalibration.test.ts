import { describe, expect, it } from 'vitest'
import type { Tightening } from '../../src/spec/leaf.js'
import { calibrationInputs } from '../../src/torque/calibrationInputs.js'
import { judgeTorqueSet } from '../../src/torque/judgeTorqueSet.js'
import { judgeTurns } from '../../src/torque/judgeTurns.js'
import { judgeWrenchReach } from '../../src/torque/judgeWrenchReach.js'
import { turnsBand } from '../../src/torque/turnsBand.js'
import { clickWrench, limits, nominal, torque } from './wrenches.js'

const turns = (min: string, max?: string): Tightening => ({
  kind: 'turns',
  min,
  threadCondition: 'sealant',
  ...(max === undefined ? {} : { max }),
})
const NOT_STATED: Tightening = { kind: 'not stated', threadCondition: 'not stated' }

describe('turnsBand and judgeTurns', () => {
  it('reads least and most', () => {
    expect(turnsBand(turns('1.5', '3'))).toEqual({
      verdict: 'turns',
      min: 1.5,
      max: 3,
      reasons: [{ code: 'torque/turns', params: { min: '1.5', max: '3' } }],
    })
    const open = turnsBand(turns('2'))
    expect(open.verdict === 'turns' && [open.min, open.max]).toEqual([2, undefined])
    expect(open.reasons[0]?.code).toBe('torque/turns-open')
  })

  it('cannot tell where nothing is stated, or a torque is', () => {
    expect(turnsBand(NOT_STATED).reasons[0]?.code).toBe('torque/not-stated')
    expect(turnsBand(nominal('40')).reasons[0]?.code).toBe('torque/by-torque')
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

describe('calibrationInputs (12 months or 5,000 cycles: ISO 6789:2003 default, R2)', () => {
  const used = (cyclesSince?: number) =>
    calibrationInputs(
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
    const none = calibrationInputs(clickWrench(10, 100))
    expect(none.from).toBeUndefined()
    expect(none.reasons.map(({ code }) => code)).toEqual([
      'torque/calibration-date-missing',
      'torque/cycles-not-counted',
    ])
  })
})

describe('judgeTorqueSet and judgeWrenchReach', () => {
  const wrench = clickWrench(10, 100)
  const judge = (tightening: Tightening, value: number, tolerancePercent?: number) => {
    const set = { value, unit: 'N.m' } as const
    return [
      judgeTorqueSet(tightening, set, tolerancePercent).verdict,
      judgeWrenchReach(wrench, set, '2017').verdict,
    ]
  }

  it('both ends belong to the band: at, just below and just above', () => {
    const band = limits('39', '49')
    expect(judge(band, 39)).toEqual(['inside', 'can'])
    expect(judge(band, 49)).toEqual(['inside', 'can'])
    expect(judge(band, 38)).toEqual(['outside', 'can'])
    expect(judge(band, 50)).toEqual(['outside', 'can'])
    expect(judge(band, 38.9999)).toEqual(['outside', 'cannot'])
    expect(judge(band, 49.0001)).toEqual(['outside', 'cannot'])
  })

  it('a torque between marks, or out of range, cannot have come from that wrench', () => {
    const codes = (value: number) =>
      judgeWrenchReach(wrench, { value, unit: 'N.m' }, '2017').reasons.map(({ code }) => code)
    expect(codes(40.5)).toEqual(['torque/set-not-a-mark'])
    expect(codes(9)).toEqual(['torque/below-lowest-mark'])
    expect(codes(101)).toEqual(['torque/above-highest-mark'])
    expect(judgeWrenchReach(wrench, { value: 15, unit: 'N.m' }, '2003').verdict).toBe('cannot')
  })

  it('another unit is converted exactly', () => {
    const set = { value: 400, unit: 'dN.m' } as const
    expect(judgeTorqueSet(limits('40', '40'), set).verdict).toBe('inside')
    expect(judgeWrenchReach(wrench, set, '2017').verdict).toBe('can')
  })

  it('without a band only the nominal itself is sure; a caller’s tolerance makes a band', () => {
    expect(judge(nominal('40'), 40)).toEqual(['inside', 'can'])
    expect(judge(nominal('40'), 41)).toEqual(['cannot tell', 'can'])
    expect(judge(nominal('40'), 44, 10)).toEqual(['inside', 'can'])
    expect(judge(nominal('40'), 45, 10)).toEqual(['outside', 'can'])
  })

  it('one limit proves a torque wrong, never right', () => {
    const least = torque({ kind: 'limits', min: '40', unit: 'N.m' })
    expect([39, 40, 41].map((value) => judge(least, value)[0])).toEqual([
      'outside',
      'cannot tell',
      'cannot tell',
    ])
    const most = torque({ kind: 'limits', max: '40', unit: 'N.m' })
    expect([39, 40, 41].map((value) => judge(most, value)[0])).toEqual([
      'cannot tell',
      'cannot tell',
      'outside',
    ])
  })

  it('turns and not stated cannot tell', () => {
    expect(judge(turns('2', '3'), 40)[0]).toBe('cannot tell')
    expect(judge(turns('2'), 40)[0]).toBe('cannot tell')
    expect(judge(NOT_STATED, 40)[0]).toBe('cannot tell')
  })
})
