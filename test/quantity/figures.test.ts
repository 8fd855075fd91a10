import { Decimal } from 'decimal.js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { compareFigures, compareQuantities } from '../../src/quantity/compareQuantities.js'
import { convertFigure } from '../../src/quantity/convertFigure.js'
import { figureToNumber, isFigure } from '../../src/quantity/figure.js'
import { isUnit, measureOf } from '../../src/quantity/measureOf.js'
import { UNITS_BY_MEASURE } from '../../src/quantity/unit.js'
import { unitSymbol } from '../../src/quantity/unitSymbol.js'
import type { Unit } from '../../src/v1/quantity.js'
import { law } from '../support/law.js'
import { anyFigure } from './support/anyBand.js'
import { allPairs, exactDecimal, exactResult } from './support/exactOracle.js'

describe('isFigure', () => {
  it.each(['0', '10', '10.0', '0.000001', '999999999.999999', '7.50'])('%s is one', (text) => {
    expect(isFigure(text)).toBe(true)
  })
  it.each([
    '',
    ' 10',
    '10 ',
    '10\n',
    '1e3',
    '0x1F',
    '1_000',
    '+5',
    '.5',
    '5.',
    '007',
    '0100',
    '00',
    '00.5',
    '-5',
    '1000000000',
    '0.0000001',
    '１０',
    'NaN',
    10,
    null,
    undefined,
    ['1'],
    '9'.repeat(1_000_000),
  ])('%s is none', (text) => {
    expect(isFigure(text)).toBe(false)
  })
  it('takes a minus where it is allowed', () => {
    expect(isFigure('-40', { minus: true })).toBe(true)
    expect(isFigure('-40', { minus: false })).toBe(false)
    expect(isFigure('--40', { minus: true })).toBe(false)
  })
})

describe('convertFigure', () => {
  it.each([
    // statutory factors, divided with 34 digits by a decimal package of another language (9.80665/1.3558179483314004 …)
    ['20', 'lbf.ft', 'N.m', '27.116358966628008', true],
    ['1', 'N.m', 'lbf.ft', '0.7375621492772653638780820649710547', false],
    ['1', 'kgf.m', 'lbf.ft', '7.233013851209894380674993482448393', false],
    ['1', 'gal_imp', 'gal_us', '1.200949925504854929674409234628198', false],
    ['1', 'degF_diff', 'K_diff', '0.5555555555555555555555555555555556', false],
    ['80', 'degC', 'degF', '176', true],
    ['-40', 'degF', 'degC', '-40', true],
    ['0', 'mL', 'gal_imp', '0', true],
    ['10.0', 'N.m', 'N.m', '10', true],
    ['999999999', 'kN.m', 'cN.m', '99999999900000', true],
  ] as const)('%s %s in %s is %s', (figure, from, to, digits, terminates) => {
    expect(convertFigure(figure, from, to)).toEqual({ digits, terminates })
  })

  it('gives exact digits where they end, else 34 significant ones, rounded', () => {
    law(1000, fc.constantFrom(...allPairs(() => true)), anyFigure(9, 6), ([from, to], figure) => {
      const { digits, terminates } = convertFigure(figure, from, to)
      const [n, d] = exactResult(exactDecimal(figure), from, to)
      const [a, b] = exactDecimal(digits)
      if (terminates) {
        expect(a * d).toBe(n * b)
        expect(digits).toMatch(/^-?(0|[1-9][0-9]*)(\.[0-9]*[1-9])?$/)
      } else {
        const gap = a * d - n * b
        // trailing zeros are omitted, so count the places from the first digit
        const first = digits.replace(/^-?[0.]*/, '').replace('.', '')
        expect(first.length).toBeLessThanOrEqual(34)
        expect((gap < 0n ? -gap : gap) * 2n * 10n ** 33n).toBeLessThanOrEqual((n < 0n ? -n : n) * b)
      }
    })
  })

  it('throws for an invalid figure or unit', () => {
    expect(() => convertFigure('1e3', 'N.m', 'lbf.ft')).toThrow(TypeError)
    expect(() => convertFigure(20 as unknown as string, 'N.m', 'lbf.ft')).toThrow(/figure must be/)
    expect(() => convertFigure('1', 'N.m', 'L')).toThrow(/of volume/)
    expect(() => convertFigure('1', 'nm' as Unit, 'nm' as Unit)).toThrow(TypeError)
  })
})

