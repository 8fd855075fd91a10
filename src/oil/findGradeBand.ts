import { quoteValue, type Reason, requireObject } from '../base/index.js'
import { type Quantity, requireQuantity } from '../quantity/index.js'
import { type OilCodes, oilReason } from './codes.js'
import { GRADE_EDITIONS, type GradeEdition, type GradeSystem, listRows } from './gradeTables.js'
import { parseGrade } from './parseGrade.js'

/** The viscosity limits of a grade. */
export interface GradeBand {
  readonly kind: 'band'
  readonly system: GradeSystem
  readonly grade: string
  readonly edition: GradeEdition
  /** The temperature of the limits: 100 °C for SAE, 40 °C for ISO. */
  readonly at: Quantity<'degC'>
  /** Lower limit, inside the band. */
  readonly min: Quantity<'mm2/s'>
  /** Upper limit, outside the band (SAE). */
  readonly below?: Quantity<'mm2/s'>
  /** Upper limit, inside the band (ISO). */
  readonly max?: Quantity<'mm2/s'>
  /** W grades of J306: the maximum viscosity at a temperature. */
  readonly cold?: { readonly temperature: Quantity<'degC'>; readonly viscosity: Quantity<'mPa.s'> }
  /** `secondary source`: charts that quote the standard; `from memory`: not read in any source. */
  readonly basis: 'secondary source' | 'from memory'
}

interface NoGradeBand {
  readonly kind: 'cannot tell'
  readonly reasons: readonly Reason<keyof OilCodes>[]
}

/**
 * The limits of kinematic viscosity of a grade; a multigrade meets the hot band and the minimum of the W
 * grade. Source: SAE J306 (2019 and 2005, and the bands of 90, 140 and 250 before), SAE J300 and ISO 3448,
 * from a secondary source (lubricant makers' charts); rows that were not read are marked `from memory`.
 */
export function findGradeBand(input: {
  readonly system: GradeSystem
  readonly grade: string
  readonly edition: GradeEdition
}): GradeBand | NoGradeBand {
  requireObject('input', input)
  const { system, grade, edition } = input
  const parsed = parseGrade(grade, system)
  const editions: readonly string[] = GRADE_EDITIONS[system]
  if (!editions.includes(edition)) {
    throw new RangeError(
      `edition must be one of ${editions.join(', ')} for ${system}, got ${quoteValue(edition)}`,
    )
  }
  if (!parsed.ok) {
    const known = parsed.findings.flatMap(({ params }) => params.known as string[])
    return cannotTell('oil/grade-not-known', { grade: grade.slice(0, 40), system, known })
  }
  const { winter, summer, name } = parsed.value
  const rows = listRows(system, edition)
  const winterRow = winter === undefined ? undefined : rows[winter]
  const summerRow = summer === undefined ? undefined : rows[summer]
  if ((winter !== undefined && winterRow === undefined) || (summer !== undefined && summerRow === undefined))
    return cannotTell('oil/grade-not-in-edition', { grade: name, system, edition })
  const min = Math.max(winterRow?.min ?? 0, summerRow?.min ?? 0)
  if (summerRow?.max !== undefined && min >= summerRow.max)
    return cannotTell('oil/grade-impossible', { grade: name, system })
  const isIso = system === 'ISO VG'
  const upperLimit =
    summerRow?.max === undefined ? {} : { [isIso ? 'max' : 'below']: { value: summerRow.max, unit: 'mm2/s' } }
  const coldViscosity = { value: 150_000, unit: 'mPa.s' } as const
  return {
    kind: 'band',
    system,
    grade: name,
    edition,
    at: { value: isIso ? 40 : 100, unit: 'degC' },
    min: { value: min, unit: 'mm2/s' },
    ...upperLimit,
    ...(winterRow?.cold === undefined
      ? {}
      : {
          cold: { temperature: { value: winterRow.cold, unit: 'degC' as const }, viscosity: coldViscosity },
        }),
    basis: [winterRow, summerRow].some((row) => row?.basis === 'from memory')
      ? 'from memory'
      : 'secondary source',
  }
}

function cannotTell<Code extends keyof OilCodes>(code: Code, params: OilCodes[Code]): NoGradeBand {
  return { kind: 'cannot tell', reasons: [oilReason(code, params)] }
}

/**
 * Whether a kinematic viscosity at `band.at` is in a grade's band: min ≤ ν < below (SAE), min ≤ ν ≤ max (ISO).
 * Source: SAE J306 ("< 18.5") and ISO 3448 (midpoint ±10 %), from secondary sources.
 */
export function isWithinGrade(viscosity: Quantity<'mm2/s'>, band: GradeBand): boolean {
  requireQuantity('viscosity', viscosity, 'kinematicViscosity', { above: 0, max: Number.MAX_VALUE })
  requireObject('band', band)
  for (const key of ['min', 'below', 'max'] as const)
    if (key === 'min' || band[key] !== undefined)
      requireQuantity(`band.${key}`, band[key], 'kinematicViscosity')
  const { value } = viscosity
  if (value < band.min.value) return false
  if (band.below !== undefined && value >= band.below.value) return false
  return band.max === undefined || value <= band.max.value
}
