import type { PlannedWait } from '../service/index.js'

/** The seconds to print: a pour to the nearest minute, at least one; the plan keeps the calculated seconds. */
export function shownSeconds(wait: PlannedWait | undefined): number | undefined {
  if (wait?.seconds === undefined || wait.kind !== 'pour') return wait?.seconds
  return Math.max(1, Math.round(wait.seconds / 60)) * 60
}
