import type { Reason } from '../base/index.js'
import type { GradeOil, OfferedOil } from '../spec/index.js'
import { type OilCodes, oilReason } from './codes.js'
import { editionOf } from './editionOf.js'
import { type GradeBand, gradeBand } from './gradeBand.js'
import { GRADE_EDITIONS, type GradeEdition } from './gradeTables.js'
import { isWithinGrade } from './isWithinGrade.js'
import type { JudgedAspect } from './oilVerdict.js'
import { type Grade, parseGrade } from './parseGrade.js'

/** Compares the viscosity grade of an offered oil with the manual's. */
export function judgeViscosity(permitted: GradeOil, offered: OfferedOil): JudgedAspect {
  const required = parseGrade(permitted.grade, permitted.system)
  if (!required.ok) return unknownGrade(permitted.grade, permitted.system, required.findings)
  const { editions, reasons } = editionsOf(permitted)
  const bands = bandsOf(required.value, editions)
  if (offered.grade === undefined || offered.system === undefined) {
    const measured = measuredFor(bands, offered)
    if (measured === undefined) {
      const missing = oilReason('oil/grade-not-on-label', { permitted: required.value.name })
      return { verdict: 'cannot tell', reasons: [...reasons, missing] }
    }
    return { verdict: measured.inside ? 'ask' : 'no', reasons: [...reasons, measured.reason] }
  }
  const label = parseGrade(offered.grade, offered.system)
  if (!label.ok) return unknownGrade(offered.grade, offered.system, label.findings)
  const labelComparison = measuredFor(bandsOf(label.value, GRADE_EDITIONS[label.value.system]), offered)
  if (labelComparison !== undefined && !labelComparison.inside) {
    const params = { ...labelComparison.reason.params, grade: label.value.name }
    return ask([...reasons, { code: 'oil/label-contradicts-viscosity', params }])
  }
  if (label.value.system !== required.value.system) {
    const measured = measuredFor(bands, offered)
    const names = { permitted: required.value.name, offered: label.value.name }
    const systemsDiffer = oilReason('oil/systems-differ', names)
    if (measured === undefined) return ask([...reasons, systemsDiffer])
    return { verdict: measured.inside ? 'ask' : 'no', reasons: [...reasons, systemsDiffer, measured.reason] }
  }
  const compared = compareGrades(required.value, label.value, bands)
  return { ...compared, reasons: [...reasons, ...compared.reasons] }
}

function compareGrades(required: Grade, label: Grade, bands: readonly GradeBand[]): JudgedAspect {
  const names = { permitted: required.name, offered: label.name }
  if (required.name === label.name)
    return { verdict: 'yes', reasons: [oilReason('oil/grade-same', { grade: required.name })] }
  if (required.summer !== undefined && required.summer !== label.summer) {
    const others = bandsOf({ ...label, name: label.summer ?? label.name }, GRADE_EDITIONS[label.system])
    // in one edition of J306 no bands overlap: if they do, a later edition has moved the limits
    const isRenamed =
      label.summer !== undefined && bands.some((band) => others.some((other) => overlap(band, other)))
    return isRenamed && required.system === 'SAE J306'
      ? ask([oilReason('oil/grade-renamed', { ...names, system: required.system })])
      : { verdict: 'no', reasons: [oilReason('oil/grade-differs', names)] }
  }
  // a plain 80W is not much thicker than a 90 when hot
  if (required.summer === undefined && required.system === 'SAE J306' && Number(label.summer) > 90)
    return ask([oilReason('oil/hot-grade-thicker', names)])
  if (required.winter === undefined || required.winter === label.winter)
    return { verdict: 'yes', reasons: [oilReason('oil/multigrade-covers', names)] }
  if (label.winter === undefined)
    return { verdict: 'no', reasons: [oilReason('oil/winter-grade-missing', names)] }
  return Number.parseInt(label.winter, 10) < Number.parseInt(required.winter, 10)
    ? ask([oilReason('oil/winter-grade-colder', names)])
    : { verdict: 'no', reasons: [oilReason('oil/winter-grade-warmer', names)] }
}

/** The editions that a sheet may mean: the one it names, or all if it names no known edition. */
function editionsOf({ system, edition }: GradeOil) {
  const known: readonly GradeEdition[] = GRADE_EDITIONS[system]
  const meant = edition === undefined ? undefined : editionOf(system, edition)
  const named = known.filter((one) => one === meant)
  if (edition === undefined || named.length > 0)
    return { editions: edition === undefined ? known : named, reasons: [] }
  const params = { edition: edition.slice(0, 40), system, known }
  return { editions: known, reasons: [oilReason('oil/edition-not-known', params)] }
}

function bandsOf(grade: Grade, editions: readonly GradeEdition[]): GradeBand[] {
  return editions.flatMap((edition) => {
    const band = gradeBand({ system: grade.system, grade: grade.name, edition })
    return band.kind === 'band' ? [band] : []
  })
}

/** Whether the printed viscosity of the offered oil is in any of the bands; undefined if it has none. */
function measuredFor(bands: readonly GradeBand[], offered: OfferedOil) {
  const [first] = bands
  if (first === undefined) return undefined
  const viscosity = first.at.value === 40 ? offered.kv40 : offered.kv100
  if (viscosity === undefined) return undefined
  // 0 mm²/s is valid in a document, but is in no band
  const inside = viscosity.value > 0 && bands.some((band) => isWithinGrade(viscosity, band))
  const params = { grade: first.grade, viscosity, at: first.at }
  return {
    inside,
    reason: oilReason(inside ? 'oil/viscosity-inside-band' : 'oil/viscosity-outside-band', params),
  }
}

function overlap(first: GradeBand, second: GradeBand): boolean {
  const upperLimit = (band: GradeBand) => band.below?.value ?? band.max?.value ?? Infinity
  return first.min.value < upperLimit(second) && second.min.value < upperLimit(first)
}

function ask(reasons: readonly Reason<keyof OilCodes>[]): JudgedAspect {
  return { verdict: 'ask', reasons }
}

function unknownGrade(
  grade: string,
  system: string,
  findings: readonly { params: { known?: unknown } }[],
): JudgedAspect {
  const known = findings.flatMap(({ params }) => params.known as string[])
  return ask([oilReason('oil/grade-not-known', { grade: grade.slice(0, 40), system, known })])
}
