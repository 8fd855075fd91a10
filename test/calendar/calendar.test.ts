import fc from 'fast-check'
import { Temporal } from 'temporal-polyfill'
import { describe, expect, test } from 'vitest'
import {
  compareDates,
  dateFromDay,
  dayNumberOf,
  daysBetween,
  FIRST_DAY,
  LAST_DAY,
} from '../../src/calendar/dayNumbers.js'
import { isDate } from '../../src/calendar/isDate.js'
import { parsePeriod } from '../../src/calendar/parsePeriod.js'
import { addPeriod } from '../../src/v1/calendar.js'
import {
  ADDITIONS,
  DAY_COUNTS,
  MONTHS_UNTIL,
  PERIODS_NOT_OF_THE_CALENDAR,
  PERIODS_READ,
  PERIODS_REFUSED,
  POLYFILL_ADDITIONS,
} from '../published/plainDateArithmetic.js'
import { TEMPORAL } from '../published/referencePrograms.js'
import { addDays } from '../support/addDays.js'
import { cases, law } from '../support/law.js'

const anyDay = fc.integer({ min: FIRST_DAY, max: LAST_DAY })
const anyDate = anyDay.map(dateFromDay)

describe('published facts', () => {
  test.each([...ADDITIONS, ...POLYFILL_ADDITIONS])(
    '$start + $years y $months mo $days d is $result ($file)',
    (fact) => {
      const { years = 0, months = 0, days = 0 } = fact
      expect(addPeriod(fact.start, { years, months, weeks: 0, days })).toBe(fact.result)
    },
  )

  test.each(DAY_COUNTS)('%s to %s is %d days (%s)', (from, to, days) => {
    expect(daysBetween(from, to)).toBe(days)
    expect(daysBetween(to, from)).toBe(-days)
    expect(addDays(from, days)).toBe(to)
  })

  test.each(MONTHS_UNTIL)('%s to %s is %d months and %d days', (from, to, months, days) => {
    expect(addDays(addPeriod(from, 'P1M', months), days)).toBe(to)
    const nextMonth = addPeriod(from, 'P1M', months + 1)
    // If `until` leaves only days at a month's end, the limited sum is already reached, so the service is due.
    expect(nextMonth >= to).toBe(true)
  })

  test.each(PERIODS_READ)('%s is read', (text, years, months, weeks, days) => {
    expect(parsePeriod(text)).toEqual({ ok: true, value: { years, months, weeks, days }, findings: [] })
  })

  test.each([...PERIODS_REFUSED, ...PERIODS_NOT_OF_THE_CALENDAR])('%j is no calendar period', (text) => {
    const read = parsePeriod(text)
    expect(read.ok).toBe(false)
    expect(read.findings.map(({ code, params }) => [code, params['text']])).toEqual([
      ['calendar/not-a-period', text],
    ])
  })

  test('months are added to the start, never to the last result', () => {
    // 2024-01-31 + 1 mo + 1 mo is 2024-03-29, but + 2 mo is 2024-03-31 (Temporal polyfill 0.5.1, run).
    expect(addPeriod(addPeriod('2024-01-31', 'P1M'), 'P1M')).toBe('2024-03-29')
    expect(addPeriod('2024-01-31', 'P1M', 2)).toBe('2024-03-31')
  })

  test('centuries are leap years only where 400 divides them (Gregorian rule)', () => {
    expect(
      ['1600-02-29', '1700-02-29', '1900-02-29', '2000-02-29', '2100-02-29', '2400-02-29'].map(isDate),
    ).toEqual([true, false, false, true, false, true])
  })
})

describe('equal to a Temporal implementation', () => {
  const day1600 = dayNumberOf('1600-01-01')
  const day2400 = dayNumberOf('2400-12-31')
  const [adding, between, order, date] = TEMPORAL

  test(`${adding}, from 1600 to 2400`, () => {
    let counted = 0
    law(
      5000,
      fc.integer({ min: day1600, max: day2400 }),
      fc.integer({ min: -60, max: 60 }),
      fc.integer({ min: -720, max: 720 }),
      fc.integer({ min: -600, max: 600 }),
      fc.integer({ min: -4000, max: 4000 }),
      (day, years, months, weeks, days) => {
        // Temporal refuses mixed signs in one duration.
        const sign = years !== 0 ? Math.sign(years) : months !== 0 ? Math.sign(months) : 1
        const parts = {
          years,
          months: sign * Math.abs(months),
          weeks: sign * Math.abs(weeks),
          days: sign * Math.abs(days),
        }
        const start = dateFromDay(day)
        counted += 1
        const expected = Temporal.PlainDate.from(start).add(parts, { overflow: 'constrain' })
        return addPeriod(start, parts) === expected.toString()
      },
    )
    expect(counted).toBeGreaterThanOrEqual(cases(5000))
  })

  test(`${between}, ${order}, and ${date}`, () => {
    law(500, anyDay, anyDay, (candidate, other) => {
      const from = Temporal.PlainDate.from(dateFromDay(candidate))
      const to = Temporal.PlainDate.from(dateFromDay(other))
      return (
        daysBetween(dateFromDay(candidate), dateFromDay(other)) ===
          from.until(to, { largestUnit: 'days' }).days &&
        compareDates(dateFromDay(candidate), dateFromDay(other)) === Temporal.PlainDate.compare(from, to)
      )
    })
    law(
      500,
      fc.integer({ min: 1, max: 9999 }),
      fc.integer({ min: 0, max: 13 }),
      fc.integer({ min: 0, max: 32 }),
      (year, month, day) => {
        const padToTwo = (value: number): string => String(value).padStart(2, '0')
        const text = `${String(year).padStart(4, '0')}-${padToTwo(month)}-${padToTwo(day)}`
        let isCalendarDate = true
        try {
          Temporal.PlainDate.from({ year, month, day }, { overflow: 'reject' })
        } catch {
          isCalendarDate = false
        }
        return isDate(text) === isCalendarDate
      },
    )
  })
})

