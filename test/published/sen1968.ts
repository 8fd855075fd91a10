import { published } from '../support/published.js'

/** Points, the median of their 21 pairwise slopes, and its confidence limits. */
export const SEN_1968 = published(
  {
    room: 'interval',
    source: 'P. K. Sen, Journal of the American Statistical Association 63',
    edition: '1968',
    place: 'worked example, as in the tests of SciPy’s `stats`',
    read: 'where it is quoted',
    agrees: 'to the printed digits',
    note: 'the joint intercept, 6, was calculated as the median of y − slope·x',
    values: () => 3,
  },
  {
    x: [1, 2, 3, 4, 10, 12, 18],
    y: [9, 15, 19, 20, 45, 55, 78],
    slope: 4,
    confidence: 0.93,
    low: '3.71',
    high: '4.38',
    intercept: 6,
  },
)

/** y = 0, 1, 1 at x = 0, 1, 2; y = 0, 1, 1 without the third of four points. */
export const SMALL = published(
  {
    room: 'interval',
    source: 'SciPy, tests of `stats` for the Theil–Sen estimator',
    edition: 'not named',
    place: 'small cases, joint intercept',
    read: 'in the source',
    agrees: 'exactly',
    values: () => 2,
  },
  [
    { x: [0, 1, 2], y: [0, 1, 1], slope: 0.5, intercept: 0 },
    { x: [0, 1, 3], y: [0, 1, 1], slope: 1 / 3, intercept: 0 },
  ],
)
