/**
 * Check values of ISO 6789 for setting tools: facts from secondary sources (R2: a torque-wrench maker's user manual,
 * 2003 iso6789, and a tool maker's articles on the 2017 edition, Part 1 clause 5.1.3); the bands C, calculated by hand
 * as setting / 1.04 and setting / 0.96 (1.06 and 0.94), rounded to the digits shown.
 */
export const ISO_6789_BANDS = [
  { highest: 100, setting: 40, least: '38.46', most: '41.67' },
  { highest: 10, setting: 8, least: '7.547', most: '8.511' },
] as const

/** A tool marked 10 to 100 N·m: the verdict of each edition for a target in N·m. R2 facts, as above. */
export const ISO_6789_TARGETS = [
  { target: '10', in2017: 'low', in2003: 'refused' },
  { target: '15', in2017: 'low', in2003: 'refused' },
  { target: '20', in2017: 'ok', in2003: 'ok' },
  { target: '100', in2017: 'ok', in2003: 'ok' },
  { target: '105', in2017: 'refused', in2003: 'refused' },
] as const
