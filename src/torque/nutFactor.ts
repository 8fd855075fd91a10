import { requireNumber, requireObject } from '../base/index.js'
import { LENGTH_FACTORS, type Quantity, requireQuantityOf } from '../quantity/index.js'
import { calculatePitchDiameter, type MetricThread } from '../thread/index.js'

export interface NutFactorInput {
  readonly thread: MetricThread
  /** Friction coefficient in the thread. */
  readonly threadFriction: number
  /** Friction coefficient under the head. */
  readonly headFriction: number
  /** Mean diameter of the ring-shaped contact face under the head. */
  readonly bearingDiameter: Quantity<'mm'>
}

/**
 * Calculates the nut factor K of T = K·d·F from friction coefficients, for {@link clampLoad}. K is about 1.3
 * times a friction coefficient.
 *
 * K = (0.16·P + 0.58·d2·µG + D/2·µK) ÷ d, with pitch P, pitch diameter d2, nominal diameter d and bearing diameter D.
 *
 * Source: VDI 2230 short formula, from memory. It agrees with the printed fine-thread table of the 2001 edition (from a
 * secondary source) to 2 %.
 */
export function nutFactor(input: NutFactorInput): number {
  requireObject('input', input)
  const { thread, threadFriction, headFriction, bearingDiameter } = input
  const pitchDiameterMm = calculatePitchDiameter(thread).value
  requireNumber('threadFriction', threadFriction, { min: 0.02, max: 1 })
  requireNumber('headFriction', headFriction, { min: 0.02, max: 1 })
  requireQuantityOf(LENGTH_FACTORS, 'bearingDiameter', bearingDiameter, { above: 0 })
  if (bearingDiameter.unit !== 'mm')
    throw new TypeError(`bearingDiameter.unit must be 'mm', got '${bearingDiameter.unit}'`)
  const lever =
    0.16 * thread.pitch.value +
    0.58 * pitchDiameterMm * threadFriction +
    (bearingDiameter.value / 2) * headFriction
  return lever / thread.majorDiameter.value
}
