import { published } from '../support/published.js'

/** 32 mm²/s at 40 °C and 5.4 mm²/s at 100 °C, with T = t + 273; digits as printed. */
export const D341_SPREADSHEET = published(
  {
    room: 'oil',
    source: 'ASTM D341, viscosity against temperature',
    edition: 'not named',
    place: 'a published spreadsheet that cites it',
    read: 'in the source',
    agrees: 'to the printed digits',
    values: () => 3,
  },
  {
    kv40: 32,
    kv100: 5.4,
    zeroCelsius: 273,
    intercept: '9.5259',
    slope: '3.7449',
    at80: '8.5',
  },
)

/** The same oil with T = t + 273.15. */
export const D341_KELVIN = published(
  {
    room: 'oil',
    source: 'ASTM D341',
    edition: 'not named',
    place: 'calculated outside this code from the equation',
    read: 'calculated',
    agrees: 'to the digits shown',
    values: () => 3,
  },
  {
    kv40: 32,
    kv100: 5.4,
    intercept: '9.530815',
    slope: '3.746578',
    at80: '8.533215',
  },
)

/** 135 mm²/s at 40 °C and 14.5 mm²/s at 100 °C, T = t + 273.15. */
export const D341_GEAR_OIL = published(
  {
    room: 'oil',
    source: 'ASTM D341',
    edition: 'not named',
    place: 'calculated outside this code from the equation',
    read: 'calculated',
    agrees: 'to the digits shown',
    values: ({ points }) => points.length,
  },
  {
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
  },
)

/** ρ15 in kg/m³, °C, factor, density. */
export const D1250_FORMULA = published(
  {
    room: 'oil',
    source: 'ASTM D1250, lubricating oils, K0 = 0 and K1 = 0.6278',
    edition: 'not named',
    place: 'calculated outside this code from the equation',
    read: 'calculated',
    agrees: 'to the digits shown',
    note: 'a printed value of Table 54D was searched and not found',
    values: () => 2,
  },
  [
    [850, 50, '0.973960', '827.866'],
    [870, 80, '0.952501', '828.675'],
    [890, 0, '1.010547', '899.386'],
    [890, 20, '0.996469', '886.858'],
    [890, 40, '0.982275', '874.225'],
    [890, 60, '0.967975', '861.498'],
    [890, 100, '0.939099', '835.798'],
    [900, 50, '0.975416', '877.874'],
  ],
)
