import type { PlannedWait } from '../service/index.js'

/** The seconds to show: for a pour, rounded to whole minutes, at least one. */
export function roundWaitSeconds(wait: PlannedWait | undefined): number | undefined {
  if (wait?.seconds === undefined || wait.kind !== 'pour') return wait?.seconds
  return Math.max(1, Math.round(wait.seconds / 60)) * 60
}
