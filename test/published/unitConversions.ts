import type { Unit } from '../../src/quantity/unit.js'
import { published } from '../support/published.js'

/** One conversion as a source prints it: value, from, to, printed. */
export type PublishedConversion = readonly [value: number, from: Unit, to: Unit, printed: string]

export const IN_GNU_UNITS: readonly PublishedConversion[] = published(
  {
    room: 'units',
    source: 'GNU units, definitions',
    edition: '3.15 of September 2022, Debian 2.22-2',
    place: '/usr/share/units/definitions.units',
    read: 'in the source',
    agrees: 'to the printed digits',
  },
  [
    [1, 'in', 'mm', '25.4'],
    [1, 'ft', 'm', '0.3048'],
    [1, 'mi', 'km', '1.609344'],
    [1, 'lb', 'kg', '0.45359237'],
    [1, 'lbf', 'N', '4.4482216152605'],
    [1, 'kgf.m', 'N.m', '9.80665'],
    [1, 'gal_us', 'L', '3.785411784'],
    [1, 'gal_imp', 'L', '4.54609'],
  ],
)

export const IN_QUDT: readonly PublishedConversion[] = published(
  {
    room: 'units',
    source: 'QUDT units vocabulary',
    edition: 'August 2026, commit 8b9168d2',
    place: 'VOCAB_QUDT-UNITS-ALL.ttl',
    read: 'in the source',
    agrees: 'to the printed digits',
  },
  [
    [1, 'psi', 'kPa', '6.89475729316836'],
    [1, 'fl_oz_imp', 'mL', '28.4130625'],
  ],
)

export const IN_REC20: readonly PublishedConversion[] = published(
  {
    room: 'units',
    source: 'UN/ECE Recommendation 20',
    edition: 'revision 17, commit afbf662b',
    place: 'Annex I to III, code list',
    read: 'in the source',
    agrees: 'to the printed digits',
    note: 'a handbook row that is cut off instead of rounded (`1 ft·lbf = 1.355817 J`) is left out',
  },
  [
    [1, 'lbf.ft', 'N.m', '1.355818'],
    [1, 'lbf.in', 'N.m', '0.112985'],
  ],
)

export const IN_SP811: readonly PublishedConversion[] = published(
  {
    room: 'units',
    source: 'NIST SP 811',
    edition: '2008',
    place: 'B.7.2, pages 43 and 44, web copy',
    read: 'in the source',
    agrees: 'to the printed digits',
  },
  [[36, 'ft', 'm', '10.9728']],
)

export const IN_LC1137: readonly PublishedConversion[] = published(
  {
    room: 'units',
    source: 'NIST Metric Style Guide LC 1137',
    edition: 'not named',
    place: 'rule of reason, web copy',
    read: 'in the source',
    agrees: 'to the printed digits',
  },
  [
    [36, 'in', 'cm', '91.44'],
    [40.1, 'in', 'cm', '101.854'],
  ],
)

export const FROM_DEFINITIONS: readonly PublishedConversion[] = published(
  {
    room: 'units',
    source: 'statutory definitions of the units',
    edition: '1959 and 1995',
    place: 'calculated in whole fractions',
    read: 'calculated',
    agrees: 'to the digits shown',
  },
  [
    [1, 'N.m', 'lbf.ft', '0.737562149277265'],
    [1, 'N.m', 'lbf.in', '8.85074579132718'],
    [1, 'N.m', 'kgf.m', '0.101971621297793'],
    [1, 'kgf.m', 'lbf.ft', '7.23301385120989'],
    [9, 'N.m', 'lbf.ft', '6.63805934349539'],
    [9, 'N.m', 'lbf.in', '79.6567121219447'],
    [9, 'N.m', 'kgf.m', '0.9177445916801'],
    [39, 'N.m', 'lbf.ft', '28.7649238218133'],
    [39, 'N.m', 'kgf.m', '3.97689323061392'],
    [47, 'N.m', 'lbf.ft', '34.6654210160315'],
    [100, 'N.m', 'lbf.ft', '73.7562149277265'],
    [100, 'N.m', 'kgf.m', '10.1971621297793'],
    [20, 'lbf.ft', 'N.m', '27.116358966628'],
    [25, 'lbf.ft', 'N.m', '33.895448708285'],
    [35, 'lbf.ft', 'N.m', '47.453628191599'],
    [130, 'lbf.ft', 'N.m', '176.256333283082'],
    [1, 'qt_us', 'L', '0.946352946'],
    [1, 'fl_oz_us', 'mL', '29.5735295625'],
    [1, 'qt_imp', 'L', '1.1365225'],
    [1, 'bar', 'psi', '14.5037737730209'],
    [1, 'gal_imp', 'gal_us', '1.2009499255'],
    [1, 'fl_oz_imp', 'fl_oz_us', '0.960759940403884'],
    [1, 'km', 'mi', '0.621371192237334'],
  ],
)
