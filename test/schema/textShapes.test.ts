import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isDate } from '../../src/calendar/isDate.js'
import { parsePeriod } from '../../src/calendar/parsePeriod.js'
import { isFigure } from '../../src/quantity/figure.js'
import {
  DATE_PATTERN,
  FIGURE_PATTERN,
  ID_PATTERN,
  INTERVAL_FIGURE_PATTERN,
  PERIOD_PATTERN,
  POINTER_PATTERN,
  SIGNED_FIGURE_PATTERN,
} from '../../src/schema/shapes/textShapes.js'
import { law } from '../support/law.js'

describe('periods', () => {
  // ISO 8601 durations from test262 `Temporal/Duration/from/argument-string*` (read at commit be13516f). We accept
  // those of whole years, months, weeks and days; a document cannot state the others.
  test.each(['P1D', 'P6M', 'P24M', 'P26W', 'P1W2D', 'P0D', 'P1Y1M1W1D'])('%s is a period', (text) => {
    expect(PERIOD_PATTERN.test(text)).toBe(true)
  })
  test.each([
    // ISO 8601, but not of whole calendar parts
    'PT500H',
    'P1DT0.5M',
    'P1Y1M1DT1H1M1S',
    '+P1D',
    '-P1M',
    'p1y',
    // Not a duration
    'P0.5Y',
    'P1Y0,5M',
    'P1.5M',
    'P',
    'PT',
    '-P',
    'P2H',
    'P2S',
    'P-1Y1M',
    'P1M2Y',
    'P1D\n',
    ' P1D',
    '',
    '6M',
    'P1D1D',
  ])('%j is none', (text) => {
    expect(PERIOD_PATTERN.test(text)).toBe(false)
  })

  test('law: the shape and the calendar read alike', () => {
    const piece = fc.constantFrom(
      'P',
      'Y',
      'M',
      'W',
      'D',
      'T',
      '1',
      '06',
      '1234567',
      '12345678',
      '.',
      '-',
      '',
    )
    law(
      2000,
      fc.oneof(
        fc.array(piece, { maxLength: 9 }).map((parts) => `P${parts.join('')}`),
        fc.string(),
      ),
      (text) => {
        expect(PERIOD_PATTERN.test(text)).toBe(parsePeriod(text).ok)
      },
    )
  })
})

test('law: a date of the shape is a date of the calendar, on every day from 1896 to 2104 and on random texts', () => {
  let dates = 0
  for (let year = 1896; year <= 2104; year++)
    for (let month = 0; month <= 13; month++)
      for (let day = 0; day <= 32; day++) {
        const text = `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`
        const fits = DATE_PATTERN.test(text)
        if (fits) dates += 1
        if (fits !== isDate(text)) expect([text, fits]).toEqual([text, isDate(text)])
      }
  // 209 years of 365 days, and a leap day in 1896, 1904 to 2096 by fours, and 2104: 1 + 49 + 1. 1900 and 2100 have
  // none.
  expect(dates).toBe(209 * 365 + 51)
  const text = fc
    .tuple(fc.nat(9999), fc.nat(13), fc.nat(32))
    .map(
      ([year, month, day]) =>
        `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`,
    )
  law(2000, fc.oneof(text, fc.string()), (candidate) => {
    expect(DATE_PATTERN.test(candidate)).toBe(isDate(candidate))
  })
})

test('law: a figure of the shape is a figure of the quantities', () => {
  const piece = fc.constantFrom('0', '1', '9', '.', ',', '-', '00', '123456789', '123456', '', 'e', ' ')
  law(
    2000,
    fc.oneof(
      fc.array(piece, { maxLength: 5 }).map((parts) => parts.join('')),
      fc.string(),
    ),
    (text) => {
      const isFigureText: boolean = isFigure(text)
      expect(FIGURE_PATTERN.test(text)).toBe(isFigureText)
      expect(INTERVAL_FIGURE_PATTERN.test(text)).toBe(isFigureText && Number(text) < 1_000_000)
      expect(SIGNED_FIGURE_PATTERN.test(text)).toBe(isFigure(text, { minus: true }))
    },
  )
})

test('ids: from one letter to sixty-four characters', () => {
  for (const id of ['a', 'front', 'a-', 'a1-b2', 'a'.repeat(63), 'a'.repeat(64)])
    expect(ID_PATTERN.test(id)).toBe(true)
  for (const id of ['', '1a', '-a', 'A', 'ä', 'a b', 'a_b', 'a\n', 'a'.repeat(65)])
    expect(ID_PATTERN.test(id)).toBe(false)
})

test('pointers: RFC 6901, section 3', () => {
  for (const pointer of ['', '/', '/a', '/a/0', '/~0', '/~1', '/a b/é', '//'])
    expect(POINTER_PATTERN.test(pointer)).toBe(true)
  for (const pointer of ['a', 'a/b', '/~', '/~2', '#/a', '/a~'])
    expect(POINTER_PATTERN.test(pointer)).toBe(false)
})
