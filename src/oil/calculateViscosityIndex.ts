import type { Reason } from '../base/index.js'
import { type Quantity, requireQuantity } from '../quantity/index.js'
import { type OilCodes, oilReason } from './codes.js'

type ViscosityIndexVerdict =
  | {
      readonly verdict: 'viscosity index'
      /** Not rounded. */
      readonly value: number
      /** As ASTM D2270 reports it: a whole number, half to even. */
      readonly reported: number
      readonly procedure: 'A' | 'B'
      readonly reasons: readonly Reason<keyof OilCodes>[]
    }
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason<keyof OilCodes>[] }

const MIN_KV100 = { value: 2, unit: 'mm2/s' } as const

/**
 * U = ν at 40 °C, Y = ν at 100 °C. Procedure A, if U > H: VI = 100·(L − U)/(L − H). Procedure B, if U ≤ H:
 * VI = (10^N − 1)/0.00715 + 100, N = (log H − log U)/log Y. Source: ASTM D2270 (web copy; table of L and H from the open
 * `chemicals` package, 311 rows, linear between rows; above 70 mm²/s L = 0.8353Y² + 14.67Y − 216 and
 * H = 0.1684Y² + 11.85Y − 97).
 */
export function calculateViscosityIndex(
  kv40: Quantity<'mm2/s'>,
  kv100: Quantity<'mm2/s'>,
): ViscosityIndexVerdict {
  requireQuantity('kv40', kv40, 'kinematicViscosity', { above: 0, max: Number.MAX_VALUE })
  requireQuantity('kv100', kv100, 'kinematicViscosity', { above: 0, max: Number.MAX_VALUE })
  if (kv100.value < MIN_KV100.value) {
    return {
      verdict: 'cannot tell',
      reasons: [oilReason('oil/viscosity-index-undefined', { kv100, min: MIN_KV100 })],
    }
  }
  if (kv40.value <= kv100.value)
    return { verdict: 'cannot tell', reasons: [oilReason('oil/viscosities-reversed', { kv40, kv100 })] }
  const { l, h } = findBasicValues(kv100.value)
  const procedure = kv40.value > h ? 'A' : 'B'
  const value =
    procedure === 'A'
      ? (100 * (l - kv40.value)) / (l - h)
      : (10 ** (Math.log10(h / kv40.value) / Math.log10(kv100.value)) - 1) / 0.00715 + 100
  const reasons = [oilReason('oil/viscosity-index-by-d2270', { procedure, kv40, kv100 })]
  return { verdict: 'viscosity index', value, reported: roundHalfToEven(value), procedure, reasons }
}

/** L and H for a viscosity at 100 °C of 2 mm²/s or more. */
function findBasicValues(y: number): { l: number; h: number } {
  if (y > 70) return { l: 0.8353 * y * y + 14.67 * y - 216, h: 0.1684 * y * y + 11.85 * y - 97 }
  const { row, from, to } = findViscosityIndexRow(y)
  const interpolate = (column: readonly number[]) => {
    const [low = 0, high = 0] = [column[row], column[row + 1]]
    return low + ((high - low) * (y - from)) / (to - from)
  }
  return { l: interpolate(VISCOSITY_INDEX_L), h: interpolate(VISCOSITY_INDEX_H) }
}

function roundHalfToEven(value: number): number {
  const floor = Math.floor(value)
  const fraction = value - floor
  if (fraction !== 0.5) return fraction < 0.5 ? floor : floor + 1
  return floor % 2 === 0 ? floor : floor + 1
}

/**
 * Basic values of ASTM D2270 (reissued as D2270-10(2016)) for kinematic viscosities at 100 °C from 2 to 70 mm²/s, from
 * the open `chemicals` package (311 rows): steps of 0.1 up to 20, of 0.2 up to 30, of 0.5 up to 70.
 */
