import type { OfferedOil, OilChoice } from '../spec/index.js'
import { oilReason } from './codes.js'
import type { JudgedAspect } from './oilVerdict.js'

/** The limited-slip additive of an offered oil against the manual. */
export function judgeLimitedSlip(permitted: OilChoice, offered: OfferedOil): JudgedAspect {
  const label = offered.limitedSlip ?? 'not stated'
  const rule = permitted.limitedSlip
  const additive = permitted.additive
  if (additive !== undefined && label === 'contains additive') {
    return {
      verdict: 'ask',
      reasons: [oilReason('oil/limited-slip-additive-twice', { name: additive.name })],
    }
  }
  if (rule === 'either') {
    return { verdict: 'yes', reasons: [oilReason('oil/limited-slip-fits', { limitedSlip: rule })] }
  }
  if (rule === 'not stated') {
    return label === 'contains additive'
      ? { verdict: 'ask', reasons: [oilReason('oil/limited-slip-unasked', {})] }
      : { verdict: 'not judged', reasons: [oilReason('oil/limited-slip-not-stated', {})] }
  }
  if (additive !== undefined && rule === 'required' && label === 'no additive') {
    return {
      verdict: 'yes',
      reasons: [oilReason('oil/limited-slip-additive-apart', { name: additive.name })],
    }
  }
  if (label === 'not stated') {
    return {
      verdict: 'cannot tell',
      reasons: [oilReason('oil/limited-slip-not-on-label', { limitedSlip: rule })],
    }
  }
  if ((rule === 'required') === (label === 'contains additive')) {
    return { verdict: 'yes', reasons: [oilReason('oil/limited-slip-fits', { limitedSlip: rule })] }
  }
  return rule === 'required'
    ? { verdict: 'no', reasons: [oilReason('oil/limited-slip-additive-missing', {})] }
    : { verdict: 'no', reasons: [oilReason('oil/limited-slip-not-permitted', {})] }
}
