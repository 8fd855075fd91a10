import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { calculateViscosityIndex } from '../../src/oil/calculateViscosityIndex.js'
import { fitViscosityLine } from '../../src/oil/fitViscosityLine.js'
import { viscosityAt } from '../../src/v1/oil.js'
import { VI_BY_HAND, VI_EXAMPLES, VI_QUADRATICS, VI_ROWS } from '../published/viscosityIndex.js'
import { D341_GEAR_OIL, D341_KELVIN, D341_SPREADSHEET } from '../published/viscosityTemperature.js'
import { law } from '../support/law.js'

const mm2 = (value: number) => ({ value, unit: 'mm2/s' }) as const
const celsius = (value: number) => ({ value, unit: 'degC' }) as const
const oil = (kv40: number, kv100: number) => ({ kv40: mm2(kv40), kv100: mm2(kv100) })
const at = (kv40: number, kv100: number, degrees: number): number => {
  const answer = viscosityAt(oil(kv40, kv100), celsius(degrees))
  if (answer.verdict !== 'viscosity') throw new Error(JSON.stringify(answer))
  return answer.viscosity.value
}
const decimals = (digits: string) => digits.split('.')[1]?.length ?? 0
const point = (degrees: number, viscosity: number) => ({
  temperature: celsius(degrees),
  viscosity: mm2(viscosity),
})

