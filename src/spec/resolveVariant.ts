import { type Reason, requireShape, type Shape } from '../base/index.js'
import { specReason } from './codes.js'
import { IDENTITY_FACTS, judgeFacts } from './judgeFacts.js'
import type { Identity } from './leaf.js'
import type { IdentityFact, Judgement } from './resolved.js'
import type { SpecSheet } from './specSheet.js'
import type { Id } from './specValue.js'

/** The variant of a machine, with the reasons. */
export type VariantVerdict =
  | {
      readonly verdict: 'selected'
      readonly variant: Id
      readonly by: 'stated' | 'conditions' | 'only variant'
      readonly reasons: readonly Reason[]
    }
  | {
      readonly verdict: 'cannot tell'
      /** Facts that would decide. `variant` itself always would. */
      readonly missing: readonly IdentityFact[]
      readonly candidates: readonly Id[]
      readonly reasons: readonly Reason[]
    }
  | {
      /**
       * Log and sheet contradict each other: the variant is not on the sheet, another fact excludes it, or no
       * variant fits.
       */
      readonly verdict: 'contradiction'
      readonly stated?: Id
      /** The variants that fit the other facts. */
      readonly candidates: readonly Id[]
      readonly reasons: readonly Reason[]
    }

const MACHINE: Shape = { machine: { variants: { '*': {} } } }
/** The model year is checked where it is compared. */
const FACTS_SHAPE: Shape = { 'variant?': 'string', 'serial?': 'string', 'market?': 'string' }

/**
 * Finds the variant of a machine. For a single figure, use {@link resolveLeaf}, which calls this function.
 *
 * Method: the stated variant, if the sheet has it and its condition is not `no`; else the one variant whose
 * condition is `yes` while all others are `no`; else the sheet's only variant if it has no condition; else
 * `cannot tell`. A variant without a condition is never excluded, so it stays a candidate until the log names
 * a variant.
 * @param sheet The sheet; only its machine is read.
 * @param identity The known facts of the machine.
 * @returns The variant, `cannot tell` with the missing facts and the candidates, or a contradiction; always with reasons.
 * @throws TypeError if an argument, or a part of it, has the wrong type; RangeError if `identity.modelYear` is not a whole
 * number.
 *
 * Source: house rule: better no figure than that of the wrong variant.
 * @example
 * ```ts
 * import { resolveVariant, type SpecSheet } from 'drivetrain-service/v1/spec'
 * const variants = {
 *   standard: { name: 'Standard', when: { modelYears: { to: 2019 } } },
 *   wide: { name: 'Wide track', when: { modelYears: { from: 2020 } } },
 * }
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants, axles: {}, supports: {} }
 * const sheet: SpecSheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} }
 * // Choosing the variant was built in 2021?
 * const built = resolveVariant(sheet, { modelYear: 2021 })
 * console.log('variant' in built && built.variant) // => 'wide'
 * ```
 */
export function resolveVariant(sheet: Pick<SpecSheet, 'machine'>, identity: Identity): VariantVerdict {
  requireShape('sheet', sheet, MACHINE)
  requireShape('identity', identity, FACTS_SHAPE, 'omit unknown facts')
  const judged = judgeVariants(sheet, identity)
  const possibleVariants = judged.filter(({ judgement }) => judgement.verdict !== 'no')
  const candidates = possibleVariants.map(({ variant }) => variant)
  const stated = identity.variant
  if (stated !== undefined) return judgeStated(judged, stated, candidates)
  const known = judged.map(({ variant }) => variant)
  if (judged.length > 0 && possibleVariants.length === 0) {
    const reasons = judged.flatMap(({ judgement }) => judgement.reasons)
    const firstReason = specReason('spec/variant-none-fits', { known })
    return { verdict: 'contradiction', candidates, reasons: [firstReason, ...reasons] }
  }
  const [first] = possibleVariants
  if (first !== undefined && possibleVariants.length === 1) {
    const { variant, judgement } = first
    if (judgement.verdict === 'yes') {
      const reasons = [specReason('spec/variant-selected', { variant }), ...judgement.reasons]
      return { verdict: 'selected', variant, by: 'conditions', reasons }
    }
    if (judged.length === 1 && sheet.machine.variants[variant]?.when === undefined) {
      const reasons = [specReason('spec/variant-only', { variant })]
      return { verdict: 'selected', variant, by: 'only variant', reasons }
    }
  }
  const missing = new Set(
    possibleVariants.flatMap(({ judgement }) =>
      judgement.verdict === 'cannot tell' ? judgement.missing : [],
    ),
  ).add('variant')
  return {
    verdict: 'cannot tell',
    missing: IDENTITY_FACTS.filter((fact) => missing.has(fact)),
    candidates,
    reasons: [
      specReason('spec/variant-not-known', { candidates }),
      ...possibleVariants.flatMap(({ judgement }) => judgement.reasons),
    ],
  }
}

/** The possible variants of a machine; undefined if log and sheet contradict each other. */
export function findCandidates(
  sheet: Pick<SpecSheet, 'machine'>,
  identity: Identity,
): readonly Id[] | undefined {
  const verdict = resolveVariant(sheet, identity)
  if (verdict.verdict === 'selected') return [verdict.variant]
  return verdict.verdict === 'cannot tell' ? verdict.candidates : undefined
}

interface JudgedVariant {
  readonly variant: Id
  readonly judgement: Judgement
}

function judgeVariants(sheet: Pick<SpecSheet, 'machine'>, identity: Identity): readonly JudgedVariant[] {
  return Object.entries(sheet.machine.variants).map(([variant, { when }]) => ({
    variant,
    judgement:
      when === undefined
        ? {
            verdict: 'cannot tell',
            missing: ['variant'],
            reasons: [specReason('spec/variant-without-condition', { variant })],
          }
        : judgeFacts(when, identity, identity.variant === undefined ? undefined : [identity.variant]),
  }))
}

function judgeStated(
  judged: readonly JudgedVariant[],
  variant: Id,
  candidates: readonly Id[],
): VariantVerdict {
  const statedVariant = judged.find((judgedVariant) => judgedVariant.variant === variant)
  const makeContradiction = (...reasons: readonly Reason[]): VariantVerdict => ({
    verdict: 'contradiction',
    stated: variant,
    candidates,
    reasons,
  })
  if (statedVariant === undefined) {
    const known = judged.map((judgedVariant) => judgedVariant.variant)
    return makeContradiction(specReason('spec/variant-not-on-sheet', { variant, known }))
  }
  if (statedVariant.judgement.verdict === 'no')
    return makeContradiction(
      specReason('spec/variant-contradicted', { variant, candidates }),
      ...statedVariant.judgement.reasons,
    )
  const reasons = [specReason('spec/variant-stated', { variant })]
  return { verdict: 'selected', variant, by: 'stated', reasons }
}