describe('laws', () => {
  test('every day number has one text, which gives the number again', () => {
    let wrongCount = 0
    let before = ''
    for (let day = FIRST_DAY; day <= LAST_DAY; day += 1) {
      const text = dateFromDay(day)
      if (dayNumberOf(text) !== day || text <= before) wrongCount += 1
      before = text
    }
    expect(wrongCount).toBe(0)
    expect([dateFromDay(FIRST_DAY), dateFromDay(0), dateFromDay(LAST_DAY)]).toEqual([
      '0001-01-01',
      '1970-01-01',
      '9999-12-31',
    ])
  })

  test('adding days goes there and back', () => {
    law(
      50,
      anyDate,
      anyDate,
      (candidate, other) => addDays(candidate, daysBetween(candidate, other)) === other,
    )
  })

  test('a longer period never ends earlier, and the day of the month is kept or held to the last one', () => {
    law(
      50,
      fc.integer({ min: FIRST_DAY, max: LAST_DAY - 400_000 }),
      fc.integer({ min: 0, max: 12_000 }),
      (day, months) => {
        const start = dateFromDay(day)
        const end = addPeriod(start, { years: 0, months, weeks: 0, days: 0 })
        const next = addPeriod(start, { years: 0, months: months + 1, weeks: 0, days: 0 })
        const lastOfMonth = addDays(addPeriod(`${end.slice(0, 8)}01`, 'P1M'), -1)
        return (
          end < next &&
          Number(end.slice(8)) === Math.min(Number(start.slice(8)), Number(lastOfMonth.slice(8)))
        )
      },
    )
  })

  test('a period text is read back from its parts', () => {
    const part = fc.integer({ min: 1, max: 9_999_999 })
    law(50, part, part, part, part, (years, months, weeks, days) => {
      const read = parsePeriod(`P${years}Y${months}M${weeks}W${days}D`)
      expect(read).toEqual({ ok: true, value: { years, months, weeks, days }, findings: [] })
    })
  })
})

describe('bad input', () => {
  const hostileValues: readonly unknown[] = [
    null,
    undefined,
    20310112,
    Number.NaN,
    {},
    [],
    '',
    '2031-1-12',
    '20310112',
    '2031-01-12T00:00:00Z',
    ' 2031-01-12',
    '2031-01-12\n',
    '2031-02-30',
    '0000-01-01',
    '10000-01-01',
    '-001-01-01',
    '2031-01-1x',
    '２０３１-01-12',
    '__proto__',
    'x'.repeat(100),
  ]
  test.each(hostileValues)('%j is no date anywhere', (value) => {
    const invalidDate = value as string
    expect(isDate(value)).toBe(false)
    const expected = typeof value === 'string' ? RangeError : TypeError
    expect(() => daysBetween(invalidDate, '2031-01-12')).toThrow(expected)
    expect(() => daysBetween('2031-01-12', invalidDate)).toThrow(expected)
    expect(() => compareDates('2031-01-12', invalidDate)).toThrow(expected)
    expect(() => addPeriod(invalidDate, 'P1M')).toThrow(expected)
  })

  test.each([1.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53, -(2 ** 53)])(
    '%d is no number of times',
    (value) => {
      expect(() => addPeriod('2031-01-12', 'P1M', value)).toThrow(RangeError)
    },
  )

  test('other wrong types', () => {
    expect(() => addPeriod('2031-01-12', 'P1M', null as unknown as number)).toThrow(TypeError)
    expect(() => addPeriod('2031-01-12', null as unknown as string)).toThrow(TypeError)
    expect(() => addPeriod('2031-01-12', 5 as unknown as string)).toThrow(TypeError)
    expect(() => addPeriod('2031-01-12', 'half a year')).toThrow(
      "period must be a period such as P6M or P1Y, got 'half a year'",
    )
    expect(() => addPeriod('2031-01-12', { years: 0, months: 0.5, weeks: 0, days: 0 })).toThrow(
      'period.months must be a whole number, got 0.5',
    )
    expect(() => parsePeriod(6 as unknown as string)).toThrow(TypeError)
    expect(parsePeriod(`P${'9'.repeat(1_000_000)}M`).ok).toBe(false)
    expect(parsePeriod('P6M\n').ok).toBe(false)
    expect(isDate('2'.repeat(10_000_000))).toBe(false)
  })

  test('the calendar ends with the years 0001 and 9999', () => {
    expect(addPeriod('9999-12-30', 'P1D')).toBe('9999-12-31')
    expect(() => addPeriod('9999-12-31', 'P1D')).toThrow('is outside the years 0001 to 9999')
    expect(addPeriod('9999-11-30', 'P1M')).toBe('9999-12-30')
    expect(() => addPeriod('9999-12-01', 'P1M')).toThrow(RangeError)
    expect(addPeriod('0001-02-01', 'P1M', -1)).toBe('0001-01-01')
    expect(() => addPeriod('0001-01-31', 'P1M', -1)).toThrow(RangeError)
    expect(() => addPeriod('2031-01-12', 'P9999999Y', 9_000_000)).toThrow(RangeError)
  })
})
