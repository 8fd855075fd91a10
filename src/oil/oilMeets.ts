import { asText, refuse, requireKnownKeys, requireObject } from '../base/index.js'
import type { Quantity, TemperatureUnit } from '../quantity/index.js'
import type { GradeOil, OfferedOil, OilChoice } from '../spec/index.js'
import { oilReason } from './codes.js'
import { judgeAmbientBand } from './judgeAmbientBand.js'
import { judgeViscosity } from './judgeViscosity.js'
import { normalizeCategory } from './normalizeCategory.js'
import type { AspectVerdict, JudgedAspect, OilVerdict } from './oilVerdict.js'

export interface OilFacts {
  /** Whether the oil touches bronze or brass: the sheet's `yellowMetal`, or `not stated` if the sheet has no such key. */
  readonly yellowMetal: 'yes' | 'no' | 'not stated'
  /** The day's temperature; if absent, the ambient band is not judged. */
  readonly ambient?: Quantity<TemperatureUnit>
}

/**
 * Checks whether the manual permits an oil in stock. Viscosity, service category, limited-slip additive and ambient band
 * are judged separately, from the label and the manual alone. Only an oil with the name of the maker's fluid on its label
 * meets a maker's fluid; viscosity does not.
 *
 * @param permitted - one choice of the sheet's oils; call again for each choice
 * @param offered - the oil as described on its label
 * @param facts - `yellowMetal` of the gearcase, and `ambient` to judge the ambient band too
 * @returns `yes`, `no`, `cannot tell` (a reason names the missing fact) or `ask` (ask the maker), the verdict
 *   on each aspect, and every reason, deciding ones first
 * @throws TypeError if an argument has the wrong shape or `facts` has an unknown key, RangeError if `ambient` is
 *   not finite
 *
 * Source: SAE J306, J300 and ISO 3448. API service designations as quoted by lubricant makers. Common practice, no
 * source: GL-5 additives attack yellow metal, so the maker must confirm a GL-4/GL-5 label. GL-4 may replace GL-3, and
 * MT-1 may replace GL-1.
 *
 * @example
 * ```ts
 * import { oilMeets } from 'drivetrain-service/v1/oil'
 * // The manual requires 80W-90 GL-4, and the oil touches bronze: is an 80W-90 GL-5 right?
 * const permitted = {
 *   kind: 'grade', grade: '80W-90', system: 'SAE J306', category: 'GL-4', limitedSlip: 'either',
 * } as const
 * const offered = { name: 'Invented 80W-90', grade: '80W-90', system: 'SAE J306', categories: ['GL-5'] } as const
 * const verdict = oilMeets(permitted, offered, { yellowMetal: 'yes' })
 * console.log(verdict.verdict, verdict.viscosity, verdict.category) // => no yes no
 * ```
 */
export function oilMeets(permitted: OilChoice, offered: OfferedOil, facts: OilFacts): OilVerdict {
  requireObject('permitted', permitted)
  requireObject('offered', offered)
  requireKnownKeys('facts', facts, ['yellowMetal', 'ambient'])
  const { yellowMetal, ambient } = facts
  if (yellowMetal !== 'yes' && yellowMetal !== 'no' && yellowMetal !== 'not stated') {
    throw refuse('facts.yellowMetal', yellowMetal, 'yes, no or not stated')
  }
  for (const key of ['categories', 'makerFluids'] as const)
    if (offered[key] !== undefined && !Array.isArray(offered[key]))
      throw refuse(`offered.${key}`, offered[key], 'a list')
  if (permitted.kind !== 'grade' && typeof permitted.name !== 'string')
    throw refuse('permitted.name', permitted.name, 'a text')
  const [viscosity, category] = judgeViscosityAndCategory(permitted, offered, yellowMetal)
  const limitedSlip = judgeLimitedSlip(permitted, offered)
  const ambientAspect = judgeAmbient(permitted, ambient)
  const aspects = new Set([viscosity, category, limitedSlip, ambientAspect])
  const sortedAspects = VERDICT_ORDER.flatMap((verdict) =>
    [...aspects].filter((aspect) => aspect.verdict === verdict),
  )
  const [first] = sortedAspects
  return {
    verdict: first === undefined || first.verdict === 'not judged' ? 'yes' : first.verdict,
    viscosity: viscosity.verdict,
    category: category.verdict,
    limitedSlip: limitedSlip.verdict,
    ambient: ambientAspect.verdict,
    reasons: sortedAspects.flatMap(({ reasons }) => reasons),
  }
}

/** Deciding reasons come first: some callers show only one. */
const VERDICT_ORDER: readonly AspectVerdict[] = ['no', 'cannot tell', 'ask', 'yes', 'not judged']

/** Verdicts on viscosity and category; for a maker's fluid both are the verdict on its name. */
function judgeViscosityAndCategory(
  permitted: OilChoice,
  offered: OfferedOil,
  yellowMetal: OilFacts['yellowMetal'],
): [JudgedAspect, JudgedAspect] {
  if (permitted.kind === 'grade')
    return [judgeViscosity(permitted, offered), judgeCategory(permitted, offered, yellowMetal)]
  const nameAspect = judgeName(permitted.name, offered)
  return [nameAspect, nameAspect]
}

