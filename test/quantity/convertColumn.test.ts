import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { convert, convertColumn, type Unit } from '../../src/quantity/index.js'
import { allPairs } from './support/exactOracle.js'

describe('convertColumn', () => {
  it('equals convert value by value, and leaves its column alone (5,000 columns)', () => {
    const value = fc.oneof(
      fc.double({ min: -1e9, max: 1e9, noNaN: true }),
      fc.double({ min: 1e-260, max: 1e-240, noNaN: true }),
      fc.double({ min: 1e260, max: 1e290, noNaN: true }),
      fc.integer({ min: -9999, max: 9999 }).map((tenths) => tenths / 10),
    )
    fc.assert(
      fc.property(
        fc.constantFrom(...allPairs(() => true)),
        fc.array(value, { maxLength: 20 }),
        ([from, to], values) => {
          // subnormal values have no result in some units, and that is another test
          const column = Float64Array.from(values.filter((one) => Math.abs(one) > 1e-280 || one === 0))
          const before = [...column]
          const result = convertColumn(column, from, to)
          expect([...result]).toEqual(before.map((one) => convert({ value: one, unit: from }, to).value))
          expect([...column]).toEqual(before)
          expect(result).not.toBe(column)
        },
      ),
      { numRuns: 5_000 },
    )
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

  it('throws for what is no column', () => {
    expect(() => convertColumn([1, 2] as unknown as Float64Array, 'N.m', 'lbf.ft')).toThrow(TypeError)
    expect(() => convertColumn(new Float64Array(1), 'N.m', 'nm' as Unit)).toThrow(TypeError)
    expect(convertColumn(new Float64Array(0), 'N.m', 'lbf.ft').length).toBe(0)
  })
})
