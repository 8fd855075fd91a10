import type { Quantity } from '../quantity/index.js'
import { type MetricThread, pitchDiameter } from '../thread/index.js'
import { requireNumber, requireObject, requireQuantity } from './requireInput.js'

export interface NutFactorQuestion {
  readonly thread: MetricThread
  /** Friction coefficient in the thread. */
  readonly threadFriction: number
  /** Friction coefficient under the head. */
  readonly headFriction: number
  /** Mean diameter of the ring on which the head bears. */
  readonly bearingDiameter: Quantity<'mm'>
}

/**
 * The nut factor K of T = K·d·F from friction coefficients, for {@link clampLoad}: K is not a friction coefficient, and
 * is about 1.3 times one.
 *
 * K = (0.16·P + 0.58·d2·µG + D/2·µK) ÷ d, with pitch P, pitch diameter d2, nominal diameter d and bearing diameter D.
 *
 * Source: VDI 2230 short formula, from memory; it agrees with the printed fine-thread table of the 2001 edition (read
 * second hand) to 2 %.
 */
export function nutFactor(question: NutFactorQuestion): number {
  requireObject('question', question)
  const { thread, threadFriction, headFriction, bearingDiameter } = question
  const pitchDiameterMm = pitchDiameter(thread).value
  for (const [name, value] of Object.entries({ threadFriction, headFriction })) {
    requireNumber(name, value, 0.02, false)
    if (value > 1) throw new RangeError(`${name} must be 0.02 to 1, got ${value}`)
  }
  requireQuantity('bearingDiameter', bearingDiameter, 'length', 0, true)
  if (bearingDiameter.unit !== 'mm')
    throw new TypeError(`bearingDiameter.unit must be 'mm', got '${bearingDiameter.unit}'`)
  const lever =
    0.16 * thread.pitch.value +
    0.58 * pitchDiameterMm * threadFriction +
    (bearingDiameter.value / 2) * headFriction
  return lever / thread.majorDiameter.value
}
