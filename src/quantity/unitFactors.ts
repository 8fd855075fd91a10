import type { Unit } from './unit.js'

/**
 * A unit in terms of the anchor of its measure: anchor = (value + `shift`) × `factor`. Both are exact: a decimal
 * string, or two with a stroke between them where no decimal ends.
 */
export interface UnitFactor {
  readonly factor: string
  readonly shift?: string
}

/** Exact factors from the statutory seeds; `UNIT_CODES` says where each was read. Import-free data. */
export const UNIT_FACTORS: { readonly [U in Unit]: UnitFactor } = {
  'N.m': { factor: '1' },
  'cN.m': { factor: '0.01' },
  'dN.m': { factor: '0.1' },
  'kN.m': { factor: '1000' },
  'lbf.ft': { factor: '1.3558179483314004' },
  'lbf.in': { factor: '0.1129848290276167' },
  'ozf.in': { factor: '0.00706155181422604375' },
  'kgf.m': { factor: '9.80665' },
  'kgf.cm': { factor: '0.0980665' },
  mL: { factor: '1' },
  L: { factor: '1000' },
  cm3: { factor: '1' },
  fl_oz_us: { factor: '29.5735295625' },
  pt_us: { factor: '473.176473' },
  qt_us: { factor: '946.352946' },
  gal_us: { factor: '3785.411784' },
  fl_oz_imp: { factor: '28.4130625' },
  pt_imp: { factor: '568.26125' },
  qt_imp: { factor: '1136.5225' },
  gal_imp: { factor: '4546.09' },
  mm: { factor: '1' },
  cm: { factor: '10' },
  m: { factor: '1000' },
  in: { factor: '25.4' },
  ft: { factor: '304.8' },
  km: { factor: '1' },
  mi: { factor: '1.609344' },
  N: { factor: '1' },
  kN: { factor: '1000' },
  lbf: { factor: '4.4482216152605' },
  kPa: { factor: '1' },
  MPa: { factor: '1000' },
  bar: { factor: '100' },
  psi: { factor: '4448.2216152605/645.16' },
  degC: { factor: '1', shift: '273.15' },
  degF: { factor: '5/9', shift: '459.67' },
  K: { factor: '1' },
  degC_diff: { factor: '1' },
  degF_diff: { factor: '5/9' },
  K_diff: { factor: '1' },
  g: { factor: '1' },
  kg: { factor: '1000' },
  oz: { factor: '28.349523125' },
  lb: { factor: '453.59237' },
  h: { factor: '3600' },
  min: { factor: '60' },
  s: { factor: '1' },
  d: { factor: '86400' },
  deg: { factor: '1' },
  'km/h': { factor: '1' },
  mph: { factor: '1.609344' },
  'mm2/s': { factor: '1' },
  'mPa.s': { factor: '1' },
  'kg/m3': { factor: '1' },
}
