import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { FillMethod } from '../../src/spec/gearcase.js'
import type { SpecValue } from '../../src/spec/specValue.js'
import { judgeRefill } from '../../src/v1/fill.js'
import { law } from '../support/law.js'

type Volume = SpecValue<'L' | 'mL' | 'qt_us'>
const L = (value: number) => ({ value, unit: 'L' }) as const
const quantity: FillMethod = { kind: 'by quantity', opening: 'fill' }
const hole: FillMethod = { kind: 'to level hole', opening: 'fill' }
const nominal: Volume = { kind: 'nominal', value: '0.75', unit: 'L' }
const tolerance: Volume = {
  kind: 'nominal with tolerance',
  value: '0.50',
  minus: '0.02',
  plus: '0.03',
  unit: 'L',
}
const limits: Volume = { kind: 'limits', min: '1.0', max: '1.2', unit: 'L' }

describe('judgeRefill by quantity', () => {
  const cases: [string, Volume, number, string, string][] = [
    ['tolerance: just below', tolerance, 0.479999, 'outside', 'fill/refill-outside-band'],
    ['tolerance: lower limit', tolerance, 0.48, 'right', 'fill/refill-inside-band'],
    ['tolerance: upper limit', tolerance, 0.53, 'right', 'fill/refill-inside-band'],
    ['tolerance: just above', tolerance, 0.530001, 'outside', 'fill/refill-outside-band'],
    ['tolerance: 10 % off', tolerance, 0.55, 'outside', 'fill/refill-outside-band'],
    ['tolerance: more than 10 % off', tolerance, 0.550001, 'stop', 'fill/refill-far-off'],
    ['limits: lower', limits, 1, 'right', 'fill/refill-inside-band'],
    ['limits: upper', limits, 1.2, 'right', 'fill/refill-inside-band'],
    ['limits: just above', limits, 1.200001, 'outside', 'fill/refill-outside-band'],
    ['limits: 10 % below the lower', limits, 0.9, 'outside', 'fill/refill-outside-band'],
    ['limits: more below', limits, 0.899999, 'stop', 'fill/refill-far-off'],
    ['limits: 10 % above the upper', limits, 1.32, 'outside', 'fill/refill-outside-band'],
    ['limits: more above', limits, 1.320001, 'stop', 'fill/refill-far-off'],
    ['bare: as printed', nominal, 0.75, 'right', 'fill/refill-as-printed'],
    ['bare: half a last digit', nominal, 0.755, 'right', 'fill/refill-as-printed'],
    ['bare: beyond it', nominal, 0.755001, 'cannot tell', 'fill/refill-band-not-stated'],
    ['bare: 10 % off', nominal, 0.675, 'cannot tell', 'fill/refill-band-not-stated'],
    ['bare: more than 10 % off', nominal, 0.674999, 'stop', 'fill/refill-far-off'],
    [
      'bare whole: half a litre',
      { kind: 'nominal', value: '8', unit: 'L' },
      8.5,
      'right',
      'fill/refill-as-printed',
    ],
    ['at least, enough', { kind: 'limits', min: '1', unit: 'L' }, 9, 'right', 'fill/refill-inside-band'],
    [
      'at most, too much',
      { kind: 'limits', max: '1', unit: 'L' },
      1.05,
      'outside',
      'fill/refill-outside-band',
    ],
    ['not stated', { kind: 'not stated' }, 1, 'cannot tell', 'fill/refill-not-stated'],
    [
      'nothing where nothing belongs',
      { kind: 'nominal', value: '0', unit: 'L' },
      0,
      'right',
      'fill/refill-as-printed',
    ],
    [
      'a litre where nothing belongs',
      { kind: 'nominal', value: '0', unit: 'L' },
      1,
      'stop',
      'fill/refill-far-off',
    ],
  ]
  it.each(cases)('%s: the same if the method is not stated', (_, stated, refilledVolume) => {
    const verdict = judgeRefill(stated, L(refilledVolume), { kind: 'not stated' })
    expect(verdict).toEqual(judgeRefill(stated, L(refilledVolume), quantity))
  })

  it.each(cases)('%s', (_, stated, refilledVolume, answer, code) => {
    const verdict = judgeRefill(stated, L(refilledVolume), quantity)
    expect(verdict.verdict).toBe(answer)
    expect(verdict.reasons.map((reason) => reason.code)).toEqual([code])
    expect(JSON.stringify(verdict)).not.toContain('null')
  })

  it('gives the difference in the unit refilled, exactly: 0.53 − 0.50 = 0.03', () => {
    expect(judgeRefill(tolerance, L(0.53), quantity).difference).toEqual(L(0.03))
    expect(judgeRefill(limits, L(1.25), quantity).difference).toEqual(L(0.05))
    expect(judgeRefill(limits, L(1.1), quantity).difference).toEqual(L(0))
    // 0.8 US qt is 757.0823568 mL
    const quart: Volume = { kind: 'nominal', value: '0.8', unit: 'qt_us' }
    expect(judgeRefill(quart, { value: 760, unit: 'mL' }, quantity)).toMatchObject({
      verdict: 'right',
      difference: { value: 2.9176432, unit: 'mL' },
    })
  })

  it('shows a limit as printed where it is printed', () => {
    expect(judgeRefill(limits, L(1.1), quantity).reasons[0]?.params).toMatchObject({
      min: { value: '1.0', unit: 'L' },
    })
    expect(judgeRefill(tolerance, L(0.5), quantity).reasons[0]?.params).toMatchObject({
      min: { value: 0.48, unit: 'L' },
    })
  })
})

