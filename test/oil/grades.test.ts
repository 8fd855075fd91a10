import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findGradeBand, isWithinGrade } from '../../src/oil/findGradeBand.js'
import { GRADE_EDITIONS } from '../../src/oil/gradeTables.js'
import { parseGrade } from '../../src/oil/parseGrade.js'
import type { GradeSystem } from '../../src/v1/oil.js'
import { ISO_3448, J300, J306_2005, J306_2019, J306_BEFORE_2005 } from '../published/oilGrades.js'
import { law } from '../support/law.js'

const mm2 = (value: number) => ({ value, unit: 'mm2/s' }) as const
const codes = (result: { reasons: readonly { code: string }[] }) => result.reasons.map(({ code }) => code)

describe('findGradeBand against the published tables', () => {
  const j306 = [
    ...J306_2019.map((row) => ['2019', ...row] as const),
    ...J306_2005.map((row) => ['2005', ...row] as const),
    ...J306_BEFORE_2005.map((row) => ['before 2005', ...row] as const),
  ]
  it.each(j306)('SAE J306 %s, grade %s', (edition, grade, min, below, cold) => {
    const band = findGradeBand({ system: 'SAE J306', grade, edition })
    expect(band).toEqual({
      kind: 'band',
      system: 'SAE J306',
      grade,
      edition,
      at: { value: 100, unit: 'degC' },
      min: mm2(min),
      ...(below === undefined ? {} : { below: mm2(below) }),
      ...(cold === undefined
        ? {}
        : {
            cold: {
              temperature: { value: cold, unit: 'degC' },
              viscosity: { value: 150_000, unit: 'mPa.s' },
            },
          }),
      basis: 'secondary source',
    })
  })

  it.each(J300)('SAE J300, grade %s', (grade, min, below) => {
    const band = findGradeBand({ system: 'SAE J300', grade, edition: 'since 2013' })
    expect(band).toMatchObject({ kind: 'band', min: mm2(min), at: { value: 100 }, basis: 'secondary source' })
    expect(band.kind === 'band' ? band.below : 0).toEqual(below === undefined ? undefined : mm2(below))
  })

  it('SAE J300 before 2013: the 20 began at 5.6, and there was no 16', () => {
    expect(findGradeBand({ system: 'SAE J300', grade: '20', edition: 'before 2013' })).toMatchObject({
      min: mm2(5.6),
    })
    const none = findGradeBand({ system: 'SAE J300', grade: '16', edition: 'before 2013' })
    expect(none.kind === 'cannot tell' && codes(none)).toEqual(['oil/grade-not-in-edition'])
  })

  it.each(ISO_3448)('ISO VG %s: %s to %s at 40 °C, both belong', (grade, min, max) => {
    const band = findGradeBand({ system: 'ISO VG', grade: `VG ${grade}`, edition: '1992' })
    expect(band).toMatchObject({ min: mm2(Number(min)), max: mm2(Number(max)), at: { value: 40 } })
    if (band.kind !== 'band') return expect.unreachable()
    expect(band.below).toBeUndefined()
    expect(isWithinGrade(mm2(Number(max)), band)).toBe(true)
    expect(isWithinGrade(mm2(Number(max) * 1.000001), band)).toBe(false)
  })

  it('rows that were not read say so', () => {
    expect(findGradeBand({ system: 'SAE J300', grade: '12', edition: 'since 2013' })).toMatchObject({
      basis: 'from memory',
    })
    expect(findGradeBand({ system: 'ISO VG', grade: '2200', edition: '1992' })).toMatchObject({
      basis: 'from memory',
    })
    expect(findGradeBand({ system: 'SAE J306', grade: '80W-90', edition: 'before 2005' })).toMatchObject({
      basis: 'from memory',
    })
  })

  it('a multigrade keeps the hot band and the W minimum, and the W grade’s cold limit', () => {
    // 80W-90, 2019: 90 requires 13.5, 80W only 8.5
    expect(findGradeBand({ system: 'SAE J306', grade: '80W-90', edition: '2019' })).toMatchObject({
      min: mm2(13.5),
      below: mm2(18.5),
      cold: { temperature: { value: -26, unit: 'degC' } },
    })
    // 85W alone has no upper limit
    expect(findGradeBand({ system: 'SAE J306', grade: '85W', edition: '2019' })).not.toHaveProperty('below')
  })

  it('an 80W-80 of 2019 asks 8.5 from both; an 85W-80 cannot be: 11.0 is where 80 ends', () => {
    expect(findGradeBand({ system: 'SAE J306', grade: '80W-80', edition: '2019' })).toMatchObject({
      min: mm2(8.5),
    })
    const none = findGradeBand({ system: 'SAE J306', grade: '85W-80', edition: '2019' })
    expect(none.kind === 'cannot tell' && codes(none)).toEqual(['oil/grade-impossible'])
  })

  it('an unknown grade lists the known ones; an unknown edition or system throws', () => {
    const none = findGradeBand({ system: 'SAE J306', grade: '95', edition: '2019' })
    expect(none).toMatchObject({
      kind: 'cannot tell',
      reasons: [{ params: { grade: '95', system: 'SAE J306' } }],
    })
    const otherGrade = { system: 'SAE J306', grade: '90', edition: '1992' } as const
    expect(() => findGradeBand(otherGrade)).toThrow(/edition must be one of 2019, 2005, before 2005/)
    // @ts-expect-error not a system
    expect(() => findGradeBand({ system: 'toString', grade: '90', edition: '2019' })).toThrow(RangeError)
    // @ts-expect-error a grade that is not a string
    expect(() => findGradeBand({ system: 'SAE J306', grade: 90, edition: '2019' })).toThrow(TypeError)
  })
})

