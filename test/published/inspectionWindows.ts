/**
 * Published examples of counting from a schedule with a window on both sides.
 *
 * Source: US Army TM 1-1500-328-23, special inspections, in a public copy of its pages (mark R: read there): inside the
 * window the next point is the due point plus the interval; outside it, the completion plus the interval. Hours as
 * printed. The rows `inside` have the ends of the window and a point between them; the manual says "anywhere in that
 * range".
 */
export const HOUR_WINDOWS = [
  { interval: '75', window: '5', due: 1609.4, done: 1604.4, next: 1684.4, as: 'inside, early end' },
  { interval: '75', window: '5', due: 1609.4, done: 1610, next: 1684.4, as: 'inside' },
  { interval: '75', window: '5', due: 1609.4, done: 1614.4, next: 1684.4, as: 'inside, late end' },
  { interval: '50', window: '5', due: 1306.4, done: 1299.9, next: 1349.9, as: 'outside, early' },
] as const

/** Dates as printed (day, month and year): six months with 18 days, twelve months with 30 days. */
export const DATE_WINDOWS = [
  { period: 'P6M', window: 'P18D', due: '1999-01-31', done: '1999-01-13', next: '1999-07-31' },
  { period: 'P6M', window: 'P18D', due: '1999-01-31', done: '1999-02-18', next: '1999-07-31' },
] as const

/** The ends of the windows as printed there: start, due, end. */
export const WINDOW_ENDS = [
  { window: 'P18D', start: '1999-01-13', due: '1999-01-31', end: '1999-02-18' },
  { window: 'P30D', start: '1999-01-07', due: '1999-02-06', end: '1999-03-08' },
] as const

/**
 * 14 CFR 91.409(b), as quoted in law reviews (mark R2): the 100 hours may be exceeded by up to 10 hours on the way to
 * the place of the inspection, and the excess counts towards the next 100 hours: due 100 h, done 108 h, next 200 h.
 */
export const EXCESS_COUNTED = { interval: '100', window: '10', due: 100, done: 108, next: 200 } as const
