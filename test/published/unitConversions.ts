import type { Unit } from '../../src/quantity/unit.js'

/**
 * One conversion as a source prints it; `mark` says how the row was read (R read, R2 from a secondary source, C exact
 * from definitions).
 */
export interface PublishedConversion {
  readonly value: number
  readonly from: Unit
  readonly to: Unit
  readonly printed: string
  readonly source: string
  readonly mark: 'R' | 'R2' | 'C'
}

const row = (
  value: number,
  from: Unit,
  to: Unit,
  printed: string,
  source: string,
  mark: PublishedConversion['mark'] = 'R',
): PublishedConversion => ({ value, from, to, printed, source, mark })

const GNU = 'GNU units 2.22, definitions 3.15'
const QUDT = 'QUDT units vocabulary, Aug 2026'
const REC20 = 'UN/ECE Recommendation 20, rev. 17'
const SP811 = 'NIST SP 811 (2008), B.7.2'
const DEFINITION = 'statutory definitions, worked in whole fractions'

/** A handbook row that is cut off instead of rounded (`1 ft·lbf = 1.355817 J`) is omitted, not corrected. */
export const PUBLISHED_CONVERSIONS: readonly PublishedConversion[] = [
  row(1, 'in', 'mm', '25.4', GNU),
  row(1, 'ft', 'm', '0.3048', GNU),
  row(1, 'mi', 'km', '1.609344', GNU),
  row(1, 'lb', 'kg', '0.45359237', GNU),
  row(1, 'lbf', 'N', '4.4482216152605', GNU),
  row(1, 'kgf.m', 'N.m', '9.80665', GNU),
  row(1, 'gal_us', 'L', '3.785411784', GNU),
  row(1, 'gal_imp', 'L', '4.54609', GNU),
  row(1, 'psi', 'kPa', '6.89475729316836', QUDT),
  row(1, 'fl_oz_imp', 'mL', '28.4130625', QUDT),
  row(1, 'lbf.ft', 'N.m', '1.355818', REC20),
  row(1, 'lbf.in', 'N.m', '0.112985', REC20),
  row(36, 'ft', 'm', '10.9728', SP811),
  row(36, 'in', 'cm', '91.44', 'NIST LC 1137'),
  row(40.1, 'in', 'cm', '101.854', 'NIST LC 1137'),
  row(1, 'N.m', 'lbf.ft', '0.737562149277265', DEFINITION, 'C'),
  row(1, 'N.m', 'lbf.in', '8.85074579132718', DEFINITION, 'C'),
  row(1, 'N.m', 'kgf.m', '0.101971621297793', DEFINITION, 'C'),
  row(1, 'kgf.m', 'lbf.ft', '7.23301385120989', DEFINITION, 'C'),
  row(9, 'N.m', 'lbf.ft', '6.63805934349539', DEFINITION, 'C'),
  row(9, 'N.m', 'lbf.in', '79.6567121219447', DEFINITION, 'C'),
  row(9, 'N.m', 'kgf.m', '0.9177445916801', DEFINITION, 'C'),
  row(39, 'N.m', 'lbf.ft', '28.7649238218133', DEFINITION, 'C'),
  row(39, 'N.m', 'kgf.m', '3.97689323061392', DEFINITION, 'C'),
  row(47, 'N.m', 'lbf.ft', '34.6654210160315', DEFINITION, 'C'),
  row(100, 'N.m', 'lbf.ft', '73.7562149277265', DEFINITION, 'C'),
  row(100, 'N.m', 'kgf.m', '10.1971621297793', DEFINITION, 'C'),
  row(20, 'lbf.ft', 'N.m', '27.116358966628', DEFINITION, 'C'),
  row(25, 'lbf.ft', 'N.m', '33.895448708285', DEFINITION, 'C'),
  row(35, 'lbf.ft', 'N.m', '47.453628191599', DEFINITION, 'C'),
  row(130, 'lbf.ft', 'N.m', '176.256333283082', DEFINITION, 'C'),
  row(1, 'qt_us', 'L', '0.946352946', DEFINITION, 'C'),
  row(1, 'fl_oz_us', 'mL', '29.5735295625', DEFINITION, 'C'),
  row(1, 'qt_imp', 'L', '1.1365225', DEFINITION, 'C'),
  row(1, 'bar', 'psi', '14.5037737730209', DEFINITION, 'C'),
  row(1, 'gal_imp', 'gal_us', '1.2009499255', DEFINITION, 'C'),
  row(1, 'fl_oz_imp', 'fl_oz_us', '0.960759940403884', DEFINITION, 'C'),
  row(1, 'km', 'mi', '0.621371192237334', DEFINITION, 'C'),
]
