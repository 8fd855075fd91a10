/**
 * SAE J429 proof stress, ksi, by grade and size in inches (both ends included). R2: a university page quoting Shigley &
 * Mischke, 5th edition, page 341; the same numbers on a fastener maker's page. Grade 2 up to 3/4 in for bolts up to 6 in
 * long.
 */
export const SAE_J429: readonly (readonly [grade: string, from: number, to: number, ksi: string])[] = [
  ['1', 0.25, 1.5, '33'],
  ['2', 0.25, 0.75, '55'],
  ['2', 0.875, 1.5, '33'],
  ['4', 0.25, 1.5, '65'],
  ['5', 0.25, 1, '85'],
  ['5', 1.125, 1.5, '74'],
  ['5.2', 0.25, 1, '85'],
  ['7', 0.25, 1.5, '105'],
  ['8', 0.25, 1.5, '120'],
  ['8.2', 0.25, 1, '120'],
]
