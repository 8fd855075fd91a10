import { published } from '../support/published.js'

/** The permissible deviation of a setting tool, type II class A, of the reading, by the tool's maximum in N·m. */
export const ISO_6789_DEVIATIONS = published(
  {
    room: 'torque',
    source: 'ISO 6789, permissible deviation of setting tools',
    edition: '2003',
    place: 'a torque-wrench maker’s user manual, chapter "Review of ISO 6789"',
    read: 'where it is quoted',
    agrees: 'exactly',
    note: '9.9 and 10.1 N·m are of the same two statements',
    statements: 2,
  },
  [
    { maximum: 9.9, percent: 6 },
    { maximum: 10, percent: 6 },
    { maximum: 10.1, percent: 4 },
  ],
)

/** Setting / 1.04 and setting / 0.96 (1.06 and 0.94). */
export const ISO_6789_BANDS = published(
  {
    room: 'torque',
    source: 'ISO 6789, deviation of the reference reading',
    edition: '2003',
    place: 'calculated by hand from ±4 % and ±6 %',
    read: 'calculated',
    agrees: 'to the digits shown',
    values: () => 2,
  },
  [
    { highest: 100, setting: 40, least: '38.46', most: '41.67' },
    { highest: 10, setting: 8, least: '7.547', most: '8.511' },
  ],
)

/** Whether a target in N·m is in the range of a tool marked 10 to 100 N·m. */
export const ISO_6789_RANGES = published(
  {
    room: 'torque',
    source: 'ISO 6789, range of a setting tool',
    edition: '2003 (20 to 100 % of the maximum) and 2017 (from the lowest mark, Part 1 clause 5.1.3)',
    place: 'a tool maker’s articles, with the example of a 10 to 100 N·m tool',
    read: 'where it is quoted',
    agrees: 'exactly',
    note: 'the rows between and past the ends follow from the two ranges',
    statements: 2,
    values: () => 2,
  },
  [
    { target: '10', in2017: true, in2003: false },
    { target: '15', in2017: true, in2003: false },
    { target: '20', in2017: true, in2003: true },
    { target: '100', in2017: true, in2003: true },
    { target: '105', in2017: false, in2003: false },
  ],
)
