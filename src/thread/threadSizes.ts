/**
 * Coarse pitch in mm by nominal diameter in mm. ISO 261 from memory; M6 to M24 agree with the stress areas of
 * ISO 898-1 (see the tests).
 */
export const COARSE_PITCHES: Readonly<Record<string, number>> = {
  '3': 0.5,
  '4': 0.7,
  '5': 0.8,
  '6': 1,
  '7': 1,
  '8': 1.25,
  '10': 1.5,
  '12': 1.75,
  '14': 2,
  '16': 2,
  '18': 2.5,
  '20': 2.5,
  '22': 2.5,
  '24': 3,
  '27': 3,
  '30': 3.5,
  '33': 3.5,
  '36': 4,
  '39': 4,
  '42': 4.5,
  '45': 4.5,
  '48': 5,
  '52': 5,
  '56': 5.5,
  '60': 5.5,
  '64': 6,
}

/** Fine pitches in mm of plugs and bolts in these sizes; ISO 261 from memory. */
export const FINE_PITCHES: readonly number[] = [0.35, 0.5, 0.75, 1, 1.25, 1.5, 2, 3, 4]

/**
 * Threads per inch of the pipe sizes; ISO 7-1 and ISO 228-1 share `iso`. From memory. Sizes without `npt`
 * exist only in ISO 228-1.
 */
export const PIPE_THREADS_PER_INCH: Readonly<
  Record<string, { readonly iso: number; readonly npt?: number }>
> = {
  '1/16': { iso: 28, npt: 27 },
  '1/8': { iso: 28, npt: 27 },
  '1/4': { iso: 19, npt: 18 },
  '3/8': { iso: 19, npt: 18 },
  '1/2': { iso: 14, npt: 14 },
  '5/8': { iso: 14 },
  '3/4': { iso: 14, npt: 14 },
  '7/8': { iso: 14 },
  '1': { iso: 11, npt: 11.5 },
  '1 1/8': { iso: 11 },
  '1 1/4': { iso: 11, npt: 11.5 },
  '1 1/2': { iso: 11, npt: 11.5 },
  '1 3/4': { iso: 11 },
  '2': { iso: 11, npt: 11.5 },
}

/**
 * Unified sizes (inches, or `#` and a number) with the threads per inch of each series; ASME B1.1 from
 * memory.
 */
export const UNIFIED_THREADS_PER_INCH: Readonly<
  Record<string, { readonly UNC?: number; readonly UNF?: number; readonly UNEF?: number }>
> = {
  '#4': { UNC: 40, UNF: 48 },
  '#5': { UNC: 40, UNF: 44 },
  '#6': { UNC: 32, UNF: 40 },
  '#8': { UNC: 32, UNF: 36 },
  '#10': { UNC: 24, UNF: 32 },
  '#12': { UNC: 24, UNF: 28, UNEF: 32 },
  '1/4': { UNC: 20, UNF: 28, UNEF: 32 },
  '5/16': { UNC: 18, UNF: 24, UNEF: 32 },
  '3/8': { UNC: 16, UNF: 24, UNEF: 32 },
  '7/16': { UNC: 14, UNF: 20, UNEF: 28 },
  '1/2': { UNC: 13, UNF: 20, UNEF: 28 },
  '9/16': { UNC: 12, UNF: 18, UNEF: 24 },
  '5/8': { UNC: 11, UNF: 18, UNEF: 24 },
  '11/16': { UNEF: 24 },
  '3/4': { UNC: 10, UNF: 16, UNEF: 20 },
  '13/16': { UNEF: 20 },
  '7/8': { UNC: 9, UNF: 14, UNEF: 20 },
  '15/16': { UNEF: 20 },
  '1': { UNC: 8, UNF: 12, UNEF: 20 },
  '1 1/16': { UNEF: 18 },
  '1 1/8': { UNC: 7, UNF: 12, UNEF: 18 },
  '1 3/16': { UNEF: 18 },
  '1 1/4': { UNC: 7, UNF: 12, UNEF: 18 },
  '1 5/16': { UNEF: 18 },
  '1 3/8': { UNC: 6, UNF: 12, UNEF: 18 },
  '1 7/16': { UNEF: 18 },
  '1 1/2': { UNC: 6, UNF: 12, UNEF: 18 },
  '1 5/8': { UNEF: 18 },
  '1 3/4': { UNC: 5 },
  '1 7/8': {},
}

/** Threads per inch of the constant-pitch series UN, for every size in inches; ASME B1.1 from memory. */
export const CONSTANT_THREADS_PER_INCH: readonly number[] = [4, 6, 8, 12, 16, 20, 28, 32]

/**
 * The systems that the letters of pipe threads mean: ISO 228-1, ISO 7-1, JIS B 0202 (PF) and B 0203 (PT, PS),
 * from memory. `BSP` alone may be either form.
 */
export const PIPE_LETTERS: Readonly<Record<string, 'G' | 'R' | 'Rc' | 'Rp' | 'NPT' | 'NPTF'>> = {
  G: 'G',
  BSPP: 'G',
  PF: 'G',
  R: 'R',
  BSPT: 'R',
  PT: 'R',
  RC: 'Rc',
  RP: 'Rp',
  PS: 'Rp',
  NPT: 'NPT',
  NPTF: 'NPTF',
}
