import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  chooseSide,
  exactIn,
  exactOf,
  type PrintedBand,
  readBand,
  type Unit,
} from '../../src/quantity/index.js'
import { law } from '../support/law.js'
import { anyFigure } from './support/anyBand.js'

/** Fractions need not be reduced: equal values have equal cross products. */
function isSame(first: ReturnType<typeof exactOf>, second: ReturnType<typeof exactOf>): boolean {
  return first.n * second.d === second.n * first.d
}

describe('readBand', () => {
  it.each<[PrintedBand, Unit, number | undefined, string, (string | undefined)[]]>([
    [{ kind: 'limits', min: '34', max: '44', unit: 'N.m' }, 'N.m', undefined, 'limits', ['34', '39', '44']],
    [
      { kind: 'limits', max: '44', unit: 'N.m' },
      'cN.m',
      undefined,
      'one limit',
      [undefined, undefined, '4400'],
    ],
    [
      { kind: 'limits', min: '1.001', unit: 'L' },
      'mL',
      undefined,
      'one limit',
      ['1001', undefined, undefined],
    ],
    [
      { kind: 'nominal', value: '40', unit: 'N.m' },
      'N.m',
      undefined,
      'nominal',
      [undefined, '40', undefined],
    ],
    [{ kind: 'nominal', value: '40', unit: 'N.m' }, 'N.m', 0.1, 'caller', ['39.96', '40', '40.04']],
    [
      { kind: 'nominal with tolerance', value: '20', minus: '2', plus: '3', unit: 'N.m' },
      'cN.m',
      5,
      'tolerance',
      ['1800', '2000', '2300'],
    ],
    // a tolerance of a temperature is a difference: 40 ± 5 °C is 104 ± 9 °F
    [
      { kind: 'nominal with tolerance', value: '40', minus: '5', plus: '5', unit: 'degC' },
      'degF',
      undefined,
      'tolerance',
      ['95', '104', '113'],
    ],
  ])('%j in %s with %s is a band of %s', (printed, unit, tolerance, basis, [low, aim, high]) => {
    const band = readBand(printed, unit, tolerance)
    expect(band.basis).toBe(basis)
    for (const [foundNumber, text] of [
      [band.low, low],
      [band.aim, aim],
      [band.high, high],
    ] as const) {
      if (text === undefined || foundNumber === undefined) expect(foundNumber).toBe(text)
      else expect(isSame(foundNumber, exactOf(text))).toBe(true)
    }
  })

  it('refuses limits without a limit', () => {
    expect(() => readBand({ kind: 'limits', unit: 'L' }, 'mL')).toThrow(
      'must state at least one of min and max',
    )
  })

  it('holds its own ends and aim, and nothing a digit beyond', () => {
    law(300, anyFigure(6, 3), anyFigure(3, 3), (value, part) => {
      if (value.startsWith('-') || part.startsWith('-')) return
      const band = readBand(
        { kind: 'nominal with tolerance', value, minus: part, plus: part, unit: 'L' },
        'mL',
      )
      for (const at of [band.low, band.aim, band.high]) expect(at && chooseSide(at, band)).toBe(0)
      const moveOutward = (end: { n: bigint; d: bigint }, by: bigint) => ({
        n: end.n * 1000n + by * end.d,
        d: end.d * 1000n,
      })
      expect(band.low && chooseSide(moveOutward(band.low, -1n), band)).toBe(-1)
      expect(band.high && chooseSide(moveOutward(band.high, 1n), band)).toBe(1)
    })
  })
})

describe('exactIn', () => {
  it('reads figures and JSON numbers of up to three decimals alike, in every unit of volume, torque and length', () => {
    const decimals = fc.tuple(fc.integer({ min: 0, max: 999_999 }), fc.integer({ min: 0, max: 3 }))
    const units = fc.constantFrom<[Unit, Unit, bigint]>(
      ['L', 'mL', 1000n],
      ['cm3', 'mL', 1n],
      ['N.m', 'cN.m', 100n],
      ['kN.m', 'N.m', 1000n],
      ['m', 'mm', 1000n],
      ['cm', 'mm', 10n],
    )
    law(1000, decimals, units, ([count, places], [from, to, factor]) => {
      const text = (count / 10 ** places).toFixed(places)
      const wholeFraction = { n: BigInt(count) * factor, d: 10n ** BigInt(places) }
      expect(isSame(exactIn({ value: text, unit: from }, to), wholeFraction)).toBe(true)
      expect(isSame(exactIn({ value: Number(text), unit: from }, to), wholeFraction)).toBe(true)
    })
  })

  it('reads every number of a three-decimal litre as its millilitre', () => {
    for (let count = 1; count < 20_000; count++) {
      const { n, d } = exactIn({ value: count / 1000, unit: 'L' }, 'mL')
      if (n !== BigInt(count) * d) throw new Error(`${count / 1000} L is ${n}/${d} mL`)
    }
    expect(isSame(exactOf(1e-7), { n: 1n, d: 10n ** 7n })).toBe(true)
    expect(isSame(exactOf(2.5e21), { n: 25n * 10n ** 20n, d: 1n })).toBe(true)
  })
})
