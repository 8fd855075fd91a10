import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { comparePrintedFigures } from '../../src/quantity/comparePrintedFigures.js'
import type { PrintedBand, Unit } from '../../src/v1/quantity.js'
import { law } from '../support/law.js'
import { anyBand } from './support/anyBand.js'
import { exactDecimal, exactResult, type Fraction } from './support/exactOracle.js'

const nominal = (value: string, unit: Unit, asPrinted?: string): PrintedBand => ({
  kind: 'nominal',
  value,
  unit,
  ...(asPrinted !== undefined && { asPrinted }),
})
const limits = (min: string | undefined, max: string | undefined, unit: Unit): PrintedBand => ({
  kind: 'limits',
  ...(min !== undefined && { min }),
  ...(max !== undefined && { max }),
  unit,
})
const tolerance = (
  value: string,
  minusTolerance: string,
  plusTolerance: string,
  unit: Unit,
): PrintedBand => ({
  kind: 'nominal with tolerance',
  value,
  minus: minusTolerance,
  plus: plusTolerance,
  unit,
})

describe('printed figures that can both be true', () => {
  it.each([
    // calculated from 1 N·m = 0.73756215 lbf·ft = 8.8507458 lbf·in and 1 kgf·m = 9.80665 N·m
    ['39 N·m is 28.765 lbf·ft', nominal('39', 'N.m'), nominal('28.7', 'lbf.ft')],
    ['39 N·m is 3.977 kgf·m', nominal('39', 'N.m'), nominal('4.0', 'kgf.m')],
    ['9 N·m is 79.66 lbf·in', nominal('9', 'N.m'), nominal('80', 'lbf.in')],
    ['7 1/2 lbf·ft is 10.17 N·m', nominal('10', 'N.m'), nominal('7.5', 'lbf.ft', '7 1/2')],
    ['1/2 US qt is 473.2 mL', nominal('450', 'mL'), nominal('0.5', 'qt_us', '1/2')],
    ['30 … 36 N·m holds 23 … 26 lbf·ft', limits('30', '36', 'N.m'), limits('23', '26', 'lbf.ft')],
    ['80 °C is 176 °F', nominal('80', 'degC'), nominal('176', 'degF')],
    [
      '20 ± 2 N·m holds 14.8 −1.5/+1.4',
      tolerance('20', '2', '2', 'N.m'),
      tolerance('14.8', '1.5', '1.4', 'lbf.ft'),
    ],
    ['20 ± 2 N·m has the nominal 14.75', tolerance('20', '2', '2', 'N.m'), nominal('15', 'lbf.ft')],
    ['20 ± 2 N·m is 18 … 22', tolerance('20', '2', '2', 'N.m'), limits('18', '22', 'N.m')],
    ['one limit each', limits('20', undefined, 'N.m'), limits('15', undefined, 'lbf.ft')],
  ] as const)('agree: %s', (_, first, second) => {
    expect(comparePrintedFigures(first, second)).toEqual({ verdict: 'agree', reasons: [] })
    expect(comparePrintedFigures(second, first).verdict).toBe('agree')
  })

  it('counts a fraction by its own denominator', () => {
    // 7 1/2 lbf·ft means 7.25 … 7.75, the figure 7.5 for 7.45 … 7.55; 10 N·m for 7.007 … 7.744 lbf·ft,
    // and 10.4 N·m for 7.634 … 7.708
    expect(comparePrintedFigures(nominal('10.4', 'N.m'), nominal('7.5', 'lbf.ft', '7 1/2')).verdict).toBe(
      'agree',
    )
    expect(comparePrintedFigures(nominal('10.4', 'N.m'), nominal('7.5', 'lbf.ft', '7½')).verdict).toBe(
      'agree',
    )
    expect(comparePrintedFigures(nominal('10.4', 'N.m'), nominal('7.5', 'lbf.ft')).verdict).toBe('small miss')
    expect(comparePrintedFigures(nominal('10.4', 'N.m'), nominal('7.5', 'lbf.ft', '7.5')).verdict).toBe(
      'small miss',
    )
    // a third has no exact decimal: 1/3 pt is exactly 189.42 mL, whatever the sixth digit is
    expect(comparePrintedFigures(nominal('190', 'mL'), nominal('0.333333', 'pt_imp', '1/3')).verdict).toBe(
      'agree',
    )
  })

  it('meet at the ends of their intervals, and not beyond', () => {
    // 10.0 is in 9.95 … 10.05 and 10.1 in 10.05 … 10.15: they touch. 10.2 begins at 10.15, one tenth away
    expect(comparePrintedFigures(nominal('10.0', 'N.m'), nominal('10.1', 'N.m')).verdict).toBe('agree')
    expect(comparePrintedFigures(nominal('10.0', 'N.m'), nominal('10.2', 'N.m'))).toMatchObject({
      verdict: 'small miss',
      reasons: [{ code: 'quantity/printed-figures-differ-slightly', params: { missPercent: 1 } }],
    })
  })

  it('let a limit lie inside by less than one digit, and no more', () => {
    // 30.00 N·m is 22.1269 lbf·ft: rounded inward to a whole number it may be 23; 24 is a whole digit further
    expect(
      comparePrintedFigures(limits('30.00', undefined, 'N.m'), limits('23', undefined, 'lbf.ft')).verdict,
    ).toBe('agree')
    expect(
      comparePrintedFigures(limits('30.00', undefined, 'N.m'), limits('24', undefined, 'lbf.ft')).verdict,
    ).not.toBe('agree')
    // 22 means 21.5 … 22.5; 22.5 is inside it, 22.6 is a tenth further, which is one digit too much
    expect(
      comparePrintedFigures(limits('22', undefined, 'N.m'), limits('22.5', undefined, 'N.m')).verdict,
    ).toBe('agree')
    expect(
      comparePrintedFigures(limits('22', undefined, 'N.m'), limits('22.6', undefined, 'N.m')).verdict,
    ).toBe('small miss')
    // 36.00 N·m is 26.5522: inward 26; 25 is too far
    expect(
      comparePrintedFigures(limits(undefined, '36.00', 'N.m'), limits(undefined, '26', 'lbf.ft')).verdict,
    ).toBe('agree')
    expect(
      comparePrintedFigures(limits(undefined, '36.00', 'N.m'), limits(undefined, '25', 'lbf.ft')).verdict,
    ).not.toBe('agree')
    // outward a limit may move by only half a digit: 26.5522 printed as 27 is permitted, 28 is not
    expect(
      comparePrintedFigures(limits(undefined, '36.00', 'N.m'), limits(undefined, '27', 'lbf.ft')).verdict,
    ).toBe('agree')
    expect(
      comparePrintedFigures(limits(undefined, '36.00', 'N.m'), limits(undefined, '28', 'lbf.ft')).verdict,
    ).not.toBe('agree')
  })
})

