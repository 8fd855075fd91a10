import type { Unit } from '../unit.js'

/** The codes of a unit in other systems, and the source of its factor. */
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
  /** A note on the codes. */
  readonly note?: string
}

const SI = 'SI'
const YARD_AND_POUND = 'international yard and pound (1959)'
const GRAVITY = 'standard gravity 9.80665 m/s² (1901)'
const FORCE = `${GRAVITY}; ${YARD_AND_POUND}`
const US_GALLON = 'US gallon of 231 cubic inches'
const IMPERIAL_GALLON = 'imperial gallon of 4.54609 L'
const NO_CODE_FOR_DIFFERENCE = 'these codes are also used for temperatures; no code is only for differences'

const ROUNDED_FACTOR = 'QUDT and Recommendation 20 print rounded factors; we use the exact one'

/** Name, source, UCUM, Recommendation 20, QUDT; an empty text: no code. */
const ROWS: { readonly [U in Unit]: readonly [name: string, source: string, ...codes: string[]] } = {
  'N.m': ['newton metre', SI, 'N.m', 'NU', 'N-M'],
  'cN.m': ['centinewton metre', SI, 'cN.m', 'J72', 'CentiN-M'],
  'dN.m': ['decinewton metre', SI, 'dN.m', 'DN', 'DeciN-M'],
  'kN.m': ['kilonewton metre', SI, 'kN.m', 'B48', 'KiloN-M'],
  'lbf.ft': ['pound-foot', FORCE, '[lbf_av].[ft_i]', 'M92', 'LB_F-FT'],
  'lbf.in': ['pound-inch', FORCE, '[lbf_av].[in_i]', 'F21', 'LB_F-IN'],
  'ozf.in': ['ounce-inch', FORCE, '[oz_av].[g].[in_i]', 'L41', 'OZ_F-IN'],
  'kgf.m': ['kilogram-force metre', GRAVITY, 'kgf.m', 'B38', 'KiloGM_F-M'],
  'kgf.cm': ['kilogram-force centimetre', GRAVITY, 'kgf.cm'],
  mL: ['millilitre', SI, 'mL', 'MLT', 'MilliL'],
  L: ['litre', SI, 'L', 'LTR', 'L'],
  cm3: ['cubic centimetre', SI, 'cm3', 'CMQ', 'CentiM3'],
  fl_oz_us: ['US fluid ounce', US_GALLON, '[foz_us]', 'OZA', 'OZ_VOL_US'],
  pt_us: ['US liquid pint', US_GALLON, '[pt_us]', 'PTL', 'PINT_US'],
  qt_us: ['US liquid quart', US_GALLON, '[qt_us]', 'QTL', 'QT_US'],
  gal_us: ['US gallon', US_GALLON, '[gal_us]', 'GLL', 'GAL_US'],
  fl_oz_imp: ['imperial fluid ounce', IMPERIAL_GALLON, '[foz_br]', 'OZI', 'OZ_VOL_UK'],
  pt_imp: ['imperial pint', IMPERIAL_GALLON, '[pt_br]', 'PTI', 'PINT_UK'],
  qt_imp: ['imperial quart', IMPERIAL_GALLON, '[qt_br]', 'QTI', 'QT_UK'],
  gal_imp: ['imperial gallon', IMPERIAL_GALLON, '[gal_br]', 'GLI', 'GAL_UK'],
  mm: ['millimetre', SI, 'mm', 'MMT', 'MilliM'],
  cm: ['centimetre', SI, 'cm', 'CMT', 'CentiM'],
  m: ['metre', SI, 'm', 'MTR', 'M'],
  in: ['inch', YARD_AND_POUND, '[in_i]', 'INH', 'IN'],
  ft: ['foot', YARD_AND_POUND, '[ft_i]', 'FOT', 'FT'],
  km: ['kilometre', SI, 'km', 'KMT', 'KiloM'],
  mi: ['mile', YARD_AND_POUND, '[mi_i]', 'SMI', 'MI'],
  N: ['newton', SI, 'N', 'NEW', 'N'],
  kN: ['kilonewton', SI, 'kN', 'B47', 'KiloN'],
  lbf: ['pound-force', FORCE, '[lbf_av]', 'C78', 'LB_F'],
  kPa: ['kilopascal', SI, 'kPa', 'KPA', 'KiloPA'],
  MPa: ['megapascal', SI, 'MPa', 'MPA', 'MegaPA'],
  bar: ['bar', 'bar of 100 kPa', 'bar', 'BAR', 'BAR'],
  psi: ['pound-force per square inch', FORCE, '[psi]', 'PS', 'PSI'],
  degC: ['degree Celsius', SI, 'Cel', 'CEL', 'DEG_C'],
  degF: ['degree Fahrenheit', 'Fahrenheit scale: 32 °F at 0 °C, 9 °F for 5 °C', '[degF]', 'FAH', 'DEG_F'],
  K: ['kelvin', SI, 'K', 'KEL', 'K'],
  degC_diff: ['degree Celsius (temperature difference)', SI, 'K', 'KEL', 'K'],
  degF_diff: ['degree Fahrenheit (temperature difference)', 'Fahrenheit scale: 32 °F at 0 °C, 9 °F for 5 °C'],
  K_diff: ['kelvin (temperature difference)', SI, 'K', 'KEL', 'K'],
  g: ['gram', SI, 'g', 'GRM', 'GM'],
  kg: ['kilogram', SI, 'kg', 'KGM', 'KiloGM'],
  oz: ['ounce', YARD_AND_POUND, '[oz_av]', 'ONZ', 'OZ'],
  lb: ['pound', YARD_AND_POUND, '[lb_av]', 'LBR', 'LB'],
  h: ['hour', SI, 'h', 'HUR', 'HR'],
  min: ['minute', SI, 'min', 'MIN', 'MIN'],
  s: ['second', SI, 's', 'SEC', 'SEC'],
  d: ['day', SI, 'd', 'DAY', 'DAY'],
  deg: ['degree', SI, 'deg', 'DD', 'DEG'],
  'km/h': ['kilometre per hour', SI, 'km/h', 'KMH', 'KiloM-PER-HR'],
  mph: ['mile per hour', YARD_AND_POUND, '[mi_i]/h', 'HM', 'MI-PER-HR'],
  'mm2/s': ['square millimetre per second', SI, 'mm2/s', 'C17', 'MilliM2-PER-SEC'],
  'mPa.s': ['millipascal second', SI, 'mPa.s', 'C24', 'MilliPA-SEC'],
  'kg/m3': ['kilogram per cubic metre', SI, 'kg/m3', 'KMQ', 'KiloGM-PER-M3'],
}

