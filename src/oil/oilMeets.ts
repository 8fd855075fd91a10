import { asText, refuse, requireKnownKeys, requireObject } from '../base/index.js'
import type { Quantity, TemperatureUnit } from '../quantity/index.js'
import type { GradeOil, OfferedOil, OilChoice } from '../spec/index.js'
import { oilReason } from './codes.js'
import { judgeAmbientBand } from './judgeAmbientBand.js'
import { judgeViscosity } from './judgeViscosity.js'
import { normalCategory } from './normalCategory.js'
import type { AspectVerdict, JudgedAspect, OilVerdict } from './oilVerdict.js'

export interface OilCircumstances {
  /** Whether bronze or brass runs in the oil, as the sheet's `yellowMetal` says; absent there means `not stated`. */
  readonly yellowMetal: 'yes' | 'no' | 'not stated'
  /** The day's temperature; absent: the ambient band is not judged. */
  readonly ambient?: Quantity<TemperatureUnit>
}

/**
 * Whether an oil in stock is one that the manual permits, with viscosity, service category, limited-slip additive
 * and ambient band judged separately. It compares what the label says with what the manual says; it approves nothing that
 * neither of them says. A maker's fluid is met by its name on the label alone, never by viscosity.
 *
 * @param permitted - one choice of the sheet's oils; ask again for each choice
 * @param offered - the oil as its label describes it
 * @param circumstances - `yellowMetal` of the gearcase, and `ambient` where it counts
 * @returns `yes`, `no`, `cannot tell` (a fact is missing, and named) or `ask` (the answer is the maker's to give), each aspect, and
 *   every reason, those first that decide
 * @throws TypeError when an argument has the wrong shape or a circumstance is unknown, RangeError when `ambient` is not finite
 *
 * Source: SAE J306, J300 and ISO 3448; API service designations as reproduced by lubricant
 * firms. That GL-5 additives attack yellow metal, that a GL-4/GL-5 label then needs a question, and that GL-4 may replace
 * GL-3 and MT-1 a GL-1: common practice, no source.
 *
 * @example
 * ```ts
 * import { oilMeets } from 'drivetrain-service/v1/oil'
 * // The manual asks for 80W-90 GL-4 and bronze runs in the oil: is an 80W-90 GL-5 right?
 * const permitted = {
 *   kind: 'grade', grade: '80W-90', system: 'SAE J306', category: 'GL-4', limitedSlip: 'either',
 * } as const
 * const offered = { name: 'Invented 80W-90', grade: '80W-90', system: 'SAE J306', categories: ['GL-5'] } as const
 * const verdict = oilMeets(permitted, offered, { yellowMetal: 'yes' })
 * console.log(verdict.verdict, verdict.viscosity, verdict.category) // => no yes no
 * ```
 */
export function oilMeets(
  permitted: OilChoice,
  offered: OfferedOil,
  circumstances: OilCircumstances,
): OilVerdict {
  requireObject('permitted', permitted)
  requireObject('offered', offered)
  requireKnownKeys('circumstances', circumstances, ['yellowMetal', 'ambient'])
  const { yellowMetal, ambient } = circumstances
  if (yellowMetal !== 'yes' && yellowMetal !== 'no' && yellowMetal !== 'not stated') {
    throw refuse('circumstances.yellowMetal', yellowMetal, 'yes, no or not stated')
  }
  for (const key of ['categories', 'makerFluids'] as const)
    if (offered[key] !== undefined && !Array.isArray(offered[key]))
      throw refuse(`offered.${key}`, offered[key], 'a list')
  if (permitted.kind !== 'grade' && typeof permitted.name !== 'string')
    throw refuse('permitted.name', permitted.name, 'a text')
  const [viscosity, category] = judgeKind(permitted, offered, yellowMetal)
  const limitedSlip = judgeLimitedSlip(permitted, offered)
  const band = judgeAmbient(permitted, ambient)
  const aspects = new Set([viscosity, category, limitedSlip, band])
  const order = ORDER.flatMap((verdict) => [...aspects].filter((aspect) => aspect.verdict === verdict))
  const [first] = order
  return {
    verdict: first === undefined || first.verdict === 'not judged' ? 'yes' : first.verdict,
    viscosity: viscosity.verdict,
    category: category.verdict,
    limitedSlip: limitedSlip.verdict,
    ambient: band.verdict,
    reasons: order.flatMap(({ reasons }) => reasons),
  }
}