describe('slips by a known ratio', () => {
  it.each([
    // 9 N·m is 79.66 lbf·in, printed as lbf·ft
    ['foot for inch', nominal('9', 'N.m'), nominal('80', 'lbf.ft'), '12'],
    // 108.5 N·m is 80.0 lbf·ft, printed as lbf·in
    ['foot for inch', nominal('108.5', 'N.m'), nominal('80.0', 'lbf.in'), '12'],
    // 2.0 kgf·m is 19.6 N·m; the figure 2.0 × 9.80665 was printed with kgf·m again
    ['kilogram-force for newton', nominal('19.6', 'kgf.m'), nominal('19.6', 'N.m'), '9.80665'],
    ['kilogram-force for newton', nominal('196', 'N.m'), nominal('2.04', 'kgf.m'), '9.80665'],
    [
      'number copied between pound-foot and newton metre',
      nominal('39', 'N.m'),
      nominal('39', 'lbf.ft'),
      '1.35582',
    ],
    // 1.00 US qt is 0.946 L; 1.00 imperial qt is 1.137 L
    ['US for imperial measure', nominal('0.946', 'L'), nominal('1.00', 'qt_imp'), '1.20095'],
    ['US for imperial measure', nominal('1.137', 'L'), nominal('1.00', 'qt_us'), '1.20095'],
    // 32.0 US fl oz is 946 mL; 32.0 imperial fl oz is 909 mL
    ['US for imperial fluid ounce', nominal('946', 'mL'), nominal('32.0', 'fl_oz_imp'), '0.96076'],
  ] as const)('%s: %o and %o', (slip, first, second, ratio) => {
    const agreement = comparePrintedFigures(first, second)
    expect(agreement).toEqual({
      verdict: 'slip',
      slip,
      reasons: [{ code: 'quantity/printed-figures-slip', params: { first, second, slip, ratio } }],
    })
    expect(comparePrintedFigures(second, first).slip).toBe(slip)
  })

  it('are seen in bands when both ends show them', () => {
    // 18 … 22 N·m is 159 … 195 lbf·in
    expect(comparePrintedFigures(limits('18', '22', 'N.m'), limits('160', '194', 'lbf.ft')).slip).toBe(
      'foot for inch',
    )
    expect(comparePrintedFigures(limits('18', '22', 'N.m'), limits('160', '250', 'lbf.ft')).slip).toBe(
      undefined,
    )
  })

  it('are not looked for between units that cannot have them', () => {
    // 12 m and 1 m differ by 12, but feet and inches were not confused there
    expect(comparePrintedFigures(nominal('12', 'm'), nominal('1', 'm')).verdict).toBe('differ')
    expect(comparePrintedFigures(nominal('12', 'N.m'), nominal('1', 'N.m')).verdict).toBe('differ')
    expect(comparePrintedFigures(nominal('1.2', 'L'), nominal('1000', 'mL')).verdict).toBe('differ')
  })
})

