import { published } from '../support/published.js'

/** ECMAScript's conformance tests of the plain date. */
const TEST262 = {
  room: 'calendar',
  source: 'ECMAScript conformance tests (tc39/test262)',
  edition: 'commit be13516f, 7 August 2026',
  read: 'in the source',
  agrees: 'exactly',
} as const

export interface AdditionFact {
  readonly start: string
  readonly years?: number
  readonly months?: number
  readonly days?: number
  readonly result: string
  readonly file: string
}

const series = (start: string, sign: 1 | -1, results: readonly string[], file: string): AdditionFact[] =>
  results.map((result, index) => ({ start, months: sign * (index + 1), result, file }))

export const ADDITIONS: readonly AdditionFact[] = published(
  {
    ...TEST262,
    place:
      'Temporal/PlainDate/prototype: add/constrain-days, leap-year-arithmetic, basic-arithmetic, balance-smaller-units-basic, subtract/overflow-constrain',
  },
  [
    ...series(
      '2019-01-31',
      1,
      [
        '2019-02-28',
        '2019-03-31',
        '2019-04-30',
        '2019-05-31',
        '2019-06-30',
        '2019-07-31',
        '2019-08-31',
        '2019-09-30',
        '2019-10-31',
        '2019-11-30',
        '2019-12-31',
      ],
      'add/constrain-days',
    ),
    ...series(
      '2019-12-31',
      -1,
      [
        '2019-11-30',
        '2019-10-31',
        '2019-09-30',
        '2019-08-31',
        '2019-07-31',
        '2019-06-30',
        '2019-05-31',
        '2019-04-30',
        '2019-03-31',
        '2019-02-28',
        '2019-01-31',
      ],
      'add/constrain-days',
    ),
    { start: '2016-01-31', months: 1, result: '2016-02-29', file: 'add/constrain-days' },
    { start: '2016-12-31', months: -10, result: '2016-02-29', file: 'add/constrain-days' },
    { start: '2020-02-29', years: 1, result: '2021-02-28', file: 'add/leap-year-arithmetic' },
    { start: '2020-02-29', years: 4, result: '2024-02-29', file: 'add/leap-year-arithmetic' },
    { start: '2020-01-31', months: 1, result: '2020-02-29', file: 'add/leap-year-arithmetic' },
    { start: '2021-09-30', months: 5, result: '2022-02-28', file: 'add/leap-year-arithmetic' },
    { start: '2019-09-30', months: 5, result: '2020-02-29', file: 'add/leap-year-arithmetic' },
    { start: '2021-12-31', years: 1, months: 2, result: '2023-02-28', file: 'add/leap-year-arithmetic' },
    { start: '2022-12-31', years: 1, months: 2, result: '2024-02-29', file: 'add/leap-year-arithmetic' },
    { start: '2021-10-31', months: 5, result: '2022-03-31', file: 'add/basic-arithmetic' },
    { start: '2021-07-16', months: 5, result: '2021-12-16', file: 'add/basic-arithmetic' },
    { start: '2021-08-16', months: 5, result: '2022-01-16', file: 'add/basic-arithmetic' },
    { start: '2021-11-30', years: 1, months: 2, result: '2023-01-30', file: 'add/basic-arithmetic' },
    { start: '2020-03-31', months: -1, result: '2020-02-29', file: 'subtract/overflow-constrain' },
    { start: '1976-11-18', days: 1, result: '1976-11-19', file: 'add/balance-smaller-units-basic (36 h)' },
    { start: '1976-11-18', days: 2, result: '1976-11-20', file: 'add/balance-smaller-units-basic (48 h)' },
  ],
)

export const POLYFILL_ADDITIONS: readonly AdditionFact[] = published(
  {
    ...TEST262,
    source: 'Temporal polyfill 0.5.1, run once outside this code',
    edition: '0.5.1',
    place: 'PlainDate.add',
    read: 'calculated',
  },
  [
    { start: '2024-01-31', months: 2, result: '2024-03-31', file: 'polyfill' },
    { start: '2023-08-31', months: 6, result: '2024-02-29', file: 'polyfill' },
    { start: '2024-08-31', months: 6, result: '2025-02-28', file: 'polyfill' },
    { start: '2024-02-29', months: 12, result: '2025-02-28', file: 'polyfill' },
    { start: '2024-02-29', months: 48, result: '2028-02-29', file: 'polyfill' },
    { start: '2023-05-31', months: 24, result: '2025-05-31', file: 'polyfill' },
    { start: '2023-11-30', months: 3, result: '2024-02-29', file: 'polyfill' },
    { start: '2024-01-30', months: 1, result: '2024-02-29', file: 'polyfill' },
    { start: '2024-01-29', months: 1, result: '2024-02-29', file: 'polyfill' },
    { start: '2024-01-31', months: 1, days: 1, result: '2024-03-01', file: 'polyfill' },
  ],
)