describe('bands of one edition', () => {
  it('the hot bands of J306 join without gap or overlap', () => {
    for (const rows of [J306_2019, J306_2005, J306_BEFORE_2005]) {
      const hotRanges = rows.filter(([grade]) => !grade.endsWith('W')).map(([, min, below]) => [min, below])
      for (const [place, [, below]] of hotRanges.slice(0, -1).entries())
        expect(hotRanges[place + 1]?.[0]).toBe(below)
    }
  })

  it('exactly one hot grade of J306 holds any viscosity from 7 mm²/s up (law)', () => {
    const viscosity = fc.double({ min: 7, max: 1000, noNaN: true })
    law(50, viscosity, fc.constantFrom('2019', '2005'), (value, edition) => {
      const rows = edition === '2019' ? J306_2019 : J306_2005
      const fittingRows = rows.filter(([grade]) => {
        const band = findGradeBand({ system: 'SAE J306', grade, edition })
        return !grade.endsWith('W') && band.kind === 'band' && isWithinGrade(mm2(value), band)
      })
      expect(fittingRows).toHaveLength(1)
    })
  })
})

describe('isWithinGrade', () => {
  const band = findGradeBand({ system: 'SAE J306', grade: '90', edition: '2019' })
  it.each([
    [13.499999, false],
    [13.5, true],
    [13.500001, true],
    [18.499999, true],
    [18.5, false],
    [18.500001, false],
  ])('90 and %d mm²/s at 100 °C: %s', (value, isInRange) => {
    expect(band.kind === 'band' && isWithinGrade(mm2(value), band)).toBe(isInRange)
  })

  it('refuses what is no viscosity', () => {
    if (band.kind !== 'band') return expect.unreachable()
    expect(() => isWithinGrade(mm2(Number.NaN), band)).toThrow(RangeError)
    expect(() => isWithinGrade(mm2(0), band)).toThrow(/viscosity.value must be a number, above 0/)
    // @ts-expect-error wrong unit
    expect(() => isWithinGrade({ value: 14, unit: 'mPa.s' }, band)).toThrow(
      /viscosity.unit must be a unit of kinematicViscosity/,
    )
    // @ts-expect-error a string instead of a number
    expect(() => isWithinGrade({ value: '14', unit: 'mm2/s' }, band)).toThrow(TypeError)
    // @ts-expect-error no band
    expect(() => isWithinGrade(mm2(14), undefined)).toThrow(TypeError)
  })
})

describe('parseGrade', () => {
  it.each([
    ['80W-90', 'SAE J306', '80W-90'],
    ['SAE 80W90', 'SAE J306', '80W-90'],
    ['sae80w/90', 'SAE J306', '80W-90'],
    ['75W–140', 'SAE J306', '75W-140'],
    [' 90 ', 'SAE J306', '90'],
    ['80W', 'SAE J306', '80W'],
    ['10W-30', 'SAE J300', '10W-30'],
    ['ISO VG 220', 'ISO VG', 'VG 220'],
    ['vg220', 'ISO VG', 'VG 220'],
    ['220', 'ISO VG', 'VG 220'],
  ] as const)('%j in %s is %s', (text, system, name) => {
    expect(parseGrade(text, system)).toMatchObject({ ok: true, value: { name, system } })
  })

  it.each([
    ['80W-90', 'SAE J300'],
    ['10W-30', 'SAE J306'],
    ['', 'SAE J306'],
    ['SAE', 'SAE J306'],
    ['90-80W', 'SAE J306'],
    ['80W-', 'SAE J306'],
    ['90W', 'SAE J306'],
    ['VG 221', 'ISO VG'],
    ['__proto__', 'SAE J306'],
  ] as const)('%j in %s is refused', (text, system) => {
    const read = parseGrade(text, system)
    expect(read.ok).toBe(false)
    expect(read.findings).toHaveLength(1)
    expect(read.findings[0]).toMatchObject({ code: 'oil/grade-not-known', severity: 'error', path: '' })
    expect(String(read.findings[0]?.params.grade).length).toBeLessThanOrEqual(40)
  })

  it('a text of a megabyte is refused, and the finding stays short', () => {
    const read = parseGrade('80W-90'.repeat(170_000), 'SAE J306')
    expect(read.ok).toBe(false)
    expect(String(read.findings[0]?.params.grade)).toHaveLength(40)
  })

  it('its own spelling reads the same again, for every grade of every system (law)', () => {
    const systems = Object.keys(GRADE_EDITIONS) as GradeSystem[]
    let namedCount = 0
    for (const system of systems) {
      const unknown = parseGrade('?', system)
      const known = (unknown.findings[0]?.params.known ?? []) as string[]
      for (const text of known) {
        const read = parseGrade(text, system)
        if (!read.ok) return expect.unreachable(`${text} in ${system}`)
        expect(parseGrade(read.value.name, system)).toEqual(read)
        namedCount += 1
      }
    }
    expect(namedCount).toBe(14 + 14 + 20)
  })

  it('never throws for any text (law)', () => {
    law(50, fc.string(), (text) => {
      expect(typeof parseGrade(text, 'SAE J306').ok).toBe('boolean')
    })
    // @ts-expect-error no text
    expect(() => parseGrade(90, 'SAE J306')).toThrow(TypeError)
    // @ts-expect-error no system
    expect(() => parseGrade('90', 'constructor')).toThrow(RangeError)
  })
})