const VISCOSITY_INDEX_L: readonly number[] = [
  7.994, 8.64, 9.309, 10, 10.71, 11.45, 12.21, 13, 13.8, 14.63, 15.49, 16.36, 17.26, 18.18, 19.12, 20.09,
  21.08, 22.09, 23.13, 24.19, 25.32, 26.5, 27.75, 29.07, 30.48, 31.96, 33.52, 35.13, 36.79, 38.5, 40.23,
  41.99, 43.76, 45.53, 47.31, 49.09, 50.87, 52.64, 54.42, 56.2, 57.97, 59.74, 61.52, 63.32, 65.18, 67.12,
  69.16, 71.29, 73.48, 75.72, 78, 80.25, 82.39, 84.53, 86.66, 88.85, 91.04, 93.2, 95.43, 97.72, 100, 102.3,
  104.6, 106.9, 109.2, 111.5, 113.9, 116.2, 118.5, 120.9, 123.3, 125.7, 128, 130.4, 132.8, 135.3, 137.7,
  140.1, 142.7, 145.2, 147.7, 150.3, 152.9, 155.4, 158, 160.6, 163.2, 165.8, 168.5, 171.2, 173.9, 176.6,
  179.4, 182.1, 184.9, 187.6, 190.4, 193.3, 196.2, 199, 201.9, 204.8, 207.8, 210.7, 213.6, 216.6, 219.6,
  222.6, 225.7, 228.8, 231.9, 235, 238.1, 241.2, 244.3, 247.4, 250.6, 253.8, 257, 260.1, 263.3, 266.6, 269.8,
  273, 276.3, 279.6, 283, 286.4, 289.7, 293, 296.5, 300, 303.4, 306.9, 310.3, 313.9, 317.5, 321.1, 324.6,
  328.3, 331.9, 335.5, 339.2, 342.9, 346.6, 350.3, 354.1, 358, 361.7, 365.6, 369.4, 373.3, 377.1, 381, 384.9,
  388.9, 392.7, 396.7, 400.7, 404.6, 408.6, 412.6, 416.7, 420.7, 424.9, 429, 433.2, 437.3, 441.5, 445.7,
  449.9, 454.2, 458.4, 462.7, 467, 471.3, 475.7, 479.7, 483.9, 488.6, 493.2, 501.5, 510.8, 519.9, 528.8,
  538.4, 547.5, 556.7, 566.4, 575.6, 585.2, 595, 604.3, 614.2, 624.1, 633.6, 643.4, 653.8, 663.3, 673.7,
  683.9, 694.5, 704.2, 714.9, 725.7, 736.5, 747.2, 758.2, 769.3, 779.7, 790.4, 801.6, 812.8, 824.1, 835.5,
  847, 857.5, 869, 880.6, 892.3, 904.1, 915.8, 927.6, 938.6, 951.2, 963.4, 975.4, 987.1, 998.9, 1011, 1023,
  1055, 1086, 1119, 1151, 1184, 1217, 1251, 1286, 1321, 1356, 1391, 1427, 1464, 1501, 1538, 1575, 1613, 1651,
  1691, 1730, 1770, 1810, 1851, 1892, 1935, 1978, 2021, 2064, 2108, 2152, 2197, 2243, 2288, 2333, 2380, 2426,
  2473, 2521, 2570, 2618, 2667, 2717, 2767, 2817, 2867, 2918, 2969, 3020, 3073, 3126, 3180, 3233, 3286, 3340,
  3396, 3452, 3507, 3563, 3619, 3676, 3734, 3792, 3850, 3908, 3966, 4026, 4087, 4147, 4207, 4268, 4329, 4392,
  4455, 4517, 4580, 4645, 4709, 4773, 4839, 4905,
]

