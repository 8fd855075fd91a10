import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { convert, type Unit } from '../../src/v1/quantity.js'
import {
  FROM_DEFINITIONS,
  IN_GNU_UNITS,
  IN_LC1137,
  IN_QUDT,
  IN_REC20,
  IN_SP811,
} from '../published/unitConversions.js'
import { cases, law } from '../support/law.js'
import { anyDouble } from './support/anyDouble.js'
import {
  allPairs,
  exactDouble,
  exactResult,
  isLinear,
  isNearest,
  isNormal,
  type Pair,
} from './support/exactOracle.js'

const pairs = allPairs(isLinear)
const temperatures = allPairs((measure) => measure === 'temperature')

function expectNearest([from, to]: Pair, value: number): void {
  const exact = exactResult(exactDouble(value), from, to)
  let result: number
  try {
    result = convert({ value, unit: from }, to).value
  } catch (error) {
    if (isNormal(exact) || !(error instanceof RangeError)) {
      throw new Error(`${value} ${from} in ${to} threw ${error} though it has a result`)
    }
    return
  }
  if (!isNearest(result, exact)) throw new Error(`${value} ${from} is not nearest to ${result} ${to}`)
}

describe('convert, checked against whole fractions', () => {
  it('gives the nearest double for every linear pair', () => {
    let counted = 0
    law(11_000, fc.constantFrom(...pairs), anyDouble, (pair, value) => {
      counted += 1
      expectNearest(pair, value)
    })
    expect(counted).toBeGreaterThanOrEqual(cases(11_000))
  })

  it('gives the nearest double for every pair at awkward values', () => {
    const specialValues = [
      1,
      3,
      1 / 3,
      0.1,
      2 ** 53 - 1,
      2 ** -52 + 1,
      16129,
      5e-324,
      2 ** -1022,
      Number.MAX_VALUE,
      -2.5,
      0,
    ]
    for (const pair of [...pairs, ...temperatures])
      for (const value of specialValues) expectNearest(pair, value)
    expect(pairs.length).toBeGreaterThan(200)
  })

  it('gives the nearest double for temperatures', () => {
    law(2000, fc.constantFrom(...temperatures), anyDouble, (pair, value) => expectNearest(pair, value))
  })

  it('brings a decimal of up to 15 digits back unchanged when rounded to 15 digits', () => {
    const decimal = fc
      .tuple(fc.bigInt({ min: 1n, max: 999_999_999_999_999n }), fc.integer({ min: -15, max: 6 }))
      .map(([digits, exponent]) => `${digits}e${exponent}`)
    law(2000, fc.constantFrom(...pairs), decimal, ([from, to], text) => {
      const converted = convert({ value: Number(text), unit: from }, to)
      const back = convert(converted, from).value
      expect(Number(back.toPrecision(15))).toBe(Number(text))
    })
  })

  it('keeps order and sign', () => {
    law(
      50,
      fc.constantFrom(...pairs),
      fc.double({ min: -1e9, max: 1e9, noNaN: true }),
      fc.double({ min: -1e9, max: 1e9, noNaN: true }),
      ([from, to], candidate, two) => {
        fc.pre(Math.abs(candidate) > 1e-200 && Math.abs(two) > 1e-200)
        const first = convert({ value: candidate, unit: from }, to).value
        const second = convert({ value: two, unit: from }, to).value
        expect(candidate < two ? first <= second : first >= second).toBe(true)
        expect(Math.sign(first)).toBe(Math.sign(candidate))
      },
    )
  })
})

