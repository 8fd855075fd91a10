import type { Unit } from '../unit.js'

/** What other systems call a unit, and where its size comes from. */
export interface UnitCodes {
  /** The unit's English name, in the singular. */
  readonly name: string
  /** The definition that its exact factor follows from; each was read in GNU units 3.15 and in UCUM 2.2. */
  readonly source: string
  /** Unified Code for Units of Measure, case sensitive. */
  readonly ucum?: string
  /** UN/ECE Recommendation 20 common code. */
  readonly rec20?: string
  /** Local name in the QUDT unit vocabulary. */
  readonly qudt?: string
  /** What a reader of the codes should know. */
  readonly note?: string
}

const SI = 'SI'
const YARD_AND_POUND = 'international yard and pound (1959)'
const GRAVITY = 'standard gravity 9.80665 m/s² (1901)'
const FORCE = `${GRAVITY}; ${YARD_AND_POUND}`
const US_GALLON = 'US gallon of 231 cubic inches'
const IMPERIAL_GALLON = 'imperial gallon of 4.54609 L'
const DIFFERENCE = 'none of the codes says that a difference is meant'

const SIXTH_DIGIT = 'QUDT and Recommendation 20 print rounded factors; the exact one is used here'

/**
 * The codes of every unit in other systems, for figures sent to stock, telematics or purchasing. Where a system has no
 * code for a unit, the row has none: no near one is put in. Source: UCUM 2.2 (2024); UN/ECE Recommendation 20, revision
 * 17 (2021), annex I; QUDT unit vocabulary.
 */
