import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { densityAt, volumeAt } from '../../src/oil/volumeAt.js'
import { D1250_FORMULA } from '../published/viscosityTemperature.js'
import { law } from '../support/law.js'

const kg = (value: number) => ({ value, unit: 'kg/m3' }) as const
const celsius = (value: number) => ({ value, unit: 'degC' }) as const
const density = (rho: number, degrees: number) => {
  const answer = densityAt(kg(rho), celsius(degrees))
  if (answer.verdict !== 'density') throw new Error(JSON.stringify(answer))
  return answer
}

describe('densityAt', () => {
  it.each(D1250_FORMULA)('%d kg/m³ at %d °C: factor %s, %s kg/m³', (rho, degrees, factor, expected) => {
    expect(density(rho, degrees).factor.toFixed(6)).toBe(factor)
    expect(density(rho, degrees).density.value.toFixed(3)).toBe(expected)
  })

  it('at 15 °C nothing changes, and 59 °F is 15 °C', () => {
    expect(density(890, 15)).toMatchObject({ factor: 1, density: kg(890) })
    const fahrenheit = densityAt(kg(890), { value: 59, unit: 'degF' })
    expect(fahrenheit.verdict === 'density' && fahrenheit.factor).toBe(1)
  })

  it('agrees with the 60 °F base of the same table to 0.001 % (K 0.34878 per °F, read second hand)', () => {
    // α60 = 0.34878/ρ60 per °F with ρ60 in g/cm³ of 1000 kg/m³; 60 °F is 15.556 °C
    for (const [rho, fahrenheit] of [[890, 140] as const, [850, 20] as const]) {
      const rho60 = density(rho, (60 - 32) / 1.8).density.value
      const expansion = (0.34878 / rho60) * (fahrenheit - 60)
      const expected = rho60 * Math.exp(-expansion * (1 + 0.8 * expansion))
      const calculated = density(rho, (fahrenheit - 32) / 1.8).density.value
      expect(Math.abs(calculated / expected - 1)).toBeLessThan(1e-5)
    }
  })

  it.each([
    [800, true],
    [799.999, false],
    [1164, true],
    [1164.001, false],
  ])('%d kg/m³ at 15 °C has an answer: %s', (rho, hasAnswer) => {
    expect(densityAt(kg(rho), celsius(20)).verdict === 'density').toBe(hasAnswer)
  })

  it.each([
    [-50, true],
    [-50.001, false],
    [150, true],
    [150.001, false],
  ])('%d °C has an answer: %s', (degrees, hasAnswer) => {
    expect(densityAt(kg(890), celsius(degrees)).verdict === 'density').toBe(hasAnswer)
  })

  it('falls as it warms (law)', () => {
    const rho = fc.double({ min: 800, max: 1164, noNaN: true })
    law(50, rho, fc.integer({ min: -50, max: 149 }), (value, degrees) => {
      expect(density(value, degrees + 1).factor).toBeLessThan(density(value, degrees).factor)
    })
  })

  it('throws for misuse', () => {
    expect(() => densityAt(kg(Number.NaN), celsius(20))).toThrow(RangeError)
    expect(() => densityAt(kg(-1), celsius(20))).toThrow(/density15.value/)
    // @ts-expect-error
    expect(() => densityAt({ value: 890, unit: 'g' }, celsius(20))).toThrow(TypeError)
    // @ts-expect-error
    expect(() => densityAt(kg(890), null)).toThrow(TypeError)
  })
})

describe('volumeAt', () => {
  const oil = { density15: kg(890) }
  const litre = { value: 1, unit: 'L' } as const
  it('1 L at 60 °C is 0.967975/0.996469 = 0.97140 L at 20 °C (factors of the table)', () => {
    const answer = volumeAt(oil, litre, celsius(60), celsius(20))
    expect(answer.verdict === 'volume' && answer.volume.value.toFixed(4)).toBe('0.9714')
  })

  it('there and back is the same (law)', () => {
    const degrees = fc.integer({ min: -50, max: 150 })
    law(50, degrees, degrees, fc.double({ min: 0, max: 50, noNaN: true }), (from, to, value) => {
      const volumeThere = volumeAt(oil, { value, unit: 'qt_us' }, celsius(from), celsius(to))
      if (volumeThere.verdict !== 'volume') return expect.unreachable()
      const back = volumeAt(oil, volumeThere.volume, celsius(to), celsius(from))
      expect(back.verdict === 'volume' && Math.abs(back.volume.value - value)).toBeLessThan(
        1e-12 * (1 + value),
      )
    })
  })

  it('says what is missing or outside', () => {
    expect(volumeAt({}, litre, celsius(20), celsius(60))).toMatchObject({
      reasons: [{ code: 'oil/density-missing' }],
    })
    const coldVolume = volumeAt(oil, litre, celsius(-60), celsius(20))
    expect(coldVolume).toMatchObject({
      verdict: 'cannot tell',
      reasons: [{ code: 'oil/temperature-outside-range' }],
    })
    expect(volumeAt(oil, litre, celsius(20), celsius(160)).verdict).toBe('cannot tell')
    const lightVolume = volumeAt({ density15: kg(700) }, litre, celsius(20), celsius(60))
    expect(lightVolume).toMatchObject({ reasons: [{ code: 'oil/density-outside-range' }] })
  })

  it('throws for misuse', () => {
    expect(() => volumeAt(oil, { value: -1, unit: 'L' }, celsius(20), celsius(60))).toThrow(/0 or more/)
    // @ts-expect-error
    expect(() => volumeAt(oil, { value: 1, unit: 'kg' }, celsius(20), celsius(60))).toThrow(TypeError)
    // @ts-expect-error
    expect(() => volumeAt(undefined, litre, celsius(20), celsius(60))).toThrow(TypeError)
  })
})
