/** Threads per inch of the pipe sizes; ISO 7-1 and ISO 228-1 share the left column. From memory. Import-free data. */
export const PIPE_THREADS_PER_INCH: Readonly<Record<string, { readonly iso: number; readonly npt: number }>> =
  {
    '1/16': { iso: 28, npt: 27 },
    '1/8': { iso: 28, npt: 27 },
    '1/4': { iso: 19, npt: 18 },
    '3/8': { iso: 19, npt: 18 },
    '1/2': { iso: 14, npt: 14 },
    '3/4': { iso: 14, npt: 14 },
    '1': { iso: 11, npt: 11.5 },
    '1 1/4': { iso: 11, npt: 11.5 },
    '1 1/2': { iso: 11, npt: 11.5 },
    '2': { iso: 11, npt: 11.5 },
  }

/** Unified sizes in inches with their threads per inch; ASME B1.1 from memory. Import-free data. */
export const UNIFIED_THREADS_PER_INCH: Readonly<
  Record<string, { readonly UNC: number; readonly UNF: number; readonly UNEF: number }>
> = {
  '1/4': { UNC: 20, UNF: 28, UNEF: 32 },
  '5/16': { UNC: 18, UNF: 24, UNEF: 32 },
  '3/8': { UNC: 16, UNF: 24, UNEF: 32 },
  '7/16': { UNC: 14, UNF: 20, UNEF: 28 },
  '1/2': { UNC: 13, UNF: 20, UNEF: 28 },
  '9/16': { UNC: 12, UNF: 18, UNEF: 24 },
  '5/8': { UNC: 11, UNF: 18, UNEF: 24 },
  '3/4': { UNC: 10, UNF: 16, UNEF: 20 },
  '7/8': { UNC: 9, UNF: 14, UNEF: 20 },
  '1': { UNC: 8, UNF: 12, UNEF: 20 },
}
