import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { measureOf } from '../../src/quantity/measureOf.js'
import { UNITS_BY_MEASURE } from '../../src/quantity/unit.js'
import {
  formatQuantity,
  type NumberMarks,
  type PrintedBand,
  parseQuantity,
  type ReadingOptions,
  type Unit,
} from '../../src/v1/quantity.js'
import { law } from '../support/law.js'
import { anyBand } from './support/anyBand.js'
import { readingText } from './support/readingText.js'
import { UNIT_TEXTS } from './support/unitTexts.js'

describe('the table of texts', () => {
  it.each(UNIT_TEXTS)('“$text” ($options) is $reading', ({ text, options, reading }) => {
    expect(readingText(parseQuantity(text, options))).toBe(reading)
  })

  it('has at least 120 different texts', () => {
    expect(new Set(UNIT_TEXTS.map(({ text }) => text)).size).toBeGreaterThanOrEqual(120)
  })
})

const MARKS: readonly NumberMarks[] = [
  { decimal: '.', group: '' },
  { decimal: '.', group: '\u202f' },
  { decimal: ',', group: '.', groupFrom: 4 },
  { decimal: '.', group: ',', groupFrom: 4 },
  { decimal: '.', group: '’', groupFrom: 4 },
  { decimal: ',', group: '\u00a0' },
]

describe('laws', () => {
  it('reads back what is printed, in every unit and with every language’s marks', () => {
    law(2000, anyBand, fc.constantFrom(...MARKS), (band, marks) => {
      const decimalMark = marks.decimal as '.' | ','
      const result = parseQuantity(formatQuantity(band, marks), {
        measure: measureOf(band.unit),
        decimalMark,
      })
      expect(result).toEqual({ ok: true, value: band, findings: [] })
    })
  })

  it('never throws and never gives a value beside an error, whatever is written', () => {
    const pieces = fc.constantFrom(
      ...'0 1 7 20 . , - – ± + / ½ 1/2 % N·m ft lb qt US ( ) ° to ≥ __proto__ e3 \u202e 𝟙 ٣ 🔧 \n \0'.split(
        ' ',
      ),
      ' ',
    )
    const texts = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(pieces, { maxLength: 14 }).map((words) => words.join('')),
    )
    law(2000, texts, (text) => {
      const result = parseQuantity(text)
      const hasError = result.findings.some(({ severity }) => severity === 'error')
      expect(result.ok).toBe(!hasError)
      if (!result.ok) expect(result.findings.length).toBeGreaterThan(0)
    })
  })

  it('does not depend on the measure where the name is plain', () => {
    for (const units of Object.values(UNITS_BY_MEASURE)) {
      for (const unit of units) {
        const text = formatQuantity({ value: '12', unit }, { decimal: '.', group: '' })
        expect(parseQuantity(text, { measure: measureOf(unit) })).toMatchObject({ ok: true, value: { unit } })
      }
    }
  })
})

describe('findings', () => {
  it('are all given, not only the first', () => {
    const { findings } = parseQuantity('1.234–1,5 gal extra')
    expect(findings.length).toBeGreaterThanOrEqual(1)
    const result = parseQuantity('44–34 gal')
    expect(result.findings.map(({ code }) => code)).toEqual([
      'quantity/unit-is-ambiguous',
      'quantity/limits-reversed',
    ])
  })

  it('speak of a text', () => {
    expect(parseQuantity('5 gal').findings[0]).toEqual({
      code: 'quantity/unit-is-ambiguous',
      severity: 'error',
      document: { kind: 'text' },
      path: '',
      params: { text: 'gal', candidates: ['gal_us', 'gal_imp'] },
    })
  })
})

describe('length', () => {
  // Quadratic growth would take hours here, so the time limit of the test would fail it.
  it('of 1 MB is refused like any other', () => {
    const build = (length: number): string[] => [
      '1'.repeat(length),
      '1 000 '.repeat(length / 6),
      '-'.repeat(length),
      `20 ${'N·'.repeat(length / 2)}`,
      '½'.repeat(length),
      '20 – '.repeat(length / 5),
    ]
    for (const text of build(1e6)) expect(parseQuantity(text).ok).toBe(false)
    // and below the length of the longest text that is read
    for (const text of build(198)) expect(parseQuantity(text).ok).toBe(false)
  })

  it('refuses a text of 201 characters, and not one of 200', () => {
    const padText = (length: number): string => `20 N·m${' '.repeat(length - 6)}`
    expect(parseQuantity(padText(199)).ok).toBe(true)
    expect(parseQuantity(padText(200)).ok).toBe(true)
    expect(parseQuantity(padText(201)).findings[0]?.params).toEqual({ length: 201, longest: 200 })
  })
})

describe('misuse', () => {
  it('throws for an invalid text or option', () => {
    const read = (text: unknown, options?: unknown) => () =>
      parseQuantity(text as string, options as ReadingOptions)
    expect(read(20)).toThrow(TypeError)
    expect(read(null)).toThrow(/text must be a string/)
    expect(read('20 N', { measure: 'weight' })).toThrow(/options.measure/)
    expect(read('20 N', { measure: '__proto__' })).toThrow(TypeError)
    expect(read('20 N', { decimalMark: ';' })).toThrow(/options.decimalMark/)
    expect(read('20 N', { decimalMarks: ',' })).toThrow(/decimalMarks.*decimalMark/)
    expect(read('20 N', { assume: 'qt_us' })).toThrow(/options.assume/)
    expect(read('20 N', { assume: ['quart' as Unit] })).toThrow(/unit ids/)
  })

  it('gives plain data', () => {
    const result = parseQuantity('½ qt (US)')
    expect(JSON.parse(JSON.stringify(result))).toEqual(result)
    const value: PrintedBand | undefined = result.ok ? result.value : undefined
    expect(value).toEqual({ kind: 'nominal', value: '0.5', unit: 'qt_us', asPrinted: '1/2' })
  })
})
