import type { Quantity } from '../quantity/index.js'
import { requireStraightThread } from './requireStraightThread.js'
import type { MetricThread } from './thread.js'

/**
 * Calculates the diameter at which a metric thread's ridges and grooves are equally wide, for friction in the
 * thread.
 *
 * d2 = d − 0.649519·P, with diameter d and pitch P.
 *
 * Source: ISO 68-1 profile, 3/4 of H = 0.866025·P, from memory.
 */
export function calculatePitchDiameter(thread: MetricThread): Quantity<'mm'> {
  requireStraightThread(thread, 'metric')
  return { value: thread.majorDiameter.value - 0.649519 * thread.pitch.value, unit: 'mm' }
}
