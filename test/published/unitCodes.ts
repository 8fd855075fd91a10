import type { Unit } from '../../src/quantity/unit.js'
import { published } from '../support/published.js'

/**
 * Unit codes as read, two sources for each code:
 * - UCUM: `ucum-essence.xml` 2.2 (2024-06-17), and the validator `@lhncbc/ucum-lhc` 7.1.10, which accepted every
 * expression, with the size in the last column;
 * - UN/ECE Rec 20: `Annex I` code list, rev. 17 (2021), and, up to the letters MM, the list as generated in
 *   `quadient/unece-units`; for the others the code in QUDT (`uneceCommonCode`). `MPA`, `ONZ` and `SEC` (Annex I) and
 *   `CEL`, `FAH`, `KEL`, `C17` and `C24` (the generated list) were read a second time in the constants of the invoice
 *   library `horstoeko/zugferd`, `codelistsenum/ZugferdUnitCodes.php`, by name and code;
 * - QUDT: the unit vocabulary (Aug 2026), and `@qudtlib/allunits` 7.1.0, whose multiplier is given.
 *
 * `per` is our unit for the printed sizes; powers of ten were removed by hand.
 */
export interface PublishedCodes {
  readonly unit: Unit
  readonly per: Unit
  readonly ucum: string
  readonly rec20: string | null
  /** The factor that Rec 20 prints, in `per`; null if it prints none. */
  readonly rec20Size: string | null
  readonly qudt: string | null
  readonly qudtSize: string | null
  /** Sizes that are not the rounded exact size, and why. */
  readonly wrong?: { readonly rec20?: string; readonly qudt?: string }
}

const OLD_POUND = 'QUDT derives it from rounded pounds-force, wrong in the eighth digit'

type Row = readonly [
  unit: Unit,
  per: Unit,
  ucum: string,
  rec20: string | null,
  rec20Size: string | null,
  qudt: string | null,
  qudtSize: string | null,
  wrong?: PublishedCodes['wrong'],
]