describe('other misses', () => {
  it('are small up to 5 % of the first value, and differ above', () => {
    // intervals of 100.0 and 105.1 are 5.0 apart: 100.05 … 105.05; of 105.2, 5.1 apart
    expect(comparePrintedFigures(nominal('100.0', 'N.m'), nominal('105.1', 'N.m')).verdict).toBe('small miss')
    expect(comparePrintedFigures(nominal('100.0', 'N.m'), nominal('105.2', 'N.m'))).toMatchObject({
      verdict: 'differ',
      reasons: [{ code: 'quantity/printed-figures-differ', params: { missPercent: 5.1 } }],
    })
    expect(comparePrintedFigures(nominal('0', 'N.m'), nominal('5', 'N.m')).verdict).toBe('differ')
  })

  it('are not judged between things of another kind', () => {
    const reasons = [{ code: 'quantity/printed-figures-not-comparable' }]
    expect(comparePrintedFigures(limits('30', '36', 'N.m'), nominal('24', 'lbf.ft'))).toMatchObject({
      verdict: 'not comparable',
      reasons,
    })
    expect(
      comparePrintedFigures(limits('30', undefined, 'N.m'), limits(undefined, '26', 'lbf.ft')).verdict,
    ).toBe('not comparable')
    expect(comparePrintedFigures(limits('30', '36', 'N.m'), limits('23', undefined, 'lbf.ft')).verdict).toBe(
      'not comparable',
    )
    expect(comparePrintedFigures(nominal('24', 'N.m'), limits('23', undefined, 'lbf.ft')).verdict).toBe(
      'not comparable',
    )
  })
})

describe('laws', () => {
  it('every value agrees with itself', () => {
    law(50, anyBand, (band) => {
      expect(comparePrintedFigures(band, band).verdict).toBe('agree')
    })
  })

  it('agreement does not depend on the order, and equals an interval test in whole fractions', () => {
    const places = (figure: string): bigint => 10n ** BigInt(figure.split('.')[1]?.length ?? 0)
    const moved = ([n, d]: Fraction): Fraction => exactResult([n, d], 'lbf.ft', 'N.m')
    const figure = fc
      .tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 0, max: 2 }))
      .map(([n, places]) => (n / 10).toFixed(places))
    law(2000, figure, figure, (candidate, two) => {
      const agree =
        comparePrintedFigures(nominal(candidate, 'N.m'), nominal(two, 'lbf.ft')).verdict === 'agree'
      expect(
        comparePrintedFigures(nominal(two, 'lbf.ft'), nominal(candidate, 'N.m')).verdict === 'agree',
      ).toBe(agree)
      const [a, b] = exactDecimal(candidate)
      const [c, d] = exactDecimal(two)
      const twiceScale = places(candidate) * 2n
      const low: Fraction = [a * twiceScale - b, b * twiceScale]
      const high: Fraction = [a * twiceScale + b, b * twiceScale]
      const otherHalf = places(two) * 2n
      const otherLow = moved([c * otherHalf - d, d * otherHalf])
      const otherHigh = moved([c * otherHalf + d, d * otherHalf])
      const areApart =
        high[0] * otherLow[1] < otherLow[0] * high[1] || otherHigh[0] * low[1] < low[0] * otherHigh[1]
      expect(agree).toBe(!areApart)
    })
  })
})

describe('misuse', () => {
  it('throws for figures out of grammar and units that do not go together', () => {
    expect(() => comparePrintedFigures(nominal('9', 'N.m'), nominal('9', 'N'))).toThrow(TypeError)
    expect(() => comparePrintedFigures(nominal('9,5', 'N.m'), nominal('9', 'N.m'))).toThrow(
      /first\.value must be a decimal string/,
    )
    expect(() => comparePrintedFigures(nominal('9', 'nm' as Unit), nominal('9', 'N.m'))).toThrow(TypeError)
  })

  it('is not misled by a long or hostile note', () => {
    const note = '('.repeat(100_000)
    expect(comparePrintedFigures(nominal('9', 'N.m', note), nominal('9', 'N.m', '9/0')).verdict).toBe('agree')
  })
})
