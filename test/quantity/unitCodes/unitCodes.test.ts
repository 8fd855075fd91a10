import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { convertFigure } from '../../../src/quantity/convertFigure.js'
import { UNITS_BY_MEASURE } from '../../../src/quantity/unit.js'
import { type CodeSystem, UNIT_CODES, unitOfCode } from '../../../src/quantity/unitCodes/index.js'
import type { Unit } from '../../../src/v1/quantity.js'
import { PUBLISHED_CODES } from '../../published/unitCodes.js'
import { law } from '../../support/law.js'

const units: readonly Unit[] = Object.values(UNITS_BY_MEASURE).flat()

/** The exact size, rounded half up to as many decimals as the source prints. */
function roundedLike(unit: Unit, per: Unit, printed: string): string {
  const { digits } = convertFigure('1', unit, per)
  const places = printed.split('.')[1]?.length ?? 0
  const [whole = '', decimals = ''] = digits.split('.')
  const keptDigits = BigInt(whole + decimals.padEnd(places + 1, '0').slice(0, places + 1))
  const text = String((keptDigits + 5n) / 10n).padStart(places + 1, '0')
  return places === 0 ? text : `${text.slice(0, -places)}.${text.slice(-places)}`
}

describe('unit codes, against two sources each', () => {
  it.each(PUBLISHED_CODES)('$unit is $ucum, $rec20, $qudt', ({ unit, ucum, rec20, qudt }) => {
    const codes = UNIT_CODES[unit]
    expect(codes.ucum).toBe(ucum)
    expect(codes.rec20 ?? null).toBe(rec20)
    expect(codes.qudt ?? null).toBe(qudt)
  })

  it.each(PUBLISHED_CODES)('$unit has the size that the code lists print', (row) => {
    for (const system of ['rec20', 'qudt'] as const) {
      const printed = row[`${system}Size`]
      if (printed === null) continue
      const rounded = roundedLike(row.unit, row.per, printed)
      if (row.wrong?.[system] === undefined) expect(rounded).toBe(printed)
      else expect(rounded).not.toBe(printed)
    }
  })

  it('has a row, a name and a source for every unit, and no code that was not published', () => {
    const published = new Set<Unit>(PUBLISHED_CODES.map(({ unit }) => unit))
    for (const unit of units) {
      const { name, source, ucum, rec20, qudt } = UNIT_CODES[unit]
      expect(name.length).toBeGreaterThan(2)
      expect(source).toMatch(/^SI$|yard|gallon|gravity|scale|bar/)
      if (!published.has(unit)) expect([ucum, rec20, qudt]).toEqual([undefined, undefined, undefined])
    }
    expect(units.length - published.size).toBe(1)
  })
})

describe('the unit of a code', () => {
  it('comes back from every code, and never as a temperature difference', () => {
    for (const { unit, ucum, rec20, qudt } of PUBLISHED_CODES) {
      const expected = unit.endsWith('_diff') ? 'K' : unit
      expect(unitOfCode('UCUM', ucum)).toBe(expected)
      if (rec20 !== null) expect(unitOfCode('UN/ECE Rec 20', rec20)).toBe(expected)
      if (qudt !== null) expect(unitOfCode('QUDT', qudt)).toBe(expected)
    }
  })

  it('is null for energy, mass moments, another case and hostile text', () => {
    for (const code of [
      '85',
      'IA',
      '4Q',
      'M94',
      'nu',
      ' NU',
      '__proto__',
      'constructor',
      '',
      'x'.repeat(1e6),
    ]) {
      expect(unitOfCode('UN/ECE Rec 20', code)).toBe(null)
    }
    expect(unitOfCode('QUDT', 'FT-LB_F')).toBe(null)
  })

  it('has that code itself, whatever the text, and any other text is of no unit (law)', () => {
    const systems = { UCUM: 'ucum', 'UN/ECE Rec 20': 'rec20', QUDT: 'qudt' } as const
    const known = PUBLISHED_CODES.flatMap(({ ucum, rec20, qudt }) => [ucum, rec20 ?? '', qudt ?? ''])
    const text = fc.oneof(fc.constantFrom(...known), fc.string({ maxLength: 12 }))
    law(500, fc.constantFrom('UCUM', 'UN/ECE Rec 20', 'QUDT'), text, (system, code) => {
      const unit = unitOfCode(system, code)
      const codesOf = (candidate: Unit) => UNIT_CODES[candidate][systems[system]]
      if (unit === null) expect(units.filter((candidate) => codesOf(candidate) === code)).toEqual([])
      else expect(codesOf(unit)).toBe(code)
    })
  })

  it('is not looked for in an unknown system', () => {
    expect(() => unitOfCode('SI' as CodeSystem, 'm')).toThrow(TypeError)
    expect(() => unitOfCode('__proto__' as CodeSystem, 'm')).toThrow(/system must be/)
    expect(() => unitOfCode('UCUM', 5 as unknown as string)).toThrow(/code must be a string/)
  })
})
