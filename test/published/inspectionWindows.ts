import { published } from '../support/published.js'

/**
 * Published examples of counting from a schedule with a window on both sides: inside the window the next point is the
 * due point plus the interval; outside it, the completion plus the interval.
 */
const MANUAL = {
  room: 'interval',
  source: 'US Army TM 1-1500-328-23, Aeronautical equipment maintenance management',
  edition: '30 July 1999',
  read: 'in the source',
  agrees: 'exactly',
} as const

/** Hours as printed. */
export const HOUR_WINDOWS = published(
  {
    ...MANUAL,
    place:
      'tolerance window, flying hours, (2) and (3), aviationmiscmanuals.tpub.com/TM-1-1500-328-23/0524370021.htm',
    note: 'three rows for "completed anywhere in that hour range": its ends and a point between them',
    statements: 2,
  },
  [
    { interval: '75', window: '5', due: 1609.4, done: 1604.4, next: 1684.4, as: 'inside, early end' },
    { interval: '75', window: '5', due: 1609.4, done: 1610, next: 1684.4, as: 'inside' },
    { interval: '75', window: '5', due: 1609.4, done: 1614.4, next: 1684.4, as: 'inside, late end' },
    { interval: '50', window: '5', due: 1306.4, done: 1299.9, next: 1349.9, as: 'outside, early' },
  ],
)

/** The ends of a window of 10 %: due point, ends as printed. */
export const HOUR_WINDOW_ENDS = published(
  {
    ...MANUAL,
    place: 'tolerance window, flying hours, (1) and (3), the same, 0524370020.htm and 0524370021.htm',
    values: () => 2,
  },
  [
    { interval: '25', window: '2.5', due: 1472.7, start: 1470.2, end: 1475.2 },
    { interval: '50', window: '5', due: 1306.4, start: 1301.4, end: 1311.4 },
  ],
)

/** Dates as printed (day, month and year): six months with 18 days, twelve months with 30 days. */
export const DATE_WINDOWS = published(
  {
    ...MANUAL,
    place: 'tolerance window, calendar, (1), the same, 0524370021.htm',
    note: 'two rows for "anywhere in that time frame": its ends',
    statements: 1,
  },
  [
    { period: 'P6M', window: 'P18D', due: '1999-01-31', done: '1999-01-13', next: '1999-07-31' },
    { period: 'P6M', window: 'P18D', due: '1999-01-31', done: '1999-02-18', next: '1999-07-31' },
  ],
)

/** The ends of the windows as printed there: start, due, end. */
export const WINDOW_ENDS = published(
  { ...MANUAL, place: 'tolerance window, calendar, (1) and (2), the same, 0524370021.htm', values: () => 2 },
  [
    { window: 'P18D', start: '1999-01-13', due: '1999-01-31', end: '1999-02-18' },
    { window: 'P30D', start: '1999-01-07', due: '1999-02-06', end: '1999-03-08' },
  ],
)

/** 14 days or 10 hours, whichever comes first: done on 22 May 1997 at 1709 hours. */
export const WHICHEVER_FIRST = published(
  { ...MANUAL, place: 'dual criteria, the same, 0524370022.htm', values: () => 2 },
  {
    period: 'P14D',
    hours: '10',
    done: { date: '1997-05-22', hours: 1709 },
    due: { date: '1997-06-05', hours: 1719 },
  },
)

/** The hours may be exceeded by up to 10 on the way to the inspection, and the excess counts towards the next hundred. */
export const EXCESS_COUNTED = published(
  {
    room: 'interval',
    source: '14 CFR 91.409(b), 100-hour inspection',
    edition: 'not dated',
    place:
      'jetcareers.com/forums/threads/17161; inlandaviationspecialties.com/annual-vs-100-hr-another-misconception',
    read: 'where it is quoted',
    agrees: 'exactly',
    note: 'the second row is the second page’s own example: after 106 hours the next inspection is due in 94',
  },
  [
    { interval: '100', window: '10', due: 100, done: 108, next: 200 },
    { interval: '100', window: '10', due: 100, done: 106, next: 106 + 94 },
  ],
)