function judgeAmbient(permitted: OilChoice, ambient: Quantity<TemperatureUnit> | undefined): JudgedAspect {
  if (ambient === undefined) return { verdict: 'not judged', reasons: [] }
  const { verdict, reasons } = judgeAmbientBand(permitted.ambient, ambient)
  return { verdict, reasons }
}

/** Compares names, ignoring case and spaces. */
function judgeName(nameAspect: string, offered: OfferedOil): JudgedAspect {
  const normalizeName = (text: unknown) => asText(text).trim().replace(/\s+/g, ' ').toUpperCase()
  const names = [offered.name, ...(offered.makerFluids ?? [])].map(normalizeName)
  return names.includes(normalizeName(nameAspect))
    ? { verdict: 'yes', reasons: [oilReason('oil/maker-fluid-named', { name: nameAspect })] }
    : {
        verdict: 'no',
        reasons: [
          oilReason('oil/maker-fluid-not-named', {
            name: nameAspect,
            offered: asText(offered.name),
          }),
        ],
      }
}

/** Designations of API 1560, current and obsolete. */
const API_CATEGORIES = ['GL-1', 'GL-2', 'GL-3', 'GL-4', 'GL-5', 'GL-6', 'MT-1']

/**
 * Pairs of a category that is rarely sold now and the one often used instead; common practice, no source.
 */
const SUBSTITUTE_CATEGORIES = [
  ['GL-3', 'GL-4'],
  ['GL-1', 'MT-1'],
] as const

/** Compares the service category of an offered oil with the manual's. */
function judgeCategory(
  permitted: GradeOil,
  offered: OfferedOil,
  yellowMetal: 'yes' | 'no' | 'not stated',
): JudgedAspect {
  if (permitted.category === undefined)
    return { verdict: 'not judged', reasons: [oilReason('oil/category-not-stated', {})] }
  const required = normalizeCategory(permitted.category)
  const labels = [...new Set((offered.categories ?? []).map(normalizeCategory))]
  if (labels.length === 0) {
    return {
      verdict: 'cannot tell',
      reasons: [oilReason('oil/category-not-on-label', { category: required })],
    }
  }
  const categoryParams = { permitted: required, offered: labels }
  const isHarmless = yellowMetal === 'no'
  if (required === 'GL-4' && labels.includes('GL-4') && labels.includes('GL-5') && !isHarmless)
    return { verdict: 'ask', reasons: [oilReason('oil/category-dual-rated', categoryParams)] }
  if (labels.includes(required))
    return { verdict: 'yes', reasons: [oilReason('oil/category-on-label', { category: required })] }
  if (required === 'GL-4' && labels.includes('GL-5')) {
    if (isHarmless)
      return { verdict: 'yes', reasons: [oilReason('oil/category-higher-no-yellow-metal', categoryParams)] }
    return yellowMetal === 'yes'
      ? { verdict: 'no', reasons: [oilReason('oil/category-harms-yellow-metal', categoryParams)] }
      : { verdict: 'cannot tell', reasons: [oilReason('oil/category-yellow-metal-unknown', categoryParams)] }
  }
  const hasSubstitute = SUBSTITUTE_CATEGORIES.some(
    ([category, substitute]) => category === required && labels.includes(substitute),
  )
  return !hasSubstitute &&
    API_CATEGORIES.includes(required) &&
    labels.every((label) => API_CATEGORIES.includes(label))
    ? { verdict: 'no', reasons: [oilReason('oil/category-differs', categoryParams)] }
    : { verdict: 'ask', reasons: [oilReason('oil/category-doubtful', categoryParams)] }
}

/** Compares the limited-slip additive of an offered oil with the manual. */
function judgeLimitedSlip(permitted: OilChoice, offered: OfferedOil): JudgedAspect {
  const label = offered.limitedSlip ?? 'not stated'
  const rule = permitted.limitedSlip
  const additive = permitted.additive
  if (additive !== undefined && label === 'contains additive') {
    return {
      verdict: 'ask',
      reasons: [oilReason('oil/limited-slip-additive-twice', { name: additive.name })],
    }
  }
  if (rule === 'either')
    return { verdict: 'yes', reasons: [oilReason('oil/limited-slip-fits', { limitedSlip: rule })] }
  if (rule === 'not stated') {
    return label === 'contains additive'
      ? { verdict: 'ask', reasons: [oilReason('oil/limited-slip-not-mentioned', {})] }
      : { verdict: 'not judged', reasons: [oilReason('oil/limited-slip-not-stated', {})] }
  }
  if (additive !== undefined && rule === 'required' && label === 'no additive') {
    return {
      verdict: 'yes',
      reasons: [oilReason('oil/limited-slip-additive-separate', { name: additive.name })],
    }
  }
  if (label === 'not stated') {
    return {
      verdict: 'cannot tell',
      reasons: [oilReason('oil/limited-slip-not-on-label', { limitedSlip: rule })],
    }
  }
  if ((rule === 'required') === (label === 'contains additive'))
    return { verdict: 'yes', reasons: [oilReason('oil/limited-slip-fits', { limitedSlip: rule })] }
  return rule === 'required'
    ? { verdict: 'no', reasons: [oilReason('oil/limited-slip-additive-missing', {})] }
    : { verdict: 'no', reasons: [oilReason('oil/limited-slip-not-permitted', {})] }
}
