import { asText } from '../base/index.js'
import type { GradeOil, OfferedOil } from '../spec/index.js'
import { oilReason } from './codes.js'
import type { JudgedAspect } from './oilVerdict.js'

/** Designations of API 1560 in use, and the ones out of use. */
const KNOWN = ['GL-1', 'GL-2', 'GL-3', 'GL-4', 'GL-5', 'GL-6', 'MT-1']

/** The service category of an offered oil against the manual's. */
export function judgeCategory(
  permitted: GradeOil,
  offered: OfferedOil,
  yellowMetal: 'yes' | 'no' | 'not stated',
): JudgedAspect {
  if (permitted.category === undefined) {
    return { verdict: 'not judged', reasons: [oilReason('oil/category-not-stated', {})] }
  }
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
  if (labels.includes('GL-4') && labels.includes('GL-5') && (required === 'GL-4' || required === 'GL-5')) {
    return harmless
      ? { verdict: 'yes', reasons: [oilReason('oil/category-on-label', { category: required })] }
      : { verdict: 'ask', reasons: [oilReason('oil/category-dual-rated', both)] }
  }
  if (labels.includes(required)) {
    return { verdict: 'yes', reasons: [oilReason('oil/category-on-label', { category: required })] }
  }
  if (required === 'GL-4' && labels.includes('GL-5')) {
    if (harmless) return { verdict: 'yes', reasons: [oilReason('oil/category-higher-no-yellow-metal', both)] }
    return yellowMetal === 'yes'
      ? { verdict: 'no', reasons: [oilReason('oil/category-harms-yellow-metal', both)] }
      : { verdict: 'cannot tell', reasons: [oilReason('oil/category-yellow-metal-unknown', both)] }
  }
  return KNOWN.includes(required) && labels.every((label) => KNOWN.includes(label))
    ? { verdict: 'no', reasons: [oilReason('oil/category-differs', both)] }
    : { verdict: 'ask', reasons: [oilReason('oil/category-doubtful', both)] }
}

/** `API GL 5`, `gl5` and `GL-5` are one designation. */
function normalCategory(label: string): string {
  const text = asText(label)
  const match = /^(?:API)?[ -]?(GL|MT)[ -]?([0-9])$/.exec(text.slice(0, 20).trim().toUpperCase())
  return match === null ? text.trim() : `${match[1]}-${match[2]}`
}
