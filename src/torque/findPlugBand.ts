import type { Reason } from '../base/index.js'
import { findPlugTorqueBand, type PlugHousing, type PlugTorqueBand, parseThread } from '../thread/index.js'
import { torqueReason } from './codes.js'

/** Finds the usual torques of a plug with this thread, or the reason why they are unknown. */
export function findPlugBand(
  thread: string | undefined,
  housing: PlugHousing,
): { readonly designation: string; readonly band: PlugTorqueBand } {
  const cannotTell = (reason: Reason) => ({
    designation: thread ?? '',
    band: { verdict: 'cannot tell' as const, reasons: [reason] },
  })
  if (thread === undefined) return cannotTell(torqueReason('torque/thread-missing', {}))
  const parsedThread = parseThread(thread)
  if (!parsedThread.ok) return cannotTell(torqueReason('torque/thread-unreadable', { thread }))
  return {
    designation: parsedThread.value.designation,
    band: findPlugTorqueBand(parsedThread.value, housing),
  }
}
