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
      answer: 'ask',
      reasons: [oilReason('oil/limited-slip-additive-twice', { name: additive.name })],
    }
  }
  if (wanted === 'either') {
    return { answer: 'yes', reasons: [oilReason('oil/limited-slip-fits', { limitedSlip: wanted })] }
  }
  if (wanted === 'not stated') {
    return label === 'contains additive'
      ? { answer: 'ask', reasons: [oilReason('oil/limited-slip-unasked', {})] }
      : { answer: 'not judged', reasons: [oilReason('oil/limited-slip-not-stated', {})] }
  }
  if (additive !== undefined && wanted === 'required' && label === 'no additive') {
    return {
      answer: 'yes',
      reasons: [oilReason('oil/limited-slip-additive-apart', { name: additive.name })],
    }
  }
  if (label === 'not stated') {
    return { answer: 'ask', reasons: [oilReason('oil/limited-slip-not-on-label', { limitedSlip: wanted })] }
  }
  if ((wanted === 'required') === (label === 'contains additive')) {
    return { answer: 'yes', reasons: [oilReason('oil/limited-slip-fits', { limitedSlip: wanted })] }
  }
  return wanted === 'required'
    ? { answer: 'no', reasons: [oilReason('oil/limited-slip-additive-missing', {})] }
    : { answer: 'no', reasons: [oilReason('oil/limited-slip-not-permitted', {})] }
}
