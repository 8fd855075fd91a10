import { judgeFacts } from './judgeFacts.js'
import type { Condition, Id, Identity } from './leaf.js'
import type { Judgement } from './resolved.js'
import { resolveVariant } from './resolveVariant.js'
import type { SpecSheet } from './specSheet.js'

/**
 * Judges whether a condition of the sheet holds for one machine, for parts and overrides that only some machines
 * have. For a part with everything it sits in, use {@link judgePart}.
 *
 * Equation: `no` if any given part fails, else `cannot tell` if any is open, else `yes`; an empty condition holds.
 * Model years and serials include both ends. A serial is a prefix plus a number of fixed width; anything else,
 * and a prefix or market in the other case, is `cannot tell`. Where the variant is open, `variants` is still
 * answered if every candidate, or none, is in the list.
 * @param condition What must hold.
 * @param sheet The sheet; only its machine is read.
 * @param identity What is known of the machine.
 * @returns The answer with reasons; `missing` names the facts that would decide.
 * @throws TypeError when an argument, or a part of it, is of the wrong type; RangeError when `identity.modelYear` is no whole number.
 *
 * Source: house rule: three answers, so that a missing fact never becomes a guess.
 * @example
 * ```ts
 * import { judgeCondition } from 'drivetrain-service/v1/spec'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: {}, axles: {}, supports: {} }
 * // Is serial KA004512 among those from KA004500 on?
 * console.log(judgeCondition({ serials: { prefix: 'KA', from: '004500' } }, { machine }, { serial: 'KA004512' }).verdict) // => 'yes'
 * ```
 */
export function judgeCondition(
  condition: Condition,
  sheet: Pick<SpecSheet, 'machine'>,
  identity: Identity,
): Judgement {
  return judgeFacts(condition, identity, findCandidates(sheet, identity))
}

/** The variants that a machine may be; undefined where log and sheet contradict each other. */
export function findCandidates(
  sheet: Pick<SpecSheet, 'machine'>,
  identity: Identity,
): readonly Id[] | undefined {
  const verdict = resolveVariant(sheet, identity)
  if (verdict.verdict === 'selected') return [verdict.variant]
  return verdict.verdict === 'cannot tell' ? verdict.candidates : undefined
}