/** From, to, days. */
export const DAY_COUNTS: readonly (readonly [string, string, number, string])[] = published(
  { ...TEST262, place: 'Temporal/PlainDate/prototype/until' },
  [
    ['1969-07-24', '1969-09-04', 42, 'until (6 weeks)'],
    ['1969-07-24', '2019-07-24', 18_262, 'until'],
    ['2019-01-01', '2019-02-01', 31, 'until'],
    ['2019-02-01', '2019-03-01', 28, 'until'],
    ['2020-02-01', '2020-03-01', 29, 'until'],
    ['1970-01-29', '1970-02-28', 30, 'until/wrapping-at-end-of-month-gregory'],
    ['1970-01-30', '1970-02-28', 29, 'until/wrapping-at-end-of-month-gregory'],
    ['1970-01-31', '1970-02-28', 28, 'until/wrapping-at-end-of-month-gregory'],
    ['1972-01-30', '1972-02-29', 30, 'until/wrapping-at-end-of-month-gregory'],
    ['1972-01-31', '1972-02-29', 29, 'until/wrapping-at-end-of-month-gregory'],
  ],
)

/**
 * From, to, and the calendar months between them with the days left over (`until`, largest unit month). On the last day
 * of a month, `until` may not count a month that the limited sum has reached, so due must be judged by the sum.
 */
export const MONTHS_UNTIL: readonly (readonly [string, string, number, number])[] = published(
  {
    ...TEST262,
    place: 'Temporal/PlainDate/prototype/until, wrapping-at-end-of-month-gregory',
    values: () => 2,
  },
  [
    ['1970-01-28', '1970-02-28', 1, 0],
    ['1970-01-29', '1970-02-28', 0, 30],
    ['1970-01-30', '1970-02-28', 0, 29],
    ['1970-01-31', '1970-02-28', 0, 28],
    ['1972-01-29', '1972-02-29', 1, 0],
    ['1972-01-30', '1972-02-29', 0, 30],
    ['1972-01-31', '1972-02-29', 0, 29],
    ['1970-08-30', '1970-11-30', 3, 0],
    ['1970-08-31', '1970-11-30', 2, 30],
    ['1970-12-30', '1973-04-30', 28, 0],
    ['1970-12-31', '1973-04-30', 27, 30],
    ['1970-01-29', '1970-03-28', 1, 28],
    ['1970-01-31', '1971-05-30', 15, 30],
    ['1969-07-24', '1969-09-04', 1, 11],
  ],
)

/** Duration texts. Durations with a time part are not calendar periods. */
export const PERIODS_READ: readonly (readonly [string, number, number, number, number])[] = published(
  {
    ...TEST262,
    place: 'Temporal/Duration/from/argument-string*',
    note: 'the last row is one of them without its time, and is not counted',
    statements: 6,
    values: () => 4,
  },
  [
    ['P1D', 0, 0, 0, 1],
    ['P6M', 0, 6, 0, 0],
    ['P24M', 0, 24, 0, 0],
    ['P26W', 0, 0, 26, 0],
    ['P1W2D', 0, 0, 1, 2],
    ['P0D', 0, 0, 0, 0],
    ['P1Y1M1W1D', 1, 1, 1, 1],
  ],
)
export const PERIODS_REFUSED: readonly string[] = published(
  { ...TEST262, spoiled: 'P1D', place: 'Temporal/Duration/from/argument-string-invalid and its neighbours' },
  [
    'P0.5Y',
    'P1Y0,5M',
    'P1Y1M0.5W',
    'P1Y1M1W0,5D',
    'P1.5M',
    'P2.5M',
    'P',
    'PT',
    '-P',
    '+PT',
    'P2H',
    'P2S',
    'P1H',
    'P-1Y1M',
    'P1Y-1M',
    'PT2.H3M',
    'PT.1H',
    'PT1.5H0,5M',
    '',
    'P1M2Y',
    'P6M ',
  ],
)
export const PERIODS_NOT_OF_THE_CALENDAR: readonly string[] = published(
  {
    ...TEST262,
    source: 'house rule: only whole parts in capitals without a sign',
    edition: 'not published',
    place: 'this library',
    read: 'from memory',
    note: 'durations in general, but refused here',
  },
  ['PT500H', 'P1DT0.5M', '+P1D', '-P1M', '−P1M', 'p6m', 'P1,12D'],
)
