/**
 * Worked example of P. K. Sen, Journal of the American Statistical Association 63 (1968), as in the tests of SciPy's
 * `stats` (mark R), with the 21 pairwise slopes calculated from it (mark C).
 */
export const SEN_1968 = {
  x: [1, 2, 3, 4, 10, 12, 18],
  y: [9, 15, 19, 20, 45, 55, 78],
  slope: 4,
  confidence: 0.93,
  low: '3.71',
  high: '4.38',
  /** median of y − slope·x (mark C). */
  intercept: 6,
} as const

/** Small cases of the same tests (mark R): y = 0, 1, 1 at x = 0, 1, 2; y = 0, 1, 1 without the third of four points. */
export const SMALL = [
  { x: [0, 1, 2], y: [0, 1, 1], slope: 0.5, intercept: 0 },
  { x: [0, 1, 3], y: [0, 1, 1], slope: 1 / 3, intercept: 0 },
] as const
