import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { judgeAmbientBand } from '../../src/oil/judgeAmbientBand.js'
import { judgeOilChoices } from '../../src/oil/judgeOilChoices.js'
import type { GradeOil } from '../../src/spec/leaf.js'
import type { StatedValue } from '../../src/spec/specValue.js'
import { law } from '../support/law.js'

type Band = StatedValue<'degC' | 'degF' | 'K'>
const celsius = (value: number) => ({ value, unit: 'degC' }) as const

describe('judgeAmbientBand', () => {
  const band: Band = { kind: 'limits', min: '-10', max: '30', unit: 'degC' }
  it.each([
    [-10.000001, 'no'],
    [-10, 'yes'],
    [-9.999999, 'yes'],
    [29.999999, 'yes'],
    [30, 'yes'],
    [30.000001, 'no'],
  ])('−10 to 30 °C at %d: %s', (value, holds) => {
    expect(judgeAmbientBand(band, celsius(value)).verdict).toBe(holds)
  })

  it('compares across units exactly: 86 °F is 30 °C', () => {
    expect(judgeAmbientBand(band, { value: 86, unit: 'degF' }).verdict).toBe('yes')
    expect(judgeAmbientBand(band, { value: 86.000001, unit: 'degF' }).verdict).toBe('no')
    expect(judgeAmbientBand({ kind: 'limits', max: '0.1', unit: 'degC' }, celsius(0.1)).verdict).toBe('yes')
    expect(
      judgeAmbientBand({ kind: 'limits', max: '0.1', unit: 'degC' }, { value: 1e-7, unit: 'degC' }).verdict,
    ).toBe('yes')
  })

  it('spans a nominal with tolerance, with the digits lined up', () => {
    // 5 − 7.5 = −2.5 and 5 + 10.25 = 15.25
    const around: Band = {
      kind: 'nominal with tolerance',
      value: '5',
      minus: '7.5',
      plus: '10.25',
      unit: 'degC',
    }
    expect(judgeAmbientBand(around, celsius(-2.5)).verdict).toBe('yes')
    expect(judgeAmbientBand(around, celsius(-2.51)).verdict).toBe('no')
    expect(judgeAmbientBand(around, celsius(15.25)).verdict).toBe('yes')
    expect(judgeAmbientBand(around, celsius(15.26)).verdict).toBe('no')
    expect(judgeAmbientBand(around, celsius(20)).reasons[0]?.params).toMatchObject({
      min: { value: '-2.5', unit: 'degC' },
      max: { value: '15.25', unit: 'degC' },
    })
    const toleranceBand: Band = {
      kind: 'nominal with tolerance',
      value: '-20',
      minus: '5',
      plus: '5',
      unit: 'degC',
    }
    expect(judgeAmbientBand(toleranceBand, celsius(-25)).verdict).toBe('yes')
    expect(judgeAmbientBand(toleranceBand, celsius(-15)).verdict).toBe('yes')
    expect(judgeAmbientBand(toleranceBand, celsius(-14.9)).verdict).toBe('no')
  })

  it('cannot tell without an ambient, and asks where the sheet prints no band', () => {
    expect(judgeAmbientBand(band, undefined)).toMatchObject({
      verdict: 'cannot tell',
      reasons: [{ code: 'oil/ambient-not-given' }],
    })
    const nominalBand: Band = { kind: 'nominal', value: '20', unit: 'degC' }
    expect(judgeAmbientBand(nominalBand, celsius(20))).toMatchObject({
      verdict: 'ask',
      reasons: [{ code: 'oil/ambient-not-a-range' }],
    })
    expect(judgeAmbientBand(undefined, undefined)).toMatchObject({ verdict: 'yes' })
  })

  it('throws for an invalid temperature', () => {
    // @ts-expect-error
    expect(() => judgeAmbientBand(band, { value: 1, unit: 'mm' })).toThrow(/ambient.unit/)
    // @ts-expect-error
    expect(() => judgeAmbientBand(band, 20)).toThrow(TypeError)
    expect(() => judgeAmbientBand(band, celsius(Number.POSITIVE_INFINITY))).toThrow(RangeError)
  })

  it('holds on one unbroken stretch of temperatures (law)', () => {
    const degrees = fc.integer({ min: -60, max: 60 })
    law(50, degrees, degrees, degrees, degrees, degrees, (candidate, other, first, second, third) => {
      const [min, max] = [Math.min(candidate, other), Math.max(candidate, other)]
      const limits: Band = { kind: 'limits', min: String(min), max: String(max), unit: 'degC' }
      const [low = 0, middle = 0, high = 0] = [first, second, third].sort((left, right) => left - right)
      const ask = (value: number) => judgeAmbientBand(limits, celsius(value)).verdict
      if (ask(low) === 'yes' && ask(high) === 'yes') expect(ask(middle)).toBe('yes')
      expect(ask(min)).toBe('yes')
      expect(ask(max)).toBe('yes')
    })
  })
})

describe('judgeOilChoices', () => {
  const oil = (grade: string, ambient?: GradeOil['ambient']): GradeOil => ({
    kind: 'grade',
    grade,
    system: 'SAE J306',
    limitedSlip: 'either',
    ...(ambient === undefined ? {} : { ambient }),
  })
  const choices = [
    oil('90', { kind: 'limits', min: '-10', unit: 'degC' }),
    oil('80W-90', { kind: 'limits', min: '-26', max: '30', unit: 'degC' }),
  ]
  const holds = (at?: number) => {
    const verdict = judgeOilChoices({ kind: 'oils', choices }, at === undefined ? undefined : celsius(at))
    return [verdict.verdict, ...verdict.choices.map((choice) => choice.verdict)]
  }

  it('judges each oil in the sheet’s order', () => {
    expect(holds(20)).toEqual(['yes', 'yes', 'yes'])
    expect(holds(35)).toEqual(['yes', 'yes', 'no'])
    expect(holds(-20)).toEqual(['yes', 'no', 'yes'])
    expect(holds(-30)).toEqual(['no', 'no', 'no'])
    expect(holds()).toEqual(['cannot tell', 'cannot tell', 'cannot tell'])
    expect(judgeOilChoices({ kind: 'oils', choices }).verdict).toBe('cannot tell')
  })

  it('an oil without a band is right on any day, also on an unnamed one', () => {
    expect(judgeOilChoices({ kind: 'oils', choices: [oil('90')] }).verdict).toBe('yes')
  })

  it('reports that no oil suits the temperature, and that none is stated', () => {
    const none = judgeOilChoices({ kind: 'oils', choices }, celsius(-30))
    expect(none.reasons).toEqual([{ code: 'oil/no-oil-for-ambient', params: { ambient: celsius(-30) } }])
    expect(judgeOilChoices({ kind: 'not stated' }, celsius(20))).toEqual({
      verdict: 'ask',
      choices: [],
      reasons: [{ code: 'oil/oils-not-stated', params: {} }],
    })
    // @ts-expect-error
    expect(() => judgeOilChoices(null)).toThrow(TypeError)
  })
})