describe('convert, checked against published figures', () => {
  it.each([...IN_GNU_UNITS, ...IN_QUDT, ...IN_REC20, ...IN_SP811, ...IN_LC1137, ...FROM_DEFINITIONS])(
    '%d %s in %s is %s',
    (value, from, to, printed) => {
      const result = convert({ value, unit: from }, to).value
      const digits = printed.replace(/^-?0*\.?0*/, '').replace('.', '').length
      expect(Number(result.toPrecision(digits))).toBe(Number(printed))
    },
  )

  it('knows where the temperature scales meet', () => {
    // 180 Fahrenheit degrees from ice (32 °F) to steam (212 °F); both scales meet at −40: from the definitions
    expect(convert({ value: -40, unit: 'degC' }, 'degF')).toEqual({ value: -40, unit: 'degF' })
    expect(convert({ value: 100, unit: 'degC' }, 'degF').value).toBe(212)
    expect(convert({ value: 32, unit: 'degF' }, 'degC').value).toBe(0)
    expect(convert({ value: 0, unit: 'K' }, 'degC').value).toBe(-273.15)
    expect(convert({ value: 9, unit: 'degF_diff' }, 'K_diff').value).toBe(5)
  })
})

describe('convert, at its limits and misused', () => {
  it('throws above the largest double, and just not at it', () => {
    expect(convert({ value: 2 ** 1020, unit: 'ft' }, 'in').value).toBe(2 ** 1020 * 12)
    expect(() => convert({ value: 2 ** 1021, unit: 'ft' }, 'in')).toThrow(RangeError)
    expect(() => convert({ value: -1e308, unit: 'gal_imp' }, 'mL')).toThrow(/too large/)
  })

  it('throws below the smallest normal double, and not at it', () => {
    expect(convert({ value: 2 ** -1022, unit: 'kN' }, 'N').value).toBe(2 ** -1022 * 1000)
    expect(convert({ value: 2 ** -1022 * 1000, unit: 'N' }, 'kN').value).toBe(2 ** -1022)
    expect(() => convert({ value: 2 ** -1022 * 999, unit: 'N' }, 'kN')).toThrow(/too small/)
    expect(() => convert({ value: 5e-324, unit: 'mL' }, 'gal_us')).toThrow(RangeError)
  })

  it('gives zero for zero without a sign, and itself for the same unit', () => {
    expect(Object.is(convert({ value: -0, unit: 'mm' }, 'in').value, 0)).toBe(true)
    expect(Object.is(convert({ value: -0, unit: 'km' }, 'mi').value, 0)).toBe(true)
    expect(convert({ value: 5e-324, unit: 'mm' }, 'mm')).toEqual({ value: 5e-324, unit: 'mm' })
    expect(convert({ value: 21.5, unit: 'degC' }, 'degC').value).toBe(21.5)
  })

  it('throws for an invalid quantity', () => {
    const callWith = (value: unknown, unit: unknown, to: unknown) => () =>
      convert({ value: value as number, unit: unit as Unit }, to as Unit)
    expect(callWith('20', 'N.m', 'lbf.ft')).toThrow(TypeError)
    expect(callWith(null, 'N.m', 'lbf.ft')).toThrow(/value must be a number/)
    expect(callWith(Number.NaN, 'N.m', 'lbf.ft')).toThrow(RangeError)
    expect(callWith(Number.POSITIVE_INFINITY, 'N.m', 'lbf.ft')).toThrow(/finite/)
    expect(callWith(1, 'ft-lb', 'N.m')).toThrow(/unit id/)
    expect(callWith(1, 'N.m', '__proto__')).toThrow(TypeError)
    expect(callWith(1, 'toString', 'N.m')).toThrow(TypeError)
    expect(callWith(1, 'N.m', undefined)).toThrow(TypeError)
    expect(callWith(1, 'N.m', 'x'.repeat(1e6))).toThrow(/x…'/)
    expect(callWith(1, 'N.m', 'N')).toThrow(/of force/)
    expect(callWith(1, 'degC', 'degC_diff')).toThrow(TypeError)
  })

  it('does not touch its argument', () => {
    const quantity = Object.freeze({ value: 9, unit: 'N.m' as const })
    expect(convert(quantity, 'lbf.in').unit).toBe('lbf.in')
    expect(quantity).toEqual({ value: 9, unit: 'N.m' })
  })
})
