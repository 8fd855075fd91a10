import { type Reason, requireKnownKeys, requireNumber } from '../base/index.js'
import type { Quantity, TorqueUnit } from '../quantity/index.js'
import {
  divide,
  exactOf,
  findNearestDouble,
  LENGTH_FACTORS,
  multiply,
  requireQuantityOf,
  TORQUE_FACTORS,
} from '../quantity/index.js'
import type { MetricThread, UnifiedThread } from '../thread/index.js'
import { calculateProofLoad } from './calculateProofLoad.js'
import { torqueReason } from './codes.js'
import { exactTorque } from './exactTorque.js'

export interface ClampLoadInput {
  readonly torque: Quantity<TorqueUnit>
  readonly thread: MetricThread | UnifiedThread
  readonly propertyClass: string
  /** K of T = K·d·F. It is not a friction coefficient, and is never known exactly. */
  readonly nutFactor: number
  /** Scatter of the clamp load at the same torque, per cent. */
  readonly scatterPercent: number
}

export type ClampLoad =
  | {
      readonly verdict: 'load'
      readonly load: Quantity<'N'>
      /** The lowest load with scatter; `max` is the highest. */
      readonly min: Quantity<'N'>
      readonly max: Quantity<'N'>
      readonly proof: Quantity<'N'>
      /** load ÷ proof load. */
      readonly shareOfProof: number
      /** Whether even the highest load is at or below the proof load. */
      readonly belowProof: boolean
      readonly reasons: readonly Reason[]
    }
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason[] }

/**
 * Calculates the clamp load that a torque gives in a bolt of a stated class, to check a printed torque. Do not use it
 * for plugs with washers, and never to derive a torque that the manual does not state.
 *
 * F = T ÷ (K·d), with torque T, nut factor K and nominal diameter d.
 *
 * @param input - `torque` above 0; `thread` as `parseThread` gives it; `propertyClass` such as `8.8` or `grade 5`;
 *   `nutFactor` 0.05 to 1 (about 0.20 for plain steel, 0.15 plated); `scatterPercent` from 0 to below 100 (25 to 30 is
 *   usual)
 * @returns loads in N with the share of the proof load, or `cannot tell` if the proof load of the class is not known
 * @throws RangeError for values out of range, TypeError for wrong types
 *
 * Source: short form and K from IFI Technical Data N-12 and N-16, 5th edition, quoted in a machine manual. Scatter ±25
 * % by the IFI note. K is not a friction coefficient.
 *
 * @example
 * ```ts
 * import { clampLoad } from 'drivetrain-service/v1/torque'
 * const answer = clampLoad({
 *   torque: { value: 30.875, unit: 'lbf.ft' },
 *   thread: {
 *     kind: 'unified', designation: '3/8-16 UNC', form: 'parallel', series: 'UNC',
 *     majorDiameter: { value: 0.375, unit: 'in' }, threadsPerInch: 16,
 *   },
 *   propertyClass: 'grade 5', nutFactor: 0.2, scatterPercent: 25,
 * })
 * // What share of its proof load does a dry 3/8 grade 5 bolt get at 30.875 lbf·ft?
 * console.log(answer.verdict === 'load' && answer.shareOfProof.toFixed(2)) // => '0.75'
 * ```
 */
export function clampLoad(input: ClampLoadInput): ClampLoad {
  requireKnownKeys('input', input, ['torque', 'thread', 'propertyClass', 'nutFactor', 'scatterPercent'])
  const { torque, thread, propertyClass, nutFactor, scatterPercent } = input
  requireQuantityOf(TORQUE_FACTORS, 'torque', torque, { above: 0 })
  requireNumber('nutFactor', nutFactor, { min: 0.05, max: 1 })
  requireNumber('scatterPercent', scatterPercent, { min: 0, below: 100 })
  const proof = calculateProofLoad(thread, propertyClass)
  if (proof.verdict === 'cannot tell') return proof
  const { majorDiameter } = thread
  const diameter = multiply(exactOf(majorDiameter.value), exactOf(LENGTH_FACTORS.length[majorDiameter.unit]))
  const lever = multiply(exactOf(nutFactor), multiply(diameter, exactOf('0.001')))
  const toNewtons = (value: number): Quantity<'N'> => ({ value, unit: 'N' })
  const load = toNewtons(findNearestDouble(divide(exactTorque(torque, 'N.m'), lever)))
  const scatter = scatterPercent / 100
  const max = toNewtons(load.value * (1 + scatter))
  const belowProof = max.value <= proof.load.value
  const params = { max, proof: proof.load }
  return {
    verdict: 'load',
    load,
    min: toNewtons(load.value * (1 - scatter)),
    max,
    proof: proof.load,
    shareOfProof: load.value / proof.load.value,
    belowProof,
    reasons: [
      torqueReason('torque/clamp-load', { torque, nutFactor, force: load }),
      ...proof.reasons,
      torqueReason(belowProof ? 'torque/below-proof' : 'torque/above-proof', params),
    ],
  }
}