/** The deciding reason comes first, since some callers show only one. */
const ORDER: readonly AspectVerdict[] = ['no', 'cannot tell', 'ask', 'yes', 'not judged']

/** Viscosity and category of a grade oil; of a maker's fluid its name, once for both. */
function judgeKind(
  permitted: OilChoice,
  offered: OfferedOil,
  yellowMetal: OilCircumstances['yellowMetal'],
): [JudgedAspect, JudgedAspect] {
  if (permitted.kind === 'grade')
    return [judgeViscosity(permitted, offered), judgeCategory(permitted, offered, yellowMetal)]
  const name = judgeName(permitted.name, offered)
  return [name, name]
}

function judgeAmbient(permitted: OilChoice, ambient: Quantity<TemperatureUnit> | undefined): JudgedAspect {
  if (ambient === undefined) return { verdict: 'not judged', reasons: [] }
  const { verdict, reasons } = judgeAmbientBand(permitted.ambient, ambient)
  return { verdict, reasons }
}

/** Case and spaces of the name do not count; every letter and digit does. */
function judgeName(name: string, offered: OfferedOil): JudgedAspect {
  const plain = (text: unknown) => asText(text).trim().replace(/\s+/g, ' ').toUpperCase()
  const names = [offered.name, ...(offered.makerFluids ?? [])].map(plain)
  return names.includes(plain(name))
    ? { verdict: 'yes', reasons: [oilReason('oil/maker-fluid-named', { name })] }
    : {
        verdict: 'no',
        reasons: [
          oilReason('oil/maker-fluid-not-named', {
            name,
            offered: asText(offered.name),
          }),
        ],
      }
}

/** Designations of API 1560 in use, and the ones out of use. */
const API_CATEGORIES = ['GL-1', 'GL-2', 'GL-3', 'GL-4', 'GL-5', 'GL-6', 'MT-1']

/** Pairs in which the second is often used for the first, which few sell any more; common practice, no source. */
const NEAR_CATEGORIES = [
  ['GL-3', 'GL-4'],
  ['GL-1', 'MT-1'],
] as const

/** The service category of an offered oil against the manual's. */
function judgeCategory(
  permitted: GradeOil,
  offered: OfferedOil,
  yellowMetal: 'yes' | 'no' | 'not stated',
): JudgedAspect {
  if (permitted.category === undefined)
    return { verdict: 'not judged', reasons: [oilReason('oil/category-not-stated', {})] }
  const required = normalCategory(permitted.category)
  const labels = [...new Set((offered.categories ?? []).map(normalCategory))]
  if (labels.length === 0) {
    return {
      verdict: 'cannot tell',
      reasons: [oilReason('oil/category-not-on-label', { category: required })],
    }
  }
  const both = { permitted: required, offered: labels }
  const harmless = yellowMetal === 'no'
  if (required === 'GL-4' && labels.includes('GL-4') && labels.includes('GL-5') && !harmless)
    return { verdict: 'ask', reasons: [oilReason('oil/category-dual-rated', both)] }
  if (labels.includes(required))
    return { verdict: 'yes', reasons: [oilReason('oil/category-on-label', { category: required })] }
  if (required === 'GL-4' && labels.includes('GL-5')) {
    if (harmless) return { verdict: 'yes', reasons: [oilReason('oil/category-higher-no-yellow-metal', both)] }
    return yellowMetal === 'yes'
      ? { verdict: 'no', reasons: [oilReason('oil/category-harms-yellow-metal', both)] }
      : { verdict: 'cannot tell', reasons: [oilReason('oil/category-yellow-metal-unknown', both)] }
  }
  const near = NEAR_CATEGORIES.some(([own, other]) => own === required && labels.includes(other))
  return !near && API_CATEGORIES.includes(required) && labels.every((label) => API_CATEGORIES.includes(label))
    ? { verdict: 'no', reasons: [oilReason('oil/category-differs', both)] }
    : { verdict: 'ask', reasons: [oilReason('oil/category-doubtful', both)] }
}

/** The limited-slip additive of an offered oil against the manual. */
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
