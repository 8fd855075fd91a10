import type { Reason } from '../base/index.js'
import type { GradeOil, OfferedOil } from '../spec/index.js'
import { type OilCodes, oilReason } from './codes.js'
import { findEdition } from './findEdition.js'
import { findGradeBand, type GradeBand, isWithinGrade } from './findGradeBand.js'
import { GRADE_EDITIONS, type GradeEdition } from './gradeTables.js'
import type { JudgedAspect } from './oilVerdict.js'
import { type Grade, parseGrade } from './parseGrade.js'

/** Compares the viscosity grade of an offered oil with the manual's. */
export function judgeViscosity(permitted: GradeOil, offered: OfferedOil): JudgedAspect {
  const required = parseGrade(permitted.grade, permitted.system)
  if (!required.ok) return reportUnknownGrade(permitted.grade, permitted.system, required.findings)
  const { editions, reasons } = findEditions(permitted)
  const bands = findBands(required.value, editions)
  if (offered.grade === undefined || offered.system === undefined) {
    const measuredFit = judgeMeasuredViscosity(bands, offered)
    if (measuredFit === undefined) {
      const missing = oilReason('oil/grade-not-on-label', { permitted: required.value.name })
      return { verdict: 'cannot tell', reasons: [...reasons, missing] }
    }
    return { verdict: measuredFit.inside ? 'ask' : 'no', reasons: [...reasons, measuredFit.reason] }
  }
  const label = parseGrade(offered.grade, offered.system)
  if (!label.ok) return reportUnknownGrade(offered.grade, offered.system, label.findings)
  const labelComparison = judgeMeasuredViscosity(
    findBands(label.value, GRADE_EDITIONS[label.value.system]),
    offered,
  )
  if (labelComparison !== undefined && !labelComparison.inside) {
    const params = { ...labelComparison.reason.params, grade: label.value.name }
    return makeAskVerdict([...reasons, { code: 'oil/label-contradicts-viscosity', params }])
  }
  if (label.value.system !== required.value.system) {
    const measuredFit = judgeMeasuredViscosity(bands, offered)
    const names = { permitted: required.value.name, offered: label.value.name }
    const systemsReason = oilReason('oil/systems-differ', names)
    if (measuredFit === undefined) return makeAskVerdict([...reasons, systemsReason])
    return {
      verdict: measuredFit.inside ? 'ask' : 'no',
      reasons: [...reasons, systemsReason, measuredFit.reason],
    }
  }
  const comparison = compareGrades(required.value, label.value, bands)
  return { ...comparison, reasons: [...reasons, ...comparison.reasons] }
}

function compareGrades(required: Grade, label: Grade, bands: readonly GradeBand[]): JudgedAspect {
  const names = { permitted: required.name, offered: label.name }
  if (required.name === label.name)
    return { verdict: 'yes', reasons: [oilReason('oil/grade-same', { grade: required.name })] }
  if (required.summer !== undefined && required.summer !== label.summer) {
    const labelBands = findBands({ ...label, name: label.summer ?? label.name }, GRADE_EDITIONS[label.system])
    // the bands of one J306 edition never overlap: if these do, a later edition has moved the limits
    const isRenamed =
      label.summer !== undefined &&
      bands.some((band) => labelBands.some((other) => bandsOverlap(band, other)))
    return isRenamed && required.system === 'SAE J306'
      ? makeAskVerdict([oilReason('oil/grade-renamed', { ...names, system: required.system })])
      : { verdict: 'no', reasons: [oilReason('oil/grade-differs', names)] }
  }
  // a plain 80W is not much thicker than a 90 when hot
  if (required.summer === undefined && required.system === 'SAE J306' && Number(label.summer) > 90)
    return makeAskVerdict([oilReason('oil/hot-grade-thicker', names)])
  if (required.winter === undefined || required.winter === label.winter)
    return { verdict: 'yes', reasons: [oilReason('oil/multigrade-covers', names)] }
  if (label.winter === undefined)
    return { verdict: 'no', reasons: [oilReason('oil/winter-grade-missing', names)] }
  return Number.parseInt(label.winter, 10) < Number.parseInt(required.winter, 10)
    ? makeAskVerdict([oilReason('oil/winter-grade-colder', names)])
    : { verdict: 'no', reasons: [oilReason('oil/winter-grade-warmer', names)] }
}

/** The editions that a sheet may mean: the one it names, or all if it names no known edition. */
function findEditions({ system, edition }: GradeOil) {
  const known: readonly GradeEdition[] = GRADE_EDITIONS[system]
  const namedEdition = edition === undefined ? undefined : findEdition(system, edition)
  const matchingEditions = known.filter((edition) => edition === namedEdition)
  if (edition === undefined || matchingEditions.length > 0)
    return { editions: edition === undefined ? known : matchingEditions, reasons: [] }
  const params = { edition: edition.slice(0, 40), system, known }
  return { editions: known, reasons: [oilReason('oil/edition-not-known', params)] }
}

function findBands(grade: Grade, editions: readonly GradeEdition[]): GradeBand[] {
  return editions.flatMap((edition) => {
    const band = findGradeBand({ system: grade.system, grade: grade.name, edition })
    return band.kind === 'band' ? [band] : []
  })
}

/** Whether the printed viscosity of the offered oil is in any of the bands; undefined if it has none. */
function judgeMeasuredViscosity(bands: readonly GradeBand[], offered: OfferedOil) {
  const [first] = bands
  if (first === undefined) return undefined
  const viscosity = first.at.value === 40 ? offered.kv40 : offered.kv100
  if (viscosity === undefined) return undefined
  // 0 mm²/s is valid in a document, but in no band
  const isInside = viscosity.value > 0 && bands.some((band) => isWithinGrade(viscosity, band))
  const params = { grade: first.grade, viscosity, at: first.at }
  return {
    inside: isInside,
    reason: oilReason(isInside ? 'oil/viscosity-inside-band' : 'oil/viscosity-outside-band', params),
  }
}

function bandsOverlap(first: GradeBand, second: GradeBand): boolean {
  const findUpperLimit = (band: GradeBand) => band.below?.value ?? band.max?.value ?? Infinity
  return first.min.value < findUpperLimit(second) && second.min.value < findUpperLimit(first)
}

function makeAskVerdict(reasons: readonly Reason<keyof OilCodes>[]): JudgedAspect {
  return { verdict: 'ask', reasons }
}

function reportUnknownGrade(
  grade: string,
  system: string,
  findings: readonly { params: { known?: unknown } }[],
): JudgedAspect {
  const known = findings.flatMap(({ params }) => params.known as string[])
  return makeAskVerdict([oilReason('oil/grade-not-known', { grade: grade.slice(0, 40), system, known })])
}