describe('viscosity by D341', () => {
  it('the published spreadsheet, T = t + 273', () => {
    const { kv40, kv100, zeroCelsius, intercept, slope } = D341_SPREADSHEET
    const line = fitViscosityLine(point(40, kv40), point(100, kv100), zeroCelsius)
    expect(line.intercept.toFixed(4)).toBe(intercept)
    expect(line.slope.toFixed(4)).toBe(slope)
    // ν(80 °C) = 10^10^(A − B·log10 353) − 0.7
    const z = 10 ** (10 ** (line.intercept - line.slope * Math.log10(353)))
    expect((z - 0.7).toFixed(1)).toBe(D341_SPREADSHEET.at80)
    expect(at(kv40, kv100, 80).toFixed(1)).toBe(D341_SPREADSHEET.at80)
  })

  it('the same with T = t + 273.15', () => {
    const { kv40, kv100, intercept, slope, at80 } = D341_KELVIN
    const line = fitViscosityLine(point(40, kv40), point(100, kv100), 273.15)
    expect(line.intercept.toFixed(6)).toBe(intercept)
    expect(line.slope.toFixed(6)).toBe(slope)
    expect(at(kv40, kv100, 80).toFixed(6)).toBe(at80)
  })

  it.each(D341_GEAR_OIL.points)('135 and 14.5 mm²/s: at %d °C it is %s', (degrees, expected) => {
    expect(at(135, 14.5, degrees).toFixed(decimals(expected))).toBe(expected)
  })

  const oils = fc
    .tuple(fc.double({ min: 2.1, max: 60, noNaN: true }), fc.double({ min: 1.5, max: 20, noNaN: true }))
    .map(([kv100, ratio]) => [kv100 * ratio, kv100] as const)

  it('gives back its two measurements (law)', () => {
    law(50, oils, ([kv40, kv100]) => {
      expect(Math.abs(at(kv40, kv100, 40) / kv40 - 1)).toBeLessThan(1e-9)
      expect(Math.abs(at(kv40, kv100, 100) / kv100 - 1)).toBeLessThan(1e-9)
    })
  })

  it('falls as it warms, wherever there is an answer (law)', () => {
    const degrees = fc.integer({ min: -30, max: 229 })
    law(50, oils, degrees, ([kv40, kv100], cold) => {
      const viscosities = [cold, cold + 1].map((value) => viscosityAt(oil(kv40, kv100), celsius(value)))
      const [first, second] = viscosities.map((item) =>
        item.verdict === 'viscosity' ? item.viscosity.value : undefined,
      )
      if (first !== undefined && second !== undefined) expect(second).toBeLessThan(first)
    })
  })

  it('equals bisection of the whole equation, also where it is thin (second implementation)', () => {
    const z = (nu: number) => nu + 0.7 + Math.exp(-1.47 - 1.84 * nu - 0.51 * nu * nu)
    const doubleLog = (nu: number) => Math.log10(Math.log10(z(nu)))
    const logKelvin = (degrees: number) => Math.log10(degrees + 273.15)
    law(50, oils, fc.integer({ min: -20, max: 200 }), ([kv40, kv100], degrees) => {
      const answer = viscosityAt(oil(kv40, kv100), celsius(degrees))
      if (answer.verdict !== 'viscosity') return
      const slope = (doubleLog(kv40) - doubleLog(kv100)) / (logKelvin(100) - logKelvin(40))
      const target = doubleLog(kv40) - slope * (logKelvin(degrees) - logKelvin(40))
      let [low, high] = [0.2, 3e7]
      for (let step = 0; step < 200; step += 1) {
        const middle = Math.sqrt(low * high)
        if (doubleLog(middle) < target) low = middle
        else high = middle
      }
      expect(Math.abs(answer.viscosity.value / low - 1)).toBeLessThan(1e-7)
    })
  })

  it('takes Fahrenheit and kelvin as the same day', () => {
    const expectedViscosity = at(135, 14.5, 20)
    for (const temperature of [{ value: 68, unit: 'degF' } as const, { value: 293.15, unit: 'K' } as const]) {
      const answer = viscosityAt(oil(135, 14.5), temperature)
      expect(
        answer.verdict === 'viscosity' && Math.abs(answer.viscosity.value / expectedViscosity - 1),
      ).toBeLessThan(1e-12)
    }
  })

  const code = (answer: ReturnType<typeof viscosityAt>) => [
    answer.verdict,
    ...answer.reasons.map((reason) => reason.code),
  ]
  it.each([
    [-30, 'viscosity'],
    [-30.000001, 'cannot tell'],
    [-29.99, 'viscosity'],
    [230, 'viscosity'],
    [230.000001, 'cannot tell'],
  ])('range: %d °C gives %s', (degrees, kind) => {
    expect(viscosityAt(oil(320, 25), celsius(degrees)).verdict).toBe(kind)
  })

  it('no number below the pour point; at it there is one', () => {
    const pouredOil = { ...oil(135, 14.5), pourPoint: celsius(-21) }
    expect(code(viscosityAt(pouredOil, celsius(-21)))).toEqual(['viscosity', 'oil/viscosity-by-d341'])
    expect(code(viscosityAt(pouredOil, celsius(-21.01)))).toEqual(['cannot tell', 'oil/below-pour-point'])
    expect(code(viscosityAt(oil(135, 14.5), celsius(-21)))).toEqual([
      'viscosity',
      'oil/viscosity-by-d341',
      'oil/pour-point-not-stated',
    ])
  })

  it('names what is missing or contradictory', () => {
    expect(viscosityAt({}, celsius(20)).reasons[0]?.params).toEqual({ missing: ['kv40', 'kv100'] })
    expect(viscosityAt({ kv40: mm2(100) }, celsius(20)).reasons[0]?.params).toEqual({ missing: ['kv100'] })
    expect(viscosityAt({ kv100: mm2(10) }, celsius(20)).reasons[0]?.params).toEqual({ missing: ['kv40'] })
    expect(code(viscosityAt(oil(10, 10), celsius(20)))).toEqual(['cannot tell', 'oil/viscosities-reversed'])
    expect(code(viscosityAt(oil(10, 100), celsius(20)))).toEqual(['cannot tell', 'oil/viscosities-reversed'])
    expect(code(viscosityAt(oil(3e7, 10), celsius(20)))).toEqual([
      'cannot tell',
      'oil/viscosity-outside-range',
    ])
    expect(code(viscosityAt(oil(3, 0.2), celsius(20)))).toEqual([
      'cannot tell',
      'oil/viscosity-outside-range',
    ])
    expect(code(viscosityAt(oil(1e6, 5), celsius(-30)))).toEqual([
      'cannot tell',
      'oil/viscosity-outside-range',
    ])
    expect(code(viscosityAt(oil(3, 0.3), celsius(200)))).toEqual([
      'cannot tell',
      'oil/viscosity-outside-range',
    ])
  })

  it('throws for misuse', () => {
    expect(() => viscosityAt(oil(Number.NaN, 10), celsius(20))).toThrow(/oil.kv40.value/)
    expect(() => viscosityAt(oil(100, -1), celsius(20))).toThrow(
      /oil.kv100.value must be a number, 0 or more/,
    )
    expect(() => viscosityAt(oil(100, 10), celsius(Number.NaN))).toThrow(RangeError)
    // @ts-expect-error
    expect(() => viscosityAt(oil(100, 10), 20)).toThrow(TypeError)
    // @ts-expect-error
    expect(() => viscosityAt(undefined, celsius(20))).toThrow(TypeError)
    // @ts-expect-error
    expect(() => fitViscosityLine(point(40, 32), point(100, 5.4), 273.2)).toThrow(/zeroCelsius/)
    expect(() => fitViscosityLine(point(100, 5.4), point(40, 32), 273)).toThrow(/warmer and thinner/)
    expect(() => fitViscosityLine(point(40, 32), point(100, 0.2), 273)).toThrow(/0.21 or more/)
    const kelvin = { temperature: { value: 313, unit: 'K' }, viscosity: mm2(32) } as const
    // @ts-expect-error
    expect(() => fitViscosityLine(kelvin, point(100, 5), 273)).toThrow(/degC/)
  })
})

