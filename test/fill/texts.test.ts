import { describe, expect, it } from 'vitest'
import { fillTexts } from '../../src/message/en/fill.js'
import { en } from '../../src/message/en/index.js'
import { renderMessage } from '../../src/v1/message.js'

const L = (value: number | string) => ({ value, unit: 'L' })
const mm = (value: number) => ({ value, unit: 'mm' })
/** One value for each param name of this module; `size` and `length` mean the same in every code. */
const params = {
  drop: mm(900),
  length: mm(1500),
  bore: mm(12),
  diameter: mm(180),
  entrance: mm(700),
  name: 'hose.length',
  given: mm(0.01),
  reynolds: 2345.6,
  limit: 2100,
  seconds: 1.25,
  fillings: 3,
  funnel: L(1.2),
  hose: L(0.17),
  short: L(0.85),
  container: 'Skarn Gear, bottle',
  taken: L(0.3),
  oil: 'Skarn Gear',
  other: 'Skarn Axle',
  left: L(0.1),
  tried: 100_000,
  vessel: 'Jug',
  error: L(0.005),
  tolerance: L('0.02'),
  lowestMark: L(0.1),
  pours: 3,
  pan: 'Low pan',
  total: L(2.1),
  size: L(5),
  percent: 94,
  largest: L(12),
  refilled: L(0.66),
  printed: L('0.75'),
  min: L('0.70'),
  max: L('0.80'),
  difference: L(-0.09),
  method: 'to level hole',
  drained: L(0.5),
  expected: L(0.75),
}
const say = (code: string, more: object = {}) =>
  renderMessage({ code, params: { ...params, ...more } }, en).replaceAll('\u00a0', ' ')

describe('texts of the fill module', () => {
  it.each(Object.keys(fillTexts))('%s is a whole sentence', (code) => {
    const text = say(code)
    expect(text).toMatch(/^[A-Za-z0-9].*\.$/s)
    expect(text).not.toMatch(/undefined|object|NaN|null|true|false/)
  })

  it('a deviation is less or more, without a minus sign, and nothing is nothing', () => {
    expect(say('fill/refill-far-off')).toContain('0.09 L less than the stated quantity')
    expect(say('fill/refill-far-off', { difference: L(0.09) })).toContain(
      '0.09 L more than the stated quantity',
    )
    expect(say('fill/refill-level-decides')).toMatch(/^The level hole decides; 0.09 L less/)
    expect(say('fill/refill-level-decides', { difference: L(0), method: 'dipstick' })).toBe(
      'The dipstick decides; exactly the stated quantity was refilled.',
    )
    expect(say('fill/refill-level-decides', { method: 'sight glass' })).toMatch(/^The sight glass decides/)
  })

  it('one limit is at least or at most, as printed', () => {
    expect(say('fill/refill-outside-band')).toContain('0.70 L to 0.80 L')
    expect(say('fill/refill-outside-band', { min: undefined })).toContain('at most 0.80 L')
    expect(say('fill/refill-inside-band', { max: undefined })).toContain('at least 0.70 L')
  })
})