describe('comparison', () => {
  it('knows equal figures with other digits, and the exact order', () => {
    expect(compareFigures('10.0', '10')).toBe(0)
    expect(compareFigures('9.999999', '10')).toBe(-1)
    expect(compareFigures('-40', '-40.1')).toBe(1)
    expect(() => compareFigures('10', 'x')).toThrow(/second must be/)
  })

  it('decides where doubles would not', () => {
    // a JSON number means its shortest decimal: 0.1 is a tenth, though its double is a little more
    expect(compareQuantities({ value: 0.1, unit: 'L' }, { value: '0.1', unit: 'L' })).toBe(0)
    expect(compareQuantities({ value: 1.001, unit: 'L' }, { value: '1001', unit: 'mL' })).toBe(0)
    // 256.4 − 6.4 in doubles is 249.99999999999997
    expect(compareQuantities({ value: 256.4 - 6.4, unit: 'h' }, { value: '250', unit: 'h' })).toBe(-1)
    expect(compareQuantities({ value: '1', unit: 'lbf.ft' }, { value: '12', unit: 'lbf.in' })).toBe(0)
    expect(compareQuantities({ value: '-40', unit: 'degC' }, { value: -40, unit: 'degF' })).toBe(0)
  })

  it('equals the comparison of exact fractions, and is reversed with its arguments', () => {
    const value = fc.oneof(anyFigure(), fc.double({ min: -1e6, max: 1e6, noNaN: true }))
    // the digits of another package, without an exponent; its own constructor, since other code may change the shared
    // one
    const OwnDecimal = Decimal.clone({ defaults: true })
    const plainDecimal = (number: number) => new OwnDecimal(number).toFixed()
    law(1000, fc.constantFrom(...allPairs(() => true)), value, value, ([from, to], candidate, two) => {
      const first = { value: candidate, unit: from } as { value: string; unit: Unit }
      const second = { value: two, unit: to } as { value: string; unit: Unit }
      const exact = (value: string | number) =>
        exactDecimal(typeof value === 'string' ? value : plainDecimal(value))
      const [a, b] = exactResult(exact(candidate), from, to)
      const [c, d] = exact(two)
      const expected = a * d < c * b ? -1 : a * d > c * b ? 1 : 0
      expect(compareQuantities(first, second)).toBe(expected)
      expect(compareQuantities(second, first) + expected).toBe(0)
    })
  })

  it('throws for an invalid quantity', () => {
    const validQuantity = { value: 1, unit: 'N.m' } as const
    const callWith =
      (value: unknown, unit: unknown = 'N.m') =>
      () =>
        compareQuantities(validQuantity, { value: value as number, unit: unit as Unit })
    expect(callWith(Number.NaN)).toThrow(RangeError)
    expect(callWith(Number.NEGATIVE_INFINITY)).toThrow(/finite/)
    expect(callWith('1,5')).toThrow(TypeError)
    expect(callWith({})).toThrow(/second.value must be/)
    expect(callWith(1, 'L')).toThrow(TypeError)
  })
})

describe('figureToNumber', () => {
  it('is the nearest double, and zero without a sign', () => {
    expect(figureToNumber('10.0')).toBe(10)
    expect(figureToNumber('0.1')).toBe(0.1)
    expect(Object.is(figureToNumber('-0.0'), 0)).toBe(true)
    expect(() => figureToNumber('0x1F')).toThrow(TypeError)
  })
})

describe('units', () => {
  it('are known by their ids alone', () => {
    for (const [measure, units] of Object.entries(UNITS_BY_MEASURE)) {
      for (const unit of units) {
        expect(isUnit(unit)).toBe(true)
        expect(measureOf(unit)).toBe(measure)
        expect(unitSymbol(unit)).toMatch(/\S/)
      }
    }
    for (const text of ['ft-lb', 'toString', '__proto__', '', 'x'.repeat(1e6), null, 5, ['N.m']]) {
      expect(isUnit(text)).toBe(false)
      expect(() => measureOf(text as Unit)).toThrow(TypeError)
      expect(() => unitSymbol(text as Unit)).toThrow(TypeError)
    }
  })

  it('have the symbols of the trade, which never break', () => {
    expect(unitSymbol('lbf.ft')).toBe('lbf·ft')
    expect(unitSymbol('qt_us')).toBe('US\u00a0qt')
    expect(unitSymbol('fl_oz_imp')).toBe('imp\u00a0fl\u00a0oz')
    expect(unitSymbol('degC')).toBe('°C')
    expect(unitSymbol('mm2/s')).toBe('mm²/s')
    expect(unitSymbol('mPa.s')).toBe('mPa·s')
  })
})
