import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatNumber } from '../../src/quantity/formatNumber.js'
import {
  formatQuantity,
  type NumberDigits,
  type NumberMarks,
  type PrintedBand,
  type Quantity,
  type Unit,
} from '../../src/v1/quantity.js'
import { law } from '../support/law.js'

const point: NumberMarks = { decimal: '.', group: '\u202f' }
const space = '\u00a0'

/** The marks that `Intl` uses for a language, as a catalogue would state them. */
function marksOf(language: string): NumberMarks {
  const parts = new Intl.NumberFormat(language).formatToParts(1234567.5)
  const mark = (type: string): string => parts.find((part) => part.type === type)?.value ?? ''
  const groupsFourDigits = new Intl.NumberFormat(language)
    .formatToParts(1234)
    .some(({ type }) => type === 'group')
  return { decimal: mark('decimal'), group: mark('group'), groupFrom: groupsFourDigits ? 4 : 5 }
}

describe('numbers', () => {
  it.each(['en-US', 'de-DE', 'fr-FR', 'pl-PL', 'sv-SE', 'es-ES', 'en-ZA'])(
    'equal Intl in %s (5,000 numbers)',
    (language) => {
      const marks = marksOf(language)
      const number = fc
        .tuple(fc.integer({ min: -999_999_999, max: 999_999_999 }), fc.integer({ min: 0, max: 6 }))
        .map(([digits, places]) => digits / 10 ** places)
      law(500, number, fc.integer({ min: 0, max: 6 }), (value, decimals) => {
        const options = {
          minimumFractionDigits: decimals,
          maximumFractionDigits: decimals,
          roundingMode: 'halfEven',
        }
        const expected = new Intl.NumberFormat(language, options as Intl.NumberFormatOptions)
          .format(value)
          .replace('-', '−')
        const formatted = formatNumber(value, marks, { decimals })
        // Intl keeps the sign of a value that rounds to zero
        expect(formatted).toBe(/^[−0.,]*$/.test(expected) ? expected.replace('−', '') : expected)
      })
    },
  )

  it.each([
    // ASTM E29 as taught in field manuals: even digit on an exact tie, up on anything beyond it
    [45.75, 1, '45.8'],
    [45.45, 1, '45.4'],
    [45.45001, 1, '45.5'],
    [45.74, 1, '45.7'],
    [45.76, 1, '45.8'],
    [60.25132, 1, '60.3'],
    [1.245, 2, '1.24'],
    [0.8655, 3, '0.866'],
    [2.675, 2, '2.68'],
    [-45.75, 1, '−45.8'],
    [0.5, 0, '0'],
    [1.5, 0, '2'],
    [-0.2, 0, '0'],
  ] as const)('%d with %d decimals is %s', (value, decimals, printed) => {
    expect(formatNumber(value, point, { decimals })).toBe(printed)
  })

  it('shows the shortest digits of a double, never an exponent', () => {
    expect(formatNumber(0.1 + 0.2, point)).toBe('0.30000000000000004')
    expect(formatNumber(1e21, { decimal: '.', group: '' })).toBe('1000000000000000000000')
    expect(formatNumber(1.5e-7, point)).toBe('0.00000015')
    expect(formatNumber(-1.25e22, { decimal: '.', group: '' })).toBe('−12500000000000000000000')
    expect(formatNumber(-0, point)).toBe('0')
    law(500, fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
      const text = formatNumber(value, { decimal: '.', group: '' }).replace('−', '-')
      expect(Number(text)).toBe(value + 0)
      expect(text).toMatch(/^-?[0-9]+(\.[0-9]+)?$/)
    })
  })

  it('groups from five digits on, or from four where the language does', () => {
    expect(formatNumber(9999, point)).toBe('9999')
    expect(formatNumber(10_000, point)).toBe('10\u202f000')
    expect(formatNumber('123456789.123456', point)).toBe('123\u202f456\u202f789.123456')
    expect(formatNumber(1234, { decimal: ',', group: '.', groupFrom: 4 })).toBe('1.234')
    expect(formatNumber(1234567, { decimal: '.', group: '$&', groupFrom: 4 })).toBe('1$&234$&567')
  })

  it('drops trailing zeros for a maximum number of decimals, and keeps those of a figure', () => {
    expect(formatNumber(1.5, point, { atMost: 3 })).toBe('1.5')
    expect(formatNumber(100, point, { atMost: 3 })).toBe('100')
    expect(formatNumber(100, point, { atMost: 0 })).toBe('100')
    expect(formatNumber(0.0004, point, { atMost: 3 })).toBe('0')
    expect(formatNumber('10.00', point, { atMost: 1 })).toBe('10.00')
  })

  it('throws for an invalid number', () => {
    const callWith =
      (value: unknown, digits: NumberDigits = {}) =>
      () =>
        formatNumber(value as number, point, digits)
    expect(callWith(Number.NaN)).toThrow(RangeError)
    expect(callWith(Number.POSITIVE_INFINITY)).toThrow(/finite/)
    expect(callWith('1,5')).toThrow(TypeError)
    expect(callWith(null)).toThrow(TypeError)
    expect(callWith(1, { decimals: -1 })).toThrow(/0 to 20/)
    expect(callWith(1, { decimals: 21 })).toThrow(RangeError)
    expect(callWith(1, { atMost: 1.5 })).toThrow(RangeError)
    expect(callWith(1, { decimals: 20 })()).toBe('1.00000000000000000000')
  })
})

describe('quantities', () => {
  const band = (value: PrintedBand): string => formatQuantity(value, point)

  it('have a no-break space before the symbol, except degrees of angle', () => {
    expect(formatQuantity({ value: '20.0', unit: 'N.m' }, point)).toBe(`20.0${space}N·m`)
    expect(formatQuantity({ value: 20.04, unit: 'N.m' }, point, { decimals: 1 })).toBe(`20.0${space}N·m`)
    expect(formatQuantity({ value: 90, unit: 'deg' }, point)).toBe('90°')
    expect(formatQuantity({ value: -40, unit: 'degC' }, point)).toBe(`−40${space}°C`)
  })

  it('show each kind of band', () => {
    expect(band({ kind: 'nominal', value: '7.5', unit: 'lbf.ft' })).toBe(`7.5${space}lbf·ft`)
    expect(band({ kind: 'nominal with tolerance', value: '20', minus: '2', plus: '2', unit: 'N.m' })).toBe(
      `20${space}±${space}2${space}N·m`,
    )
    expect(band({ kind: 'nominal with tolerance', value: '20', minus: '1', plus: '2', unit: 'N.m' })).toBe(
      `20${space}+2/−1${space}N·m`,
    )
    expect(band({ kind: 'limits', min: '34', max: '44', unit: 'N.m' })).toBe(`34–44${space}N·m`)
    expect(band({ kind: 'limits', min: '-40', max: '5', unit: 'degC' })).toBe(
      `−40${space}–${space}5${space}°C`,
    )
    expect(band({ kind: 'limits', min: '34', unit: 'N.m' })).toBe(`≥${space}34${space}N·m`)
    expect(band({ kind: 'limits', max: '44', unit: 'N.m' })).toBe(`≤${space}44${space}N·m`)
  })

  it('throw where nothing can be shown', () => {
    expect(() => band({ kind: 'limits', unit: 'N.m' })).toThrow(/min or max/)
    expect(() => formatQuantity({ value: 1, unit: 'nm' as Unit }, point)).toThrow(TypeError)
    expect(() => formatQuantity({ unit: 'N.m' } as Quantity, point)).toThrow(TypeError)
  })
})
