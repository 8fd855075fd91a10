import type { OfferedOil, OilChoice } from '../spec/index.js'
import { oilReason } from './codes.js'
import type { JudgedAspect } from './oilMeets.js'

/** The limited-slip additive of an offered oil against the manual. Internal: {@link oilMeets} is the way in. */
export function judgeLimitedSlip(permitted: OilChoice, offered: OfferedOil): JudgedAspect {
  const label = offered.limitedSlip ?? 'not stated'
  const wanted = permitted.limitedSlip
  const additive = permitted.additive
  if (additive !== undefined && label === 'contains additive') {
    return {
      verdict: 'ask',
      reasons: [oilReason('oil/limited-slip-additive-twice', { name: additive.name })],
    }
  }
  if (wanted === 'either') {
    return { verdict: 'yes', reasons: [oilReason('oil/limited-slip-fits', { limitedSlip: wanted })] }
  }
  if (wanted === 'not stated') {
    return label === 'contains additive'
      ? { verdict: 'ask', reasons: [oilReason('oil/limited-slip-unasked', {})] }
      : { verdict: 'not judged', reasons: [oilReason('oil/limited-slip-not-stated', {})] }
  }
  if (additive !== undefined && wanted === 'required' && label === 'no additive') {
    return {
      verdict: 'yes',
      reasons: [oilReason('oil/limited-slip-additive-apart', { name: additive.name })],
    }
  }
  if (label === 'not stated') {
    return { verdict: 'ask', reasons: [oilReason('oil/limited-slip-not-on-label', { limitedSlip: wanted })] }
  }
  if ((wanted === 'required') === (label === 'contains additive')) {
    return { verdict: 'yes', reasons: [oilReason('oil/limited-slip-fits', { limitedSlip: wanted })] }
  }
  return wanted === 'required'
    ? { verdict: 'no', reasons: [oilReason('oil/limited-slip-additive-missing', {})] }
    : { verdict: 'no', reasons: [oilReason('oil/limited-slip-not-permitted', {})] }
}