export const UNIT_CODES: { readonly [U in Unit]: UnitCodes } = {
  'N.m': { name: 'newton metre', source: SI, ucum: 'N.m', rec20: 'NU', qudt: 'N-M' },
  'cN.m': { name: 'centinewton metre', source: SI, ucum: 'cN.m', rec20: 'J72', qudt: 'CentiN-M' },
  'dN.m': { name: 'decinewton metre', source: SI, ucum: 'dN.m', rec20: 'DN', qudt: 'DeciN-M' },
  'kN.m': { name: 'kilonewton metre', source: SI, ucum: 'kN.m', rec20: 'B48', qudt: 'KiloN-M' },
  'lbf.ft': {
    name: 'pound-foot',
    source: FORCE,
    ucum: '[lbf_av].[ft_i]',
    rec20: 'M92',
    qudt: 'LB_F-FT',
    note: `code 85 and FT-LB_F are the energy of the same factor; ${SIXTH_DIGIT}`,
  },
  'lbf.in': {
    name: 'pound-inch',
    source: FORCE,
    ucum: '[lbf_av].[in_i]',
    rec20: 'F21',
    qudt: 'LB_F-IN',
    note: `code IA is pounds of mass times inches; ${SIXTH_DIGIT}`,
  },
  'ozf.in': {
    name: 'ounce-inch',
    source: FORCE,
    ucum: '[oz_av].[g].[in_i]',
    rec20: 'L41',
    qudt: 'OZ_F-IN',
    note: `code 4Q is ounces of mass times inches; ${SIXTH_DIGIT}`,
  },
  'kgf.m': {
    name: 'kilogram-force metre',
    source: GRAVITY,
    ucum: 'kgf.m',
    rec20: 'B38',
    qudt: 'KiloGM_F-M',
    note: 'code B38 is marked as deprecated; M94 is kilograms of mass times metres',
  },
  'kgf.cm': { name: 'kilogram-force centimetre', source: GRAVITY, ucum: 'kgf.cm' },
  mL: { name: 'millilitre', source: SI, ucum: 'mL', rec20: 'MLT', qudt: 'MilliL' },
  L: { name: 'litre', source: SI, ucum: 'L', rec20: 'LTR', qudt: 'L' },
  cm3: { name: 'cubic centimetre', source: SI, ucum: 'cm3', rec20: 'CMQ', qudt: 'CentiM3' },
  fl_oz_us: {
    name: 'US fluid ounce',
    source: US_GALLON,
    ucum: '[foz_us]',
    rec20: 'OZA',
    qudt: 'OZ_VOL_US',
    note: SIXTH_DIGIT,
  },
  pt_us: { name: 'US liquid pint', source: US_GALLON, ucum: '[pt_us]', rec20: 'PTL', qudt: 'PINT_US' },
  qt_us: { name: 'US liquid quart', source: US_GALLON, ucum: '[qt_us]', rec20: 'QTL', qudt: 'QT_US' },
  gal_us: { name: 'US gallon', source: US_GALLON, ucum: '[gal_us]', rec20: 'GLL', qudt: 'GAL_US' },
  fl_oz_imp: {
    name: 'imperial fluid ounce',
    source: IMPERIAL_GALLON,
    ucum: '[foz_br]',
    rec20: 'OZI',
    qudt: 'OZ_VOL_UK',
  },
  pt_imp: { name: 'imperial pint', source: IMPERIAL_GALLON, ucum: '[pt_br]', rec20: 'PTI', qudt: 'PINT_UK' },
  qt_imp: { name: 'imperial quart', source: IMPERIAL_GALLON, ucum: '[qt_br]', rec20: 'QTI', qudt: 'QT_UK' },
  gal_imp: {
    name: 'imperial gallon',
    source: IMPERIAL_GALLON,
    ucum: '[gal_br]',
    rec20: 'GLI',
    qudt: 'GAL_UK',
    note: 'Recommendation 20 prints 4.546 092 L, the value before 1995',
  },
  mm: { name: 'millimetre', source: SI, ucum: 'mm', rec20: 'MMT', qudt: 'MilliM' },
  cm: { name: 'centimetre', source: SI, ucum: 'cm', rec20: 'CMT', qudt: 'CentiM' },
  m: { name: 'metre', source: SI, ucum: 'm', rec20: 'MTR', qudt: 'M' },
  in: { name: 'inch', source: YARD_AND_POUND, ucum: '[in_i]', rec20: 'INH', qudt: 'IN' },
  ft: {
    name: 'foot',
    source: YARD_AND_POUND,
    ucum: '[ft_i]',
    rec20: 'FOT',
    qudt: 'FT',
    note: 'the international foot, never the US survey foot (code M51)',
  },
  km: { name: 'kilometre', source: SI, ucum: 'km', rec20: 'KMT', qudt: 'KiloM' },
  mi: { name: 'mile', source: YARD_AND_POUND, ucum: '[mi_i]', rec20: 'SMI', qudt: 'MI' },
  N: { name: 'newton', source: SI, ucum: 'N', rec20: 'NEW', qudt: 'N' },
  kN: { name: 'kilonewton', source: SI, ucum: 'kN', rec20: 'B47', qudt: 'KiloN' },
  lbf: {
    name: 'pound-force',
    source: FORCE,
    ucum: '[lbf_av]',
    rec20: 'C78',
    qudt: 'LB_F',
    note: SIXTH_DIGIT,
  },
  kPa: { name: 'kilopascal', source: SI, ucum: 'kPa', rec20: 'KPA', qudt: 'KiloPA' },
  MPa: { name: 'megapascal', source: SI, ucum: 'MPa', rec20: 'MPA', qudt: 'MegaPA' },
  bar: { name: 'bar', source: 'bar of 100 kPa', ucum: 'bar', rec20: 'BAR', qudt: 'BAR' },
  psi: {
    name: 'pound-force per square inch',
    source: FORCE,
    ucum: '[psi]',
    rec20: 'PS',
    qudt: 'PSI',
    note: `PSI is no code of Recommendation 20; ${SIXTH_DIGIT}`,
  },
  degC: { name: 'degree Celsius', source: SI, ucum: 'Cel', rec20: 'CEL', qudt: 'DEG_C' },
  degF: {
    name: 'degree Fahrenheit',
    source: 'Fahrenheit scale: 32 °F at 0 °C, 9 °F for 5 °C',
    ucum: '[degF]',
    rec20: 'FAH',
    qudt: 'DEG_F',
  },
  K: { name: 'kelvin', source: SI, ucum: 'K', rec20: 'KEL', qudt: 'K' },
  degC_diff: {
    name: 'Celsius degree of difference',
    source: SI,
    ucum: 'K',
    rec20: 'KEL',
    qudt: 'K',
    note: DIFFERENCE,
  },
  degF_diff: {
    name: 'Fahrenheit degree of difference',
    source: 'Fahrenheit scale: 32 °F at 0 °C, 9 °F for 5 °C',
    note: 'no system has a code for a Fahrenheit difference alone',
  },
  K_diff: { name: 'kelvin of difference', source: SI, ucum: 'K', rec20: 'KEL', qudt: 'K', note: DIFFERENCE },
  g: { name: 'gram', source: SI, ucum: 'g', rec20: 'GRM', qudt: 'GM' },
  kg: { name: 'kilogram', source: SI, ucum: 'kg', rec20: 'KGM', qudt: 'KiloGM' },
  oz: { name: 'ounce', source: YARD_AND_POUND, ucum: '[oz_av]', rec20: 'ONZ', qudt: 'OZ' },
  lb: { name: 'pound', source: YARD_AND_POUND, ucum: '[lb_av]', rec20: 'LBR', qudt: 'LB' },
  h: { name: 'hour', source: SI, ucum: 'h', rec20: 'HUR', qudt: 'HR' },
  min: { name: 'minute', source: SI, ucum: 'min', rec20: 'MIN', qudt: 'MIN' },
  s: { name: 'second', source: SI, ucum: 's', rec20: 'SEC', qudt: 'SEC' },
  d: { name: 'day', source: SI, ucum: 'd', rec20: 'DAY', qudt: 'DAY' },
  deg: { name: 'degree', source: SI, ucum: 'deg', rec20: 'DD', qudt: 'DEG' },
  'km/h': { name: 'kilometre per hour', source: SI, ucum: 'km/h', rec20: 'KMH', qudt: 'KiloM-PER-HR' },
  mph: { name: 'mile per hour', source: YARD_AND_POUND, ucum: '[mi_i]/h', rec20: 'HM', qudt: 'MI-PER-HR' },
  'mm2/s': {
    name: 'square millimetre per second',
    source: SI,
    ucum: 'mm2/s',
    rec20: 'C17',
    qudt: 'MilliM2-PER-SEC',
    note: 'the centistokes (cSt, 4C, CentiST) is the same size',
  },
  'mPa.s': {
    name: 'millipascal second',
    source: SI,
    ucum: 'mPa.s',
    rec20: 'C24',
    qudt: 'MilliPA-SEC',
    note: 'the centipoise (cP, C7, CentiPOISE) is the same size',
  },
  'kg/m3': {
    name: 'kilogram per cubic metre',
    source: SI,
    ucum: 'kg/m3',
    rec20: 'KMQ',
    qudt: 'KiloGM-PER-M3',
  },
}
