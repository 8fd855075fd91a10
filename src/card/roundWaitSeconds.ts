import type { PlannedWait } from '../service/index.js'

/** Rounds a pouring time to whole minutes, at least one. Other waits keep their seconds. */
export function roundWaitSeconds(wait: PlannedWait | undefined): number | undefined {
  if (wait?.seconds === undefined || wait.kind !== 'pour') return wait?.seconds
  return Math.max(1, Math.round(wait.seconds / 60)) * 60
}
