import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import { makeSay } from '../../src/message/makeSay.js'
import { law } from '../support/law.js'

const say = makeSay(en, (code) => `<${code}>`)

describe('makeSay', () => {
  it('writes numbers with the marks of the language and no trailing zeros', () => {
    expect(say.number(1234.5)).toBe('1234.5')
    expect(say.number(12345.678)).toBe('12\u202f345.678')
    expect(say.number(2.5, 0)).toBe('2')
    expect(say.number(-0.25)).toBe('−0.25')
    expect(say.number(Number.NaN)).toBe('NaN')
  })

  it('keeps the digits of a printed figure and bounds those of a computed one', () => {
    expect(say.quantity({ value: '10.0', unit: 'N.m' })).toBe('10.0\u00a0N·m')
    // 1 ÷ 3 of a litre, three decimals; a third of a millilitre, one
    expect(say.quantity({ value: 1 / 3, unit: 'L' })).toBe('0.333\u00a0L')
    expect(say.quantity({ value: 1 / 3, unit: 'mL' })).toBe('0.3\u00a0mL')
    expect(say.quantity({ kind: 'limits', min: '34', max: '44', unit: 'N.m' })).toBe('34–44\u00a0N·m')
  })

  it('says that a value is no quantity', () => {
    expect(say.quantity(undefined)).toBe('–')
    expect(say.quantity(4)).toBe('4')
    expect(say.quantity('x\ny')).toBe('x\\u{a}y')
    expect(say.quantity({ value: 'abc', unit: 'N.m' })).toBe('{"value":"abc","unit":"N.m"}')
    expect(say.quantity({ value: 1, unit: 'furlong' })).toBe('{"value":1,"unit":"furlong"}')
  })

  it('counts, lists, dates and passes reasons on', () => {
    expect(say.count(1, 'washer', 'washers')).toBe('1\u00a0washer')
    expect(say.count(0, 'washer', 'washers')).toBe('0\u00a0washers')
    expect(say.list(['a', 'b'])).toBe('a and b')
    expect(say.date('2031-01-12')).toBe('2031-01-12')
    expect(say.reason({ code: 'a/b', params: {} })).toBe('<a/b>')
    expect(say.reason({ code: 'a/b', params: 3 })).toBe('<a/b>')
    expect(say.reason('text')).toBe('text')
    expect(say.reason({ no: 'code' })).toBe('{"no":"code"}')
  })
})

describe('the English plural', () => {
  it('is that of Intl, which is slow to load', () => {
    const rules = new Intl.PluralRules('en')
    const count = fc.oneof(
      fc.integer({ min: -3, max: 3 }),
      fc.double({ noNaN: true }),
      fc.double({ min: 0.998, max: 1.002, noNaN: true }),
    )
    law(200, count, (value) => {
      expect(en.plural(value)).toBe(rules.select(value))
    })
  })
})
