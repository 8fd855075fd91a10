import { GRADE_EDITIONS, type GradeEdition, type GradeSystem } from './gradeTables.js'

/** Editions of SAE J306 by the year in which they came into force, newest first. */
const J306_YEARS: readonly (readonly [number, GradeEdition])[] = [
  [2019, '2019'],
  [2005, '2005'],
  [1991, 'before 2005'],
]

/**
 * The edition in {@link GRADE_EDITIONS} that a sheet means: the same name, or for SAE J306 the edition in force in the
 * stated year; `not read` for an older year. 2025 added grades and kept the other limits (from a secondary source, a
 * laboratory's summary); that 1991 and 1998 share one table is from memory.
 */
export function editionOf(system: GradeSystem, edition: string): GradeEdition | 'not read' | undefined {
  const known = GRADE_EDITIONS[system].find((one) => one === edition)
  if (known !== undefined || system !== 'SAE J306' || !/^(?:19[2-9]|20[0-9])[0-9]$/.test(edition))
    return known
  return J306_YEARS.find(([from]) => Number(edition) >= from)?.[1] ?? 'not read'
}