const VISCOSITY_INDEX_H: readonly number[] = [
  6.394, 6.894, 7.41, 7.944, 8.496, 9.063, 9.647, 10.25, 10.87, 11.5, 12.15, 12.82, 13.51, 14.21, 14.93,
  15.66, 16.42, 17.19, 17.97, 18.77, 19.56, 20.37, 21.21, 22.05, 22.92, 23.81, 24.71, 25.63, 26.57, 27.53,
  28.49, 29.46, 30.43, 31.4, 32.37, 33.34, 34.32, 35.29, 36.26, 37.23, 38.19, 39.17, 40.15, 41.13, 42.14,
  43.18, 44.24, 45.33, 46.44, 47.51, 48.57, 49.61, 50.69, 51.78, 52.88, 53.98, 55.09, 56.2, 57.31, 58.45,
  59.6, 60.74, 61.89, 63.05, 64.18, 65.32, 66.48, 67.64, 68.79, 69.94, 71.1, 72.27, 73.42, 74.57, 75.73,
  76.91, 78.08, 79.27, 80.46, 81.67, 82.87, 84.08, 85.3, 86.51, 87.72, 88.95, 90.19, 91.4, 92.65, 93.92,
  95.19, 96.45, 97.71, 98.97, 100.2, 101.5, 102.8, 104.1, 105.4, 106.7, 108, 109.4, 110.7, 112, 113.3, 114.7,
  116, 117.4, 118.7, 120.1, 121.5, 122.9, 124.2, 125.6, 127, 128.4, 129.8, 131.2, 132.6, 134, 135.4, 136.8,
  138.2, 139.6, 141, 142.4, 143.9, 145.3, 146.8, 148.2, 149.7, 151.2, 152.6, 154.1, 155.6, 157, 158.6, 160.1,
  161.6, 163.1, 164.6, 166.1, 167.7, 169.2, 170.7, 172.3, 173.8, 175.4, 177, 178.6, 180.2, 181.7, 183.3,
  184.9, 186.5, 188.1, 189.7, 191.3, 192.9, 194.6, 196.2, 197.8, 199.4, 201, 202.6, 204.3, 205.9, 207.6,
  209.3, 211, 212.7, 214.4, 216.1, 217.7, 219.4, 221.1, 222.8, 224.5, 226.2, 227.7, 229.5, 233, 236.4, 240.1,
  243.5, 247.1, 250.7, 254.2, 257.8, 261.5, 264.9, 268.6, 272.3, 275.8, 279.6, 283.3, 286.8, 290.5, 294.4,
  297.9, 301.8, 305.6, 309.4, 313, 317, 320.9, 324.9, 328.8, 332.7, 336.7, 340.5, 344.4, 348.4, 352.3, 356.4,
  360.5, 364.6, 368.3, 372.3, 376.4, 380.6, 384.6, 388.8, 393, 396.6, 401.1, 405.3, 409.5, 413.5, 417.6,
  421.7, 432.4, 443.2, 454, 464.9, 475.9, 487, 498.1, 509.6, 521.1, 532.5, 544, 555.6, 567.1, 579.3, 591.3,
  603.1, 615, 627.1, 639.2, 651.8, 664.2, 676.6, 689.1, 701.9, 714.9, 728.2, 741.3, 754.4, 767.6, 780.9,
  794.5, 808.2, 821.9, 835.5, 849.2, 863, 876.9, 890.9, 905.3, 919.6, 933.6, 948.2, 962.9, 977.5, 992.1, 1007,
  1021, 1036, 1051, 1066, 1082, 1097, 1112, 1127, 1143, 1159, 1175, 1190, 1206, 1222, 1238, 1254, 1270, 1286,
  1303, 1319, 1336, 1352, 1369, 1386, 1402, 1419, 1436, 1454, 1471, 1488, 1506, 1523, 1541, 1558,
]

/** The table row at or below a viscosity of 2 to 70 mm²/s, and the viscosities of that row and the next. */
function findViscosityIndexRow(kv100: number): { row: number; from: number; to: number } {
  const [start, first, tenths] = kv100 < 20 ? [20, 0, 1] : kv100 < 30 ? [200, 180, 2] : [300, 230, 5]
  // whole tenths, because sums of 0.1 are not exact
  const steps = Math.min(
    Math.floor((kv100 * 10 - start) / tenths + 1e-9),
    VISCOSITY_INDEX_L.length - 2 - first,
  )
  return {
    row: first + steps,
    from: (start + steps * tenths) / 10,
    to: (start + (steps + 1) * tenths) / 10,
  }
}