const NOTES: { readonly [U in Unit]?: string } = {
  'lbf.ft': `code 85 and FT-LB_F mean energy, with the same factor; ${ROUNDED_FACTOR}`,
  'lbf.in': `code IA means mass in pounds times inches; ${ROUNDED_FACTOR}`,
  'ozf.in': `code 4Q means mass in ounces times inches; ${ROUNDED_FACTOR}`,
  'kgf.m': 'code B38 is marked as deprecated; M94 means mass in kilograms times metres',
  fl_oz_us: ROUNDED_FACTOR,
  gal_imp: 'Recommendation 20 prints 4.546 092 L, the value before 1995',
  ft: 'this is the international foot, not the US survey foot (code M51)',
  lbf: ROUNDED_FACTOR,
  psi: `PSI is not a code of Recommendation 20; ${ROUNDED_FACTOR}`,
  degC_diff: NO_CODE_FOR_DIFFERENCE,
  degF_diff: 'no system has a code only for Fahrenheit differences',
  K_diff: NO_CODE_FOR_DIFFERENCE,
  'mm2/s': 'equal to the centistokes (cSt, 4C, CentiST)',
  'mPa.s': 'equal to the centipoise (cP, C7, CentiPOISE)',
}

/**
 * The codes of every unit in other systems, for figures sent to stock, telematics or purchasing. If a system has no code for
 * a unit, the field is absent; a similar code is never used. Source: UCUM 2.2 (2024); UN/ECE Recommendation 20, revision
 * 17 (2021), annex I; QUDT unit vocabulary.
 */
export const UNIT_CODES = /* @__PURE__ */ readRows()

function readRows() {
  const codes = Object.entries(ROWS).map(([unit, [name, source, ucum, rec20, qudt]]) => {
    const note = NOTES[unit as Unit]
    return [
      unit,
      {
        name,
        source,
        ...(ucum && { ucum }),
        ...(rec20 && { rec20 }),
        ...(qudt && { qudt }),
        ...(note && { note }),
      },
    ]
  })
  return Object.fromEntries(codes) as { readonly [U in Unit]: UnitCodes }
}
