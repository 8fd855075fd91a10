import fc from 'fast-check'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { makeConversionStep } from '../../src/quantity/conversionStep.js'
import * as doubt from '../../src/quantity/convertExactly.js'
import { findExactQuotient } from '../../src/quantity/convertValue.js'
import { convert, convertColumn } from '../../src/v1/quantity.js'
import { law } from '../support/law.js'
import { anyDouble } from './support/anyDouble.js'
import { convertWithDecimals } from './support/convertWithDecimals.js'
import {
  allPairs,
  exactDouble,
  exactResult,
  isNearest,
  isNormal,
  isTie,
  type Pair,
} from './support/exactOracle.js'

vi.mock('../../src/quantity/convertExactly.js', async (importOriginal) => {
  const realModule = await importOriginal<typeof doubt>()
  return { convertExactly: vi.fn(realModule.convertExactly) }
})

const everyPair = allPairs(() => true)
const convertSpy = vi.mocked(doubt.convertExactly)

beforeEach(() => {
  convertSpy.mockClear()
})

describe('the path for doubtful cases', () => {
  it('is correct for every pair, at all magnitudes', () => {
    law(400, fc.constantFrom(...everyPair), anyDouble, ([from, to]: Pair, value) => {
      const exact = exactResult(exactDouble(value), from, to)
      fc.pre(isNormal(exact))
      expect(isNearest(convertSpy(value, from, to), exact)).toBe(true)
    })
  })

  it('equals the same table in decimals of 1,200 digits', () => {
    law(100, fc.constantFrom(...everyPair), anyDouble, ([from, to]: Pair, value) => {
      fc.pre(isNormal(exactResult(exactDouble(value), from, to)))
      expect(convertSpy(value, from, to)).toBe(convertWithDecimals(value, from, to))
    })
  })

  it('is not needed for usual conversions', () => {
    const ordinaryValues = fc
      .tuple(fc.integer({ min: 1, max: 999_999 }), fc.integer({ min: 0, max: 3 }))
      .map(([digits, decimals]) => digits / 10 ** decimals)
    law(10_000, fc.constantFrom(...everyPair), ordinaryValues, ([from, to], value) => {
      convert({ value, unit: from }, to)
    })
    expect(convertSpy.mock.calls.length).toBeLessThanOrEqual(5)
  })

  it('is used for magnitudes where parts of a product could be lost', () => {
    expect(
      isNearest(
        convert({ value: 1e290, unit: 'lbf.ft' }, 'N.m').value,
        exactResult(exactDouble(1e290), 'lbf.ft', 'N.m'),
      ),
    ).toBe(true)
    expect(
      isNearest(
        convert({ value: 1e-290, unit: 'lbf.ft' }, 'N.m').value,
        exactResult(exactDouble(1e-290), 'lbf.ft', 'N.m'),
      ),
    ).toBe(true)
    expect(convertSpy).toHaveBeenCalledTimes(2)
  })

  it('decides exact ties to the even digit where no other path can', () => {
    // psi to kPa is × 8896443230521/1290320000000, whose denominator is 1024 × 1260078125: 1260078125 k psi is
    // 8896443230521 k/1024 kPa, and for odd k from 1013 to 2023 that is an odd number of 54 bits over 1024
    let ties = 0
    for (let k = 1013; k <= 2023; k += 2) {
      const exact = exactResult(exactDouble(1260078125 * k), 'psi', 'kPa')
      const result = convert({ value: 1260078125 * k, unit: 'psi' }, 'kPa').value
      expect(isNearest(result, exact)).toBe(true)
      if (isTie(result, exact)) ties += 1
    }
    expect(ties).toBe(506)
    expect(convertSpy).toHaveBeenCalledTimes(506)
  })
})

/**
 * The doubles whose conversion from N·m to lbf·ft is nearest to a tie, but not a tie. The step is n/d with odd d: m n ≡
 * (d + e)/2 (mod d) puts m n/d at e/(2 d) from half way, about 2^−53 of a last digit for small odd e.
 */
function nearTies(): number[] {
  const n = 2_500_000_000_000_000n
  const d = 3_389_544_870_828_501n
  const found: number[] = []
  for (let e = -399n; e <= 399n; e += 2n) {
    const smallestCount = (((((d + e) / 2n) * inverse(n, d)) % d) + d) % d
    for (let m = smallestCount; m < 2n ** 53n; m += d) {
      // from here on, the results have 53 bits before the point
      if (m * n >= d * 2n ** 52n) found.push(Number(m))
    }
  }
  return found
}

function inverse(value: bigint, modulus: bigint): bigint {
  let [a, b, x, y] = [value, modulus, 1n, 0n]
  while (b !== 0n) {
    const quotient = a / b
    ;[a, b, x, y] = [b, a - quotient * b, y, x - quotient * y]
  }
  return x
}

describe('the nearest misses of a tie', () => {
  it('ties are rounded correctly, alone and in a column, and near ties use exact arithmetic', () => {
    const values = nearTies()
    expect(values.length).toBeGreaterThan(300)
    const column = convertColumn(Float64Array.from(values), 'N.m', 'lbf.ft')
    convertSpy.mockClear()
    values.forEach((value, at) => {
      const exact = exactResult(exactDouble(value), 'N.m', 'lbf.ft')
      const result = convert({ value, unit: 'N.m' }, 'lbf.ft').value
      expect(isNearest(result, exact)).toBe(true)
      expect(isTie(result, exact)).toBe(false)
      expect(column[at]).toBe(result)
    })
    // those within 2^−101 of the value itself
    expect(convertSpy.mock.calls.length).toBeGreaterThanOrEqual(10)
  })
})

describe('exact ties with small numbers', () => {
  it('are settled without decimals: inches to millimetres, degrees Celsius to Fahrenheit', () => {
    let ties = 0
    for (const [from, to] of [
      ['in', 'mm'],
      ['degC', 'degF'],
      ['in', 'cm'],
      ['ft', 'm'],
    ] as const) {
      const step = makeConversionStep(from, to)
      const most = Math.floor(2 ** 53 / step.denominator)
      for (let multiple = most - 10_000; multiple < most; multiple++) {
        const value = (multiple * step.denominator) / 2 ** 44
        const exact = exactResult(exactDouble(value), from, to)
        const result = convert({ value, unit: from }, to).value
        expect(isNearest(result, exact)).toBe(true)
        if (!isTie(result, exact)) continue
        ties += 1
        expect(findExactQuotient(value, step)).toBe(result)
      }
    }
    expect(ties).toBeGreaterThan(1000)
    expect(convertSpy).not.toHaveBeenCalled()
  })

  it('are never claimed without proof', () => {
    law(
      2000,
      fc.constantFrom(...everyPair),
      fc.double({ min: -1e9, max: 1e9, noNaN: true }),
      ([from, to], value) => {
        const quotient = findExactQuotient(value, makeConversionStep(from, to))
        if (quotient !== undefined) {
          expect(isNearest(quotient, exactResult(exactDouble(value), from, to))).toBe(true)
        }
      },
    )
  })
})
