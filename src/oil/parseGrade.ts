import { quoteValue, type Result, refuse } from '../base/index.js'
import type { OilCodes } from './codes.js'
import { GRADE_EDITIONS, GRADES_WITHOUT_LIMITS, type GradeSystem, listRows } from './gradeTables.js'

/** The parts of a viscosity grade; it has a winter or a summer part, or both. */
export interface Grade {
  readonly system: GradeSystem
  /** Normal spelling: `80W-90`, `90`, `80W`, `VG 220`. */
  readonly name: string
  /** Cold part, such as `80W`. */
  readonly winter?: string
  /** Hot part, such as `90`, or the ISO number, such as `220`. */
  readonly summer?: string
}

/**
 * Reads a viscosity grade from a label or a manual. For its limits in mm²/s, use {@link findGradeBand}.
 * Source: SAE J306 and J300 (multigrade = W grade and hot grade), ISO 3448, as quoted in lubricant makers'
 * charts.
 */
export function parseGrade(
  text: string,
  system: GradeSystem,
): Result<Grade, Pick<OilCodes, 'oil/grade-not-known'>> {
  if (typeof text !== 'string') throw refuse('text', text, 'a string')
  if (typeof system !== 'string' || !Object.hasOwn(GRADE_EDITIONS, system)) {
    throw new RangeError(
      `system must be one of ${Object.keys(GRADE_EDITIONS).join(', ')}, got ${quoteValue(system)}`,
    )
  }
  const upperCaseText = text.slice(0, 41).trim().toUpperCase()
  const isIso = system === 'ISO VG'
  const match = isIso
    ? /^(?:ISO[ -]?)?(?:VG[ -]?)?()([0-9]{1,4})$/.exec(upperCaseText)
    : /^(?:SAE ?)?(?:([0-9]{1,2}W)(?:[-–/ ]?(?=[0-9]))?)?([0-9]{1,3})?$/.exec(upperCaseText)
  const [, winter, summer] = match ?? []
  const parts = [winter, summer].filter((part) => part !== undefined && part !== '')
  const tables = GRADE_EDITIONS[system].map((edition) => listRows(system, edition))
  const isKnown = (part = '') =>
    tables.some((rows) => Object.hasOwn(rows, part)) || GRADES_WITHOUT_LIMITS[system].includes(part)
  if (parts.length === 0 || !parts.every(isKnown)) {
    const params = { grade: text.slice(0, 40), system, known: listGrades(tables) }
    const document = { kind: 'text' } as const
    return {
      ok: false,
      findings: [{ code: 'oil/grade-not-known', severity: 'error', document, path: '', params }],
    }
  }
  const value: Grade = {
    system,
    name: isIso ? `VG ${summer}` : parts.join('-'),
    ...(winter ? { winter } : {}),
    ...(summer ? { summer } : {}),
  }
  return { ok: true, value, findings: [] }
}

/** Every grade of a system in all its editions, W grades first. */
function listGrades(tables: readonly object[]): string[] {
  const rank = (name: string) => Number.parseInt(name, 10) + (name.endsWith('W') ? 0 : 10_000)
  const names = tables.flatMap((rows) => Object.keys(rows))
  return [...new Set(names)].sort((first, second) => rank(first) - rank(second))
}
