import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { comparePrintedFigures } from '../../src/quantity/comparePrintedFigures.js'
import { measureOf } from '../../src/quantity/measureOf.js'
import { UNITS_BY_MEASURE } from '../../src/quantity/unit.js'
import { type PrintedBand, secondUnit, type Unit } from '../../src/v1/quantity.js'
import { cases, law } from '../support/law.js'
import { anyBand, anyFigure } from './support/anyBand.js'
import { exactDecimal, exactResult, type Fraction } from './support/exactOracle.js'

const isLess = ([a, b]: Fraction, [c, d]: Fraction): boolean => a * d < c * b
const plus = ([a, b]: Fraction, [c, d]: Fraction): Fraction => [a * d + c * b, b * d]
const subtract = ([a, b]: Fraction, [c, d]: Fraction): Fraction => [a * d - c * b, b * d]

/** The exact ends of a printed band. */
function endsOf(band: PrintedBand): { low?: Fraction; high?: Fraction } {
  if (band.kind === 'limits') {
    return {
      ...(band.min !== undefined && { low: exactDecimal(band.min) }),
      ...(band.max !== undefined && { high: exactDecimal(band.max) }),
    }
  }
  const value = exactDecimal(band.value)
  if (band.kind === 'nominal') return { low: value, high: value }
  return { low: subtract(value, exactDecimal(band.minus)), high: plus(value, exactDecimal(band.plus)) }
}

function leaves(band: PrintedBand, originalBand: PrintedBand): boolean {
  const ownEnds = endsOf(band)
  const outside = endsOf(originalBand)
  const lowEnd = outside.low && exactResult(outside.low, originalBand.unit, band.unit)
  const highEnd = outside.high && exactResult(outside.high, originalBand.unit, band.unit)
  const below = lowEnd !== undefined && (ownEnds.low === undefined || isLess(ownEnds.low, lowEnd))
  const above = highEnd !== undefined && (ownEnds.high === undefined || isLess(highEnd, ownEnds.high))
  return (
    below ||
    above ||
    (ownEnds.low !== undefined && ownEnds.high !== undefined && isLess(ownEnds.high, ownEnds.low))
  )
}

const bandAndUnit = anyBand.chain((band) =>
  fc
    .constantFrom(...(UNITS_BY_MEASURE[measureOf(band.unit)] as readonly Unit[]))
    .map((unit) => ({ band, unit })),
)

describe('second units, laws', () => {
  it('never leave the manual’s band, and agree with it by our own rule', () => {
    let bands = 0
    let unprintableCount = 0
    law(11_000, bandAndUnit, ({ band, unit }) => {
      bands += 1
      const second = secondUnit(band, unit)
      if (second === null) {
        unprintableCount += 1
        return
      }
      if (band.kind !== 'nominal' && leaves(second, band))
        throw new Error(`${JSON.stringify(second)} leaves the band`)
      const { verdict } = comparePrintedFigures(band, second)
      const back = comparePrintedFigures(second, band)
      if (verdict !== 'agree' || back.verdict !== 'agree')
        throw new Error(`${JSON.stringify(second)}: ${verdict}`)
    })
    expect(bands).toBeGreaterThanOrEqual(cases(11_000))
    expect(unprintableCount / bands).toBeLessThan(0.1)
  })

  it('would leave it in three of four cases, were both ends rounded to nearest', () => {
    let left = 0
    let bands = 0
    law(1000, fc.integer({ min: 10, max: 200 }), fc.integer({ min: 2, max: 40 }), (low, width) => {
      bands += 1
      const originalBand: PrintedBand = {
        kind: 'limits',
        min: String(low),
        max: String(low + width),
        unit: 'N.m',
      }
      const rounded: PrintedBand = {
        kind: 'limits',
        min: String(Math.round(low / 1.355818)),
        max: String(Math.round((low + width) / 1.355818)),
        unit: 'lbf.ft',
      }
      if (leaves(rounded, originalBand)) left += 1
      const second = secondUnit(originalBand, 'lbf.ft')
      expect(second).not.toBe(null)
      if (second) expect(leaves(second, originalBand)).toBe(false)
    })
    console.log(
      `ordinary rounding leaves the band in ${((100 * left) / bands).toFixed(1)} % of ${bands} torque bands`,
    )
    // each end would be outside in half of all cases, so three bands in four
    expect(left / bands).toBeGreaterThan(0.6)
  })

  it('give a value back unchanged in its own unit, but for notes beside it', () => {
    law(50, anyFigure(), (value) => {
      const second = secondUnit({ kind: 'nominal', value, unit: 'N.m' }, 'N.m')
      expect(second?.kind === 'nominal' && Number(second.value)).toBe(Number(value))
    })
  })
})

const nominal = (value: string, unit: Unit): PrintedBand => ({ kind: 'nominal', value, unit })
const limits = (min: string | undefined, max: string | undefined, unit: Unit): PrintedBand => ({
  kind: 'limits',
  ...(min !== undefined && { min }),
  ...(max !== undefined && { max }),
  unit,
})

