import { giveReason } from './giveReason.js'
import type { IdentityFact, Judgement } from './resolved.js'

/** The answer for a missing fact. */
export function missFact(fact: IdentityFact): Judgement {
  return { verdict: 'cannot tell', missing: [fact], reasons: [giveReason('spec/fact-missing', { fact })] }
}
