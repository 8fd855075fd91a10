import { GRADE_EDITIONS, type GradeEdition, type GradeSystem } from './gradeTables.js'

/** Editions with known limits, by their first year, newest first. */
const EDITIONS_BY_YEAR: Readonly<Record<GradeSystem, readonly (readonly [number, GradeEdition])[]>> = {
  'SAE J306': [
    [2019, '2019'],
    [2005, '2005'],
    [1991, 'before 2005'],
  ],
  'SAE J300': [
    [2013, 'since 2013'],
    [1999, 'before 2013'],
  ],
  'ISO VG': [[1992, '1992']],
}

/**
 * Finds the edition in {@link GRADE_EDITIONS} that a sheet means: by its name, or as the edition in force in
 * the stated year; `not read` for an older year from 1920 on. SAE J306 of 2025 added grades and kept the
 * other limits (from a laboratory's summary, a secondary source). From memory: 1991 and 1998 share one table,
 * and SAE J300 had these limits from 1999 on.
 */
export function findEdition(system: GradeSystem, edition: string): GradeEdition | 'not read' | undefined {
  const known = GRADE_EDITIONS[system].find((name) => name === edition)
  if (known !== undefined || !/^(?:19[2-9]|20[0-9])[0-9]$/.test(edition)) return known
  return EDITIONS_BY_YEAR[system].find(([from]) => Number(edition) >= from)?.[1] ?? 'not read'
}
