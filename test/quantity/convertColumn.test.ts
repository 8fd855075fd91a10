import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { convert, convertColumn, type Unit } from '../../src/v1/quantity.js'
import { cases, law } from '../support/law.js'
import { allPairs } from './support/exactOracle.js'

describe('convertColumn', () => {
  it('equals convert value by value, and leaves its column alone', () => {
    const value = fc.oneof(
      fc.double({ min: -1e9, max: 1e9, noNaN: true }),
      fc.double({ min: 1e-260, max: 1e-240, noNaN: true }),
      fc.double({ min: 1e260, max: 1e290, noNaN: true }),
      fc.integer({ min: -9999, max: 9999 }).map((tenths) => tenths / 10),
    )
    law(
      500,
      fc.constantFrom(...allPairs(() => true)),
      fc.array(value, { maxLength: 20 }),
      ([from, to], values) => {
        // subnormal values have no result in some units; another test covers them
        const column = Float64Array.from(values.filter((number) => Math.abs(number) > 1e-280 || number === 0))
        const before = [...column]
        const result = convertColumn(column, from, to)
        expect([...result]).toEqual(before.map((item) => convert({ value: item, unit: from }, to).value))
        expect([...column]).toEqual(before)
        expect(result).not.toBe(column)
      },
    )
  })

  it('equals convert for temperatures: ties, sums that cancel, both ends of the fast path', () => {
    const scales = ['degC', 'degF', 'K'] as const
    const zeros = [0, -273.15, 273.15, -459.67, 459.67, 32, -17.77777777777778, -40, 255.3722222222222]
    const value = fc.oneof(
      fc.integer({ min: -99_999, max: 99_999 }).map((hundredths) => hundredths / 100),
      fc.double({ min: -600, max: 600, noNaN: true }),
      // a few last digits from the point where a scale crosses zero or another scale
      fc
        .tuple(fc.constantFrom(...zeros), fc.integer({ min: -40, max: 40 }))
        .map(([zero, steps]) => zero + steps * 2 ** -44),
      fc
        .tuple(fc.double({ min: 1, max: 2, noNaN: true }), fc.integer({ min: -34, max: 84 }), fc.boolean())
        .map(([digits, power, minus]) => (minus ? -digits : digits) * 2 ** power),
      // whole numbers of 53 bits give the ties
      fc.maxSafeInteger().map((whole) => whole / 2 ** 44),
    )
    let count = 0
    law(
      60,
      fc.constantFrom(...scales),
      fc.constantFrom(...scales),
      fc.array(value, { minLength: 500, maxLength: 500, size: 'max' }),
      (from, to, values) => {
        const result = convertColumn(Float64Array.from(values), from, to)
        count += values.length
        const singleResults = values.map((number) => convert({ value: number, unit: from }, to).value)
        for (const [at, value] of singleResults.entries())
          if (!Object.is(result[at], value))
            expect([from, to, values[at], result[at]]).toEqual([from, to, values[at], value])
      },
    )
    expect(count).toBeGreaterThanOrEqual(cases(60) * 500)
  })

  it('equals convert where products lose bits or fall half way between doubles', () => {
    // × 8896443230521/1290320000000: ties for odd k from 1013 to 2023, as in the tests of the paths of convert
    const tieValues = Float64Array.from({ length: 506 }, (_, at) => 1260078125 * (1013 + 2 * at))
    const tinyValues = Float64Array.from({ length: 2000 }, (_, at) => (1 + at / 7) * 1e-305)
    const hugeValues = Float64Array.from({ length: 500 }, (_, at) => (1 + at / 7) * 1e303)
    const inches = Float64Array.from({ length: 2000 }, (_, at) => (5 * (2 ** 50 + at)) / 2 ** 44)
    for (const [column, from, to] of [
      [tieValues, 'psi', 'kPa'],
      [tinyValues, 'lbf.ft', 'N.m'],
      [hugeValues, 'N.m', 'lbf.ft'],
      [inches, 'in', 'mm'],
      [inches, 'degC', 'degF'],
    ] as const) {
      const singleResults = Array.from(column, (value) => convert({ value, unit: from }, to).value)
      expect(Array.from(convertColumn(column, from, to))).toEqual(singleResults)
    }
  })

  it('names the place of a value that has no result', () => {
    const column = (...values: number[]) => Float64Array.from(values)
    expect(() => convertColumn(column(1, Number.NaN), 'N.m', 'lbf.ft')).toThrow(
      /values\[1\] must be finite, got NaN/,
    )
    expect(() => convertColumn(column(Number.POSITIVE_INFINITY), 'degC', 'degF')).toThrow(RangeError)
    expect(() => convertColumn(column(1, 2, 1e308), 'gal_imp', 'mL')).toThrow(/too large/)
    expect(() => convertColumn(column(1e308), 'degC', 'degF')).toThrow(/too large/)
    expect(() => convertColumn(column(5e-324), 'mL', 'qt_us')).toThrow(/too small/)
    expect(() => convertColumn(column(1e308), 'kN', 'N')).toThrow(/too large/)
  })

  it('throws for an invalid column', () => {
    expect(() => convertColumn([1, 2] as unknown as Float64Array, 'N.m', 'lbf.ft')).toThrow(TypeError)
    expect(() => convertColumn(new Float64Array(1), 'N.m', 'nm' as Unit)).toThrow(TypeError)
    expect(convertColumn(new Float64Array(0), 'N.m', 'lbf.ft').length).toBe(0)
  })
})