describe('second units, published examples', () => {
  it.each([
    // NIST SP 811 (2008), B.7.2: 36 ft is 11.0 m, since 11 m would lose information and 10.97 m would claim too much
    ['36', 'ft', 'm', '11.0'],
    // NIST LC 1137, rule of reason: 36 in is 91 cm; 40.1 in is 101.9 cm
    ['36', 'in', 'cm', '91'],
    ['40.1', 'in', 'cm', '101.9'],
  ] as const)('%s %s is %s %s', (value, from, to, second) => {
    expect(secondUnit(nominal(value, from), to)).toEqual(nominal(second, to))
  })

  it.each([
    // calculated by hand from 1 N·m = 0.7375621493 lbf·ft: 28.765 … 36.140; 22.127 … 26.552; 33.895 … 47.454
    ['39', '49', 'N.m', 'lbf.ft', '29', '36'],
    ['30', '36', 'N.m', 'lbf.ft', '23', '26'],
    ['25', '35', 'lbf.ft', 'N.m', '34', '47'],
    // −40 °C is −40 °F exactly, −20 °C is −4 °F exactly; −15 °C is 5 °F
    ['-40', '-20', 'degC', 'degF', '-40', '-4'],
    ['-40', '-15', 'degC', 'degF', '-40', '5'],
    // 21 … 22 N·m is 15.489 … 16.226 lbf·ft: among whole numbers only 16 is inside
    ['21', '22', 'N.m', 'lbf.ft', '16', '16'],
    // 22 … 22.9 N·m is 16.2264 … 16.8902: one decimal from the start, 16.3 … 16.8
    ['22', '22.9', 'N.m', 'lbf.ft', '16.3', '16.8'],
    // 22 … 23 N·m is 16.226 … 16.964 lbf·ft: no whole number lies inside, so a digit is added
    ['22', '23', 'N.m', 'lbf.ft', '16.3', '16.9'],
  ] as const)('limits %s … %s %s are %s %s … %s', (min, max, from, to, lowEnd, highEnd) => {
    expect(secondUnit(limits(min, max, from), to)).toEqual(limits(lowEnd, highEnd, to))
  })

  it('rounds a single limit inward', () => {
    // 34.6 N·m at least is 25.5197 lbf·ft: 25.6; at most: 25.5
    expect(secondUnit(limits('34.6', undefined, 'N.m'), 'lbf.ft')).toEqual(
      limits('25.6', undefined, 'lbf.ft'),
    )
    expect(secondUnit(limits(undefined, '34.6', 'N.m'), 'lbf.ft')).toEqual(
      limits(undefined, '25.5', 'lbf.ft'),
    )
  })

  it('keeps a tolerance inside on both sides', () => {
    // 20 ± 2 N·m is 14.751 lbf·ft, 13.2761 … 16.2264; 14.8 − 1.5 = 13.3 and 14.8 + 1.4 = 16.2
    const value: PrintedBand = {
      kind: 'nominal with tolerance',
      value: '20',
      minus: '2',
      plus: '2',
      unit: 'N.m',
    }
    expect(secondUnit(value, 'lbf.ft')).toEqual({
      ...value,
      unit: 'lbf.ft',
      value: '14.8',
      minus: '1.5',
      plus: '1.4',
    })
  })

  it('turns a one-sided tolerance into limits where no nominal lies inside', () => {
    // 3 +0/−0 N·m is 2.2126864 … lbf·ft alone, and no six decimals equal it, so not even limits are possible
    const value: PrintedBand = {
      kind: 'nominal with tolerance',
      value: '3',
      minus: '0',
      plus: '0',
      unit: 'N.m',
    }
    expect(secondUnit(value, 'lbf.ft')).toBe(null)
  })

  it('gives single-digit figures two digits, whole numbers their zeros, and exact ends no more zeros', () => {
    // 9 N·m is 6.638 lbf·ft; 1 US qt is 0.9464 L; 1 US gal is 3785.4 mL; 5 cN·m is 0.05 N·m exactly
    expect(secondUnit(nominal('9', 'N.m'), 'lbf.ft')).toEqual(nominal('6.6', 'lbf.ft'))
    expect(secondUnit(nominal('1', 'qt_us'), 'L')).toEqual(nominal('0.95', 'L'))
    expect(secondUnit(nominal('1', 'gal_us'), 'mL')).toEqual(nominal('3785', 'mL'))
    expect(secondUnit(nominal('5', 'cN.m'), 'N.m')).toEqual(nominal('0.05', 'N.m'))
  })

  it('decides ties on the decimal digits, to the even one', () => {
    // the rule of ASTM E29: on an exact tie the even digit
    // 2.5 in is 63.5 mm: last place 1 mm (0.1 in = 2.54 mm), a tie, so 64; 0.5 in = 12.7; 4.5 in = 114.3
    expect(secondUnit(nominal('2.5', 'in'), 'mm')).toEqual(nominal('64', 'mm'))
    // 7.5 in is 190.5 mm: a tie, so 190
    expect(secondUnit(nominal('7.5', 'in'), 'mm')).toEqual(nominal('190', 'mm'))
  })

  it('is null if nine digits or six decimals are not enough', () => {
    expect(secondUnit(nominal('999999999', 'kN.m'), 'cN.m')).toBe(null)
    expect(secondUnit(limits('0.000001', '0.000002', 'cN.m'), 'kN.m')).toBe(null)
    expect(secondUnit(limits('999999999', undefined, 'kN.m'), 'cN.m')).toBe(null)
  })
})

describe('second units, misuse', () => {
  it('throws for what is no printed value', () => {
    const callWith =
      (value: unknown, unit: unknown = 'lbf.ft') =>
      () =>
        secondUnit(value as PrintedBand, unit as Unit)
    expect(callWith({ kind: 'not stated', unit: 'N.m' })).toThrow(/value.kind/)
    expect(callWith({ kind: 'nominal', value: 20, unit: 'N.m' })).toThrow(/value.value/)
    expect(callWith({ kind: 'nominal', value: '2O', unit: 'N.m' })).toThrow(TypeError)
    expect(callWith({ kind: 'limits', unit: 'N.m' })).toThrow(/min or max/)
    expect(callWith({ kind: 'nominal', value: '20', unit: 'nm' })).toThrow(/unit id/)
    expect(callWith({ kind: 'nominal', value: '20', unit: 'N.m' }, 'L')).toThrow(/volume/)
  })
})
