import type { Quantity } from '../quantity/index.js'
import { requireStraightThread } from './requireStraightThread.js'
import type { MetricThread } from './thread.js'

/**
 * The diameter at which a metric thread's ridges and grooves are equally wide, for friction in the thread.
 *
 * d2 = d − 0.649519·P, with diameter d and pitch P.
 *
 * @param thread - a metric thread as {@link parseThread} gives it
 * @returns d2 in mm, not rounded
 * @throws TypeError for anything else
 *
 * Source: ISO 68-1 profile, 3/4 of H = 0.866025·P, from memory.
 *
 * @example
 * ```ts
 * import { parseThread, pitchDiameter } from 'drivetrain-service/v1/thread'
 * const thread = parseThread('M8x1')
 * // What is the pitch diameter of an M8×1 thread?
 * thread.ok && thread.value.kind === 'metric' && pitchDiameter(thread.value).value.toFixed(4) // => '7.3505'
 * ```
 */
export function pitchDiameter(thread: MetricThread): Quantity<'mm'> {
  requireStraightThread(thread, 'metric')
  return { value: thread.majorDiameter.value - 0.649519 * thread.pitch.value, unit: 'mm' }
}