describe('judgeRefill to a level', () => {
  const methods: FillMethod[] = [
    hole,
    { kind: 'dipstick', opening: 'fill', reading: 'resting' },
    { kind: 'sight glass', opening: 'glass' },
  ]
  it.each(methods)('$kind decides up to 10 %, which belongs; beyond it the job stops', (method) => {
    // 10 % of 0.75 is 0.075
    for (const [refilled, answer] of [
      [0.675, 'the level decides'],
      [0.825, 'the level decides'],
      [0.674999, 'stop'],
      [0.825001, 'stop'],
      [0.75, 'the level decides'],
    ] as const) {
      expect(judgeRefill(nominal, L(refilled), method).verdict).toBe(answer)
    }
    expect(judgeRefill({ kind: 'not stated' }, L(1), method).verdict).toBe('cannot tell')
  })

  it('0.1 + 0.2 litres are the 0.3 of the manual', () => {
    const stated: Volume = { kind: 'nominal with tolerance', value: '0.3', minus: '0', plus: '0', unit: 'L' }
    expect(judgeRefill(stated, L(0.3), quantity).verdict).toBe('right')
    expect(judgeRefill(stated, { value: 300, unit: 'mL' }, quantity).verdict).toBe('right')
  })

  it('the unit of the refill does not matter (law)', () => {
    law(50, fc.integer({ min: 0, max: 2000 }), fc.constantFrom(nominal, tolerance, limits), (mL, stated) => {
      const first = judgeRefill(stated, { value: mL, unit: 'mL' }, quantity)
      const second = judgeRefill(stated, L(mL / 1000), quantity)
      expect(second.verdict).toBe(first.verdict)
    })
  })

  it('misuse throws', () => {
    expect(() => judgeRefill(nominal, L(-1), hole)).toThrow(/refilled.value must be a number, 0 or more/)
    expect(() => judgeRefill(nominal, L(Number.NaN), hole)).toThrow(RangeError)
    // @ts-expect-error
    expect(() => judgeRefill(nominal, L(1), { kind: 'by eye' })).toThrow(/method.kind/)
    // @ts-expect-error
    expect(() => judgeRefill(null, L(1), hole)).toThrow(/stated must be an object/)
    // @ts-expect-error
    expect(() => judgeRefill(nominal, 1, hole)).toThrow(/refilled must be an object/)
  })
})