describe('viscosity index by D2270', () => {
  const index = (kv40: number, kv100: number) => {
    const answer = calculateViscosityIndex(mm2(kv40), mm2(kv100))
    if (answer.verdict !== 'viscosity index') throw new Error(JSON.stringify(answer))
    return answer
  }

  it.each([...VI_EXAMPLES, ...VI_BY_HAND])(
    '$kv40 and $kv100: $reported ($source)',
    ({ kv40, kv100, reported, unrounded }) => {
      const answer = index(kv40, kv100)
      expect(answer.reported).toBe(reported)
      expect(answer.value.toFixed(2)).toBe(unrounded)
      expect(answer.procedure).toBe(answer.value < 100 ? 'A' : 'B')
    },
  )

  it.each(VI_ROWS)('at %d mm²/s the index is 0 for L = %d and 100 for H = %d', (y, l, h) => {
    expect(index(l, y).value).toBeCloseTo(0, 9)
    expect(index(h, y).value).toBeCloseTo(100, 9)
  })

  it('between rows L and H are linear: the practice’s own 8.86 gives 119.94 and 69.48', () => {
    expect(index(119.94, 8.86).value).toBeCloseTo(0, 9)
    expect(index(69.48, 8.86).value).toBeCloseTo(100, 9)
  })

  it('stays within 1 of the piecewise quadratics over 2 to 70 mm²/s (second implementation)', () => {
    law(
      100,
      fc.double({ min: 2, max: 70, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (y, share) => {
        const [, a, b, c, d, e, f] = VI_QUADRATICS.find(([top]) => y <= top) ?? [0, 0, 0, 0, 0, 0, 0]
        const [l, h] = [a * y * y + b * y + c, d * y * y + e * y + f]
        const indexLimit = h * (0.7 + 0.3 * share) + (l - h) * share * 0.9
        const n = Math.log(h / indexLimit) / Math.log(y)
        const expected = indexLimit > h ? (100 * (l - indexLimit)) / (l - h) : (10 ** n - 1) / 0.00715 + 100
        expect(Math.abs(index(indexLimit, y).value - expected)).toBeLessThan(1)
      },
    )
  })

  it('above 70 mm²/s the printed equations hold and join the table', () => {
    // L = 0.8353·100² + 14.67·100 − 216 = 9604, H = 0.1684·100² + 11.85·100 − 97 = 2772
    expect(index(9604, 100).value).toBeCloseTo(0, 9)
    expect(index(2772, 100).value).toBeCloseTo(100, 9)
    const [below, above] = [index(3000, 70).value, index(3000, 70.0001).value]
    expect(Math.abs(below - above)).toBeLessThan(0.1)
  })

  it('falls as the oil is thicker at 40 °C, over both procedures (law)', () => {
    const y = fc.double({ min: 2, max: 120, noNaN: true })
    law(50, y, fc.double({ min: 1.2, max: 20, noNaN: true }), (kv100, ratio) => {
      expect(index(kv100 * ratio * 1.01, kv100).value).toBeLessThan(index(kv100 * ratio, kv100).value)
    })
  })

  it('is not defined below 2 mm²/s; at 2 it is', () => {
    expect(index(7.994, 2).value).toBeCloseTo(0, 9)
    expect(calculateViscosityIndex(mm2(8), mm2(1.999999))).toMatchObject({
      verdict: 'cannot tell',
      reasons: [{ code: 'oil/viscosity-index-undefined' }],
    })
    expect(calculateViscosityIndex(mm2(5), mm2(5))).toMatchObject({
      reasons: [{ code: 'oil/viscosities-reversed' }],
    })
  })

  it('reports halves to even', () => {
    // row 70 mm²/s: L − H = 4905 − 1558 = 3347, so U = 4905 − 3347/8 is exactly 12.5 and U = 4905 − 3·3347/8 exactly 37.5
    expect(index(4486.625, 70)).toMatchObject({ procedure: 'A', value: 12.5, reported: 12 })
    expect(index(3649.875, 70)).toMatchObject({ procedure: 'A', value: 37.5, reported: 38 })
  })

  it('throws for misuse', () => {
    expect(() => calculateViscosityIndex(mm2(Number.NaN), mm2(5))).toThrow(RangeError)
    expect(() => calculateViscosityIndex(mm2(30), mm2(-5))).toThrow(RangeError)
    // @ts-expect-error
    expect(() => calculateViscosityIndex(30, mm2(5))).toThrow(TypeError)
  })
})
