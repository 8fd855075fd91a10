/**
 * Exact factors from the statutory definitions, by measure: anchor = (value + shift) × factor. Each is a
 * decimal string, or a fraction of two if the decimals never end; `UNIT_CODES` gives the source of each.
 * Three measures are separate, since the torque functions load only these.
 */
export const TORQUE_FACTORS = {
  torque: {
    'N.m': '1',
    'cN.m': '0.01',
    'dN.m': '0.1',
    'kN.m': '1000',
    'lbf.ft': '1.3558179483314004',
    'lbf.in': '0.1129848290276167',
    'ozf.in': '0.00706155181422604375',
    'kgf.m': '9.80665',
    'kgf.cm': '0.0980665',
  },
} as const
export const LENGTH_FACTORS = { length: { mm: '1', cm: '10', m: '1000', in: '25.4', ft: '304.8' } } as const
export const ANGLE_FACTORS = { angle: { deg: '1' } } as const

export const FACTORS_BY_MEASURE = /* @__PURE__ */ joinMeasures()

function joinMeasures() {
  return {
    ...TORQUE_FACTORS,
    volume: {
      mL: '1',
      L: '1000',
      cm3: '1',
      fl_oz_us: '29.5735295625',
      pt_us: '473.176473',
      qt_us: '946.352946',
      gal_us: '3785.411784',
      fl_oz_imp: '28.4130625',
      pt_imp: '568.26125',
      qt_imp: '1136.5225',
      gal_imp: '4546.09',
    },
    ...LENGTH_FACTORS,
    distance: { km: '1', mi: '1.609344' },
    force: { N: '1', kN: '1000', lbf: '4.4482216152605' },
    pressure: { kPa: '1', MPa: '1000', bar: '100', psi: '4448.2216152605/645.16' },
    temperature: { degC: '1', degF: '5/9', K: '1' },
    temperatureDifference: { degC_diff: '1', degF_diff: '5/9', K_diff: '1' },
    mass: { g: '1', kg: '1000', oz: '28.349523125', lb: '453.59237' },
    duration: { h: '3600', min: '60', s: '1', d: '86400' },
    ...ANGLE_FACTORS,
    speed: { 'km/h': '1', mph: '1.609344' },
    kinematicViscosity: { 'mm2/s': '1' },
    dynamicViscosity: { 'mPa.s': '1' },
    density: { 'kg/m3': '1' },
  } as const
}

/** The zero of a temperature scale above absolute zero, in degrees of that scale. */
export const TEMPERATURE_SHIFTS: { readonly [unit: string]: string } = { degC: '273.15', degF: '459.67' }
