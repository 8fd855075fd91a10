import { asText } from '../base/index.js'
import type { GradeOil, OfferedOil } from '../spec/index.js'
import { oilReason } from './codes.js'
import type { JudgedAspect } from './oilMeets.js'

/** Designations of API 1560 in use, and the ones out of use. */
const KNOWN = ['GL-1', 'GL-2', 'GL-3', 'GL-4', 'GL-5', 'GL-6', 'MT-1']

/** The service category of an offered oil against the manual's. Internal: {@link oilMeets} is the way in. */
export function judgeCategory(
  permitted: GradeOil,
  offered: OfferedOil,
  yellowMetal: 'yes' | 'no' | 'not stated',
): JudgedAspect {
  if (permitted.category === undefined) {
    return { verdict: 'not judged', reasons: [oilReason('oil/category-not-stated', {})] }
  }
  const wanted = normalCategory(permitted.category)
  const labels = [...new Set((offered.categories ?? []).map(normalCategory))]
  if (labels.length === 0) {
    return { verdict: 'ask', reasons: [oilReason('oil/category-not-on-label', { category: wanted })] }
  }
  const both = { permitted: wanted, offered: labels }
  const harmless = yellowMetal === 'no'
  if (labels.includes('GL-4') && labels.includes('GL-5') && (wanted === 'GL-4' || wanted === 'GL-5')) {
    return harmless
      ? { verdict: 'yes', reasons: [oilReason('oil/category-on-label', { category: wanted })] }
      : { verdict: 'ask', reasons: [oilReason('oil/category-dual-rated', both)] }
  }
  if (labels.includes(wanted)) {
    return { verdict: 'yes', reasons: [oilReason('oil/category-on-label', { category: wanted })] }
  }
  if (wanted === 'GL-4' && labels.includes('GL-5')) {
    if (harmless) return { verdict: 'yes', reasons: [oilReason('oil/category-higher-no-yellow-metal', both)] }
    return yellowMetal === 'yes'
      ? { verdict: 'no', reasons: [oilReason('oil/category-harms-yellow-metal', both)] }
      : { verdict: 'ask', reasons: [oilReason('oil/category-yellow-metal-unknown', both)] }
  }
  return KNOWN.includes(wanted) && labels.every((label) => KNOWN.includes(label))
    ? { verdict: 'no', reasons: [oilReason('oil/category-differs', both)] }
    : { verdict: 'ask', reasons: [oilReason('oil/category-doubtful', both)] }
}

/** `API GL 5`, `gl5` and `GL-5` are one designation. */
function normalCategory(label: string): string {
  const text = asText(label)
  const match = /^(?:API)?[ -]?(GL|MT)[ -]?([0-9])$/.exec(text.slice(0, 20).trim().toUpperCase())
  return match === null ? text.trim() : `${match[1]}-${match[2]}`
}
