import type { Unit } from '../unit.js'
import { UNIT_WORDS } from '../unitWords.js'

/** The codes of a unit in other systems, and the source of its factor. */
export interface UnitCodes {
  /** The unit's English name, in the singular. */
  readonly name: string
  /** The definition of its exact factor; each was read in GNU units 3.15 and in UCUM 2.2. */
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

/** Source, then the codes of UCUM, Recommendation 20 and QUDT; an empty text means no code. */
const ROWS: { readonly [U in Unit]: readonly [source: string, ...codes: string[]] } = {
  'N.m': [SI, 'N.m', 'NU', 'N-M'],
  'cN.m': [SI, 'cN.m', 'J72', 'CentiN-M'],
  'dN.m': [SI, 'dN.m', 'DN', 'DeciN-M'],
  'kN.m': [SI, 'kN.m', 'B48', 'KiloN-M'],
  'lbf.ft': [FORCE, '[lbf_av].[ft_i]', 'M92', 'LB_F-FT'],
  'lbf.in': [FORCE, '[lbf_av].[in_i]', 'F21', 'LB_F-IN'],
  'ozf.in': [FORCE, '[oz_av].[g].[in_i]', 'L41', 'OZ_F-IN'],
  'kgf.m': [GRAVITY, 'kgf.m', 'B38', 'KiloGM_F-M'],
  'kgf.cm': [GRAVITY, 'kgf.cm'],
  mL: [SI, 'mL', 'MLT', 'MilliL'],
  L: [SI, 'L', 'LTR', 'L'],
  cm3: [SI, 'cm3', 'CMQ', 'CentiM3'],
  fl_oz_us: [US_GALLON, '[foz_us]', 'OZA', 'OZ_VOL_US'],
  pt_us: [US_GALLON, '[pt_us]', 'PTL', 'PINT_US'],
  qt_us: [US_GALLON, '[qt_us]', 'QTL', 'QT_US'],
  gal_us: [US_GALLON, '[gal_us]', 'GLL', 'GAL_US'],
  fl_oz_imp: [IMPERIAL_GALLON, '[foz_br]', 'OZI', 'OZ_VOL_UK'],
  pt_imp: [IMPERIAL_GALLON, '[pt_br]', 'PTI', 'PINT_UK'],
  qt_imp: [IMPERIAL_GALLON, '[qt_br]', 'QTI', 'QT_UK'],
  gal_imp: [IMPERIAL_GALLON, '[gal_br]', 'GLI', 'GAL_UK'],
  mm: [SI, 'mm', 'MMT', 'MilliM'],
  cm: [SI, 'cm', 'CMT', 'CentiM'],
  m: [SI, 'm', 'MTR', 'M'],
  in: [YARD_AND_POUND, '[in_i]', 'INH', 'IN'],
  ft: [YARD_AND_POUND, '[ft_i]', 'FOT', 'FT'],
  km: [SI, 'km', 'KMT', 'KiloM'],
  mi: [YARD_AND_POUND, '[mi_i]', 'SMI', 'MI'],
  N: [SI, 'N', 'NEW', 'N'],
  kN: [SI, 'kN', 'B47', 'KiloN'],
  lbf: [FORCE, '[lbf_av]', 'C78', 'LB_F'],
  kPa: [SI, 'kPa', 'KPA', 'KiloPA'],
  MPa: [SI, 'MPa', 'MPA', 'MegaPA'],
  bar: ['bar of 100 kPa', 'bar', 'BAR', 'BAR'],
  psi: [FORCE, '[psi]', 'PS', 'PSI'],
  degC: [SI, 'Cel', 'CEL', 'DEG_C'],
  degF: ['Fahrenheit scale: 32 °F at 0 °C, 9 °F for 5 °C', '[degF]', 'FAH', 'DEG_F'],
  K: [SI, 'K', 'KEL', 'K'],
  degC_diff: [SI, 'K', 'KEL', 'K'],
  degF_diff: ['Fahrenheit scale: 32 °F at 0 °C, 9 °F for 5 °C'],
  K_diff: [SI, 'K', 'KEL', 'K'],
  g: [SI, 'g', 'GRM', 'GM'],
  kg: [SI, 'kg', 'KGM', 'KiloGM'],
  oz: [YARD_AND_POUND, '[oz_av]', 'ONZ', 'OZ'],
  lb: [YARD_AND_POUND, '[lb_av]', 'LBR', 'LB'],
  h: [SI, 'h', 'HUR', 'HR'],
  min: [SI, 'min', 'MIN', 'MIN'],
  s: [SI, 's', 'SEC', 'SEC'],
  d: [SI, 'd', 'DAY', 'DAY'],
  deg: [SI, 'deg', 'DD', 'DEG'],
  'km/h': [SI, 'km/h', 'KMH', 'KiloM-PER-HR'],
  mph: [YARD_AND_POUND, '[mi_i]/h', 'HM', 'MI-PER-HR'],
  'mm2/s': [SI, 'mm2/s', 'C17', 'MilliM2-PER-SEC'],
  'mPa.s': [SI, 'mPa.s', 'C24', 'MilliPA-SEC'],
  'kg/m3': [SI, 'kg/m3', 'KMQ', 'KiloGM-PER-M3'],
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
export const UNIT_CODES = /* @__PURE__ */ makeUnitCodes()

function makeUnitCodes() {
  const codes = Object.entries(ROWS).map(([unit, [source, ucum, rec20, qudt]]) => {
    const note = NOTES[unit as Unit]
    return [
      unit,
      {
        name: UNIT_WORDS[unit as Unit],
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
