import type { Unit } from '../../src/quantity/unit.js'
import { published } from '../support/published.js'

/** What a Temporal implementation is asked, for thousands of drawn dates each. */
export const TEMPORAL = published(
  {
    room: 'calendar',
    source: 'temporal-polyfill, an implementation of ECMAScript’s Temporal',
    edition: '1.0.8',
    place: 'Temporal.PlainDate, years 0001 to 9999',
    read: 'runs in the test',
    agrees: 'exactly',
    note: 'one check for each question, whatever the number of drawn dates',
  },
  ['adding periods', 'days between', 'order', 'what is a date'],
)

/** Our linear units by their names in GNU units. Units that it does not know are left out. */
export const GNU_UNITS: readonly (readonly [Unit, string])[] = published(
  {
    room: 'units',
    source: 'GNU units',
    edition: '2.22, definitions 3.15',
    place: 'the command `units`, every pair of units of one measure',
    read: 'runs in the test',
    agrees: 'to 5e-15, its doubles',
    note: 'one check for each unit; skipped where the command is missing, required in CI',
  },
  [
    ['N.m', 'N m'],
    ['cN.m', 'cN m'],
    ['dN.m', 'dN m'],
    ['kN.m', 'kN m'],
    ['lbf.ft', 'lbf ft'],
    ['lbf.in', 'lbf in'],
    ['ozf.in', 'ounce force inch'],
    ['kgf.m', 'kgf m'],
    ['kgf.cm', 'kgf cm'],
    ['mL', 'mL'],
    ['L', 'L'],
    ['cm3', 'cm^3'],
    ['fl_oz_us', 'usfloz'],
    ['pt_us', 'uspint'],
    ['qt_us', 'usquart'],
    ['gal_us', 'usgallon'],
    ['fl_oz_imp', 'brfloz'],
    ['pt_imp', 'brpint'],
    ['qt_imp', 'brquart'],
    ['gal_imp', 'brgallon'],
    ['mm', 'mm'],
    ['cm', 'cm'],
    ['m', 'm'],
    ['in', 'inch'],
    ['ft', 'foot'],
    ['km', 'km'],
    ['mi', 'mile'],
    ['N', 'N'],
    ['kN', 'kN'],
    ['lbf', 'lbf'],
    ['kPa', 'kPa'],
    ['MPa', 'MPa'],
    ['bar', 'bar'],
    ['psi', 'psi'],
    ['degC_diff', 'degC'],
    ['degF_diff', 'degF'],
    ['K_diff', 'K'],
    ['g', 'g'],
    ['kg', 'kg'],
    ['oz', 'oz'],
    ['lb', 'lb'],
    ['h', 'hour'],
    ['min', 'min'],
    ['s', 's'],
    ['d', 'day'],
    ['km/h', 'km/hour'],
    ['mph', 'mile/hour'],
  ],
)

/** Temperatures for the same command: value, from, to. */
export const GNU_TEMPERATURES = published(
  {
    room: 'units',
    source: 'GNU units',
    edition: '2.22, definitions 3.15',
    place: 'the command `units`, tempC, tempF and tempK',
    read: 'runs in the test',
    agrees: 'to 1e-11',
  },
  [
    ['-40', 'degC', 'degF'],
    ['80', 'degC', 'degF'],
    ['98.6', 'degF', 'degC'],
    ['-0.5', 'degF', 'K'],
    ['300', 'K', 'degF'],
  ],
)