const ROWS: readonly Row[] = [
  ['N.m', 'N.m', 'N.m', 'NU', '1', 'N-M', '1'],
  ['cN.m', 'N.m', 'cN.m', 'J72', '0.01', 'CentiN-M', '0.01'],
  ['dN.m', 'N.m', 'dN.m', 'DN', '0.1', 'DeciN-M', '0.1'],
  ['kN.m', 'N.m', 'kN.m', 'B48', '1000', 'KiloN-M', '1000'],
  ['lbf.ft', 'N.m', '[lbf_av].[ft_i]', 'M92', '1.355818', 'LB_F-FT', '1.35581800916358', { qudt: OLD_POUND }],
  [
    'lbf.in',
    'N.m',
    '[lbf_av].[in_i]',
    'F21',
    '0.112985',
    'LB_F-IN',
    '0.112984834096965',
    { qudt: OLD_POUND },
  ],
  [
    'ozf.in',
    'N.m',
    '[oz_av].[g].[in_i]',
    'L41',
    '0.007061552',
    'OZ_F-IN',
    '0.007061552425',
    { qudt: OLD_POUND },
  ],
  ['kgf.m', 'N.m', 'kgf.m', 'B38', '9.80665', 'KiloGM_F-M', '9.80665'],
  ['kgf.cm', 'N.m', 'kgf.cm', null, null, null, null],
  ['mL', 'mL', 'mL', 'MLT', '1', 'MilliL', '1'],
  ['L', 'mL', 'L', 'LTR', '1000', 'L', '1000'],
  ['cm3', 'mL', 'cm3', 'CMQ', '1', 'CentiM3', '1'],
  ['fl_oz_us', 'mL', '[foz_us]', 'OZA', '29.57353', 'OZ_VOL_US', '29.5735296'],
  ['pt_us', 'mL', '[pt_us]', 'PTL', '473.1765', 'PINT_US', '473.176473'],
  ['qt_us', 'mL', '[qt_us]', 'QTL', '946.3529', 'QT_US', '946.352946'],
  ['gal_us', 'L', '[gal_us]', 'GLL', '3.785412', 'GAL_US', '3.785411784'],
  ['fl_oz_imp', 'mL', '[foz_br]', 'OZI', '28.41306', 'OZ_VOL_UK', '28.4130625'],
  ['pt_imp', 'mL', '[pt_br]', 'PTI', '568.261', 'PINT_UK', '568.26125'],
  ['qt_imp', 'L', '[qt_br]', 'QTI', '1.1365225', 'QT_UK', '1.1365225'],
  [
    'gal_imp',
    'L',
    '[gal_br]',
    'GLI',
    '4.546092',
    'GAL_UK',
    '4.54609',
    { rec20: 'the gallon before the UK redefinition of 1995' },
  ],
  ['mm', 'm', 'mm', 'MMT', '0.001', 'MilliM', '0.001'],
  ['cm', 'm', 'cm', 'CMT', '0.01', 'CentiM', '0.01'],
  ['m', 'm', 'm', 'MTR', '1', 'M', '1'],
  ['in', 'mm', '[in_i]', 'INH', '25.4', 'IN', '25.4'],
  ['ft', 'm', '[ft_i]', 'FOT', '0.3048', 'FT', '0.3048'],
  ['km', 'km', 'km', 'KMT', '1', 'KiloM', '1'],
  ['mi', 'km', '[mi_i]', 'SMI', '1.609344', 'MI', '1.609344'],
  ['N', 'N', 'N', 'NEW', '1', 'N', '1'],
  ['kN', 'N', 'kN', 'B47', '1000', 'KiloN', '1000'],
  ['lbf', 'N', '[lbf_av]', 'C78', '4.448222', 'LB_F', '4.4482218148411', { qudt: OLD_POUND }],
  ['kPa', 'kPa', 'kPa', 'KPA', '1', 'KiloPA', '1'],
  ['MPa', 'kPa', 'MPa', 'MPA', '1000', 'MegaPA', '1000'],
  ['bar', 'kPa', 'bar', 'BAR', '100', 'BAR', '100'],
  ['psi', 'kPa', '[psi]', 'PS', '6.894757', 'PSI', '6.89475760251898', { qudt: OLD_POUND }],
  ['degC', 'degC', 'Cel', 'CEL', null, 'DEG_C', null],
  ['degF', 'degC', '[degF]', 'FAH', null, 'DEG_F', null],
  ['K', 'K', 'K', 'KEL', null, 'K', null],
  ['degC_diff', 'K_diff', 'K', 'KEL', null, 'K', '1'],
  ['K_diff', 'K_diff', 'K', 'KEL', null, 'K', '1'],
  ['g', 'kg', 'g', 'GRM', '0.001', 'GM', '0.001'],
  ['kg', 'kg', 'kg', 'KGM', '1', 'KiloGM', '1'],
  ['oz', 'kg', '[oz_av]', 'ONZ', '0.02834952', 'OZ', '0.028349523125'],
  ['lb', 'kg', '[lb_av]', 'LBR', '0.45359237', 'LB', '0.45359237'],
  ['h', 's', 'h', 'HUR', '3600', 'HR', '3600'],
  ['min', 's', 'min', 'MIN', '60', 'MIN', '60'],
  ['s', 's', 's', 'SEC', '1', 'SEC', '1'],
  ['d', 's', 'd', 'DAY', '86400', 'DAY', '86400'],
  ['deg', 'deg', 'deg', 'DD', null, 'DEG', null],
  ['km/h', 'km/h', 'km/h', 'KMH', null, 'KiloM-PER-HR', '1'],
  ['mph', 'km/h', '[mi_i]/h', 'HM', '1.609344', 'MI-PER-HR', '1.609344'],
  ['mm2/s', 'mm2/s', 'mm2/s', 'C17', '1', 'MilliM2-PER-SEC', '1'],
  ['mPa.s', 'mPa.s', 'mPa.s', 'C24', '1', 'MilliPA-SEC', '1'],
  ['kg/m3', 'kg/m3', 'kg/m3', 'KMQ', '1', 'KiloGM-PER-M3', '1'],
]

export const PUBLISHED_CODES: readonly PublishedCodes[] = published(
  {
    room: 'units',
    source: 'UCUM, UN/ECE Recommendation 20 and QUDT, codes and sizes',
    edition: '2.2 of 2024-06-17; revision 17; August 2026',
    place: 'ucum-essence.xml; Annex I code list; VOCAB_QUDT-UNITS-ALL.ttl',
    read: 'in the source',
    agrees: 'exactly; a size to the printed digits, but for the rows that say what the source has wrong',
    values: ({ rec20, rec20Size, qudt, qudtSize }) =>
      [rec20, rec20Size, qudt, qudtSize].filter((cell) => cell !== null).length + 1,
  },
  ROWS.map(([unit, per, ucum, rec20, rec20Size, qudt, qudtSize, wrong]) => ({
    unit,
    per,
    ucum,
    rec20,
    rec20Size,
    qudt,
    qudtSize,
    ...(wrong && { wrong }),
  })),
)
