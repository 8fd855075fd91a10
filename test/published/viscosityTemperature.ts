/**
 * Viscosity against temperature, ASTM D341.
 *
 * `D341_SPREADSHEET`: a published spreadsheet citing D341 (R), 32 mm²/s at 40 °C and 5.4 mm²/s at 100 °C, made with
 * T = t + 273; digits as printed there.
 */
export const D341_SPREADSHEET = {
  kv40: 32,
  kv100: 5.4,
  zeroCelsius: 273,
  intercept: '9.5259',
  slope: '3.7449',
  at80: '8.5',
} as const

/** The same oil with T = t + 273.15, calculated outside this project's code (C). */
export const D341_KELVIN = {
  kv40: 32,
  kv100: 5.4,
  intercept: '9.530815',
  slope: '3.746578',
  at80: '8.533215',
} as const

/** 135 mm²/s at 40 °C and 14.5 mm²/s at 100 °C, T = t + 273.15, calculated outside this project's code (C). */
export const D341_GEAR_OIL = {
  kv40: 135,
  kv100: 14.5,
  intercept: '8.732501',
  slope: '3.367159',
  points: [
    [-10, '6772.8'],
    [0, '2390.99'],
    [10, '984.31'],
    [15, '663.21'],
    [20, '459.852'],
    [25, '327.283'],
    [60, '53.1636'],
    [80, '25.7674'],
  ],
} as const

/**
 * Density of lubricating oils, ASTM D1250 group with K0 = 0 and K1 = 0.6278: calculated from the formula outside this
 * project's code (C); we could not read a printed value of Table 54D. ρ15 in kg/m³, °C, factor, density.
 */
export const D1250_FORMULA = [
  [850, 50, '0.973960', '827.866'],
  [870, 80, '0.952501', '828.675'],
  [890, 0, '1.010547', '899.386'],
  [890, 20, '0.996469', '886.858'],
  [890, 40, '0.982275', '874.225'],
  [890, 60, '0.967975', '861.498'],
  [890, 100, '0.939099', '835.798'],
  [900, 50, '0.975416', '877.874'],
] as const
