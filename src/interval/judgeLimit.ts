import type { DueState } from './dueVerdict.js'

/**
 * The state of one limit from plain numbers: counts of a meter, or day numbers. Due at the point itself; overdue past the
 * point and its window; soon at `soonFrom` itself. A reading that is too old still shows `due soon`, never `not due`.
 */
export function judgeLimit(
  now: number,
  due: number,
  overdueAfter: number,
  soonFrom: number,
  stale: boolean,
): DueState {
  if (now > overdueAfter) return 'overdue'
  if (now >= due) return 'due'
  if (now >= soonFrom) return 'due soon'
  return stale ? 'cannot tell' : 'not due'
}

/** From where on a limit counts as soon: so much before it, or at a fraction of the way, whichever is earlier. */
export function soonPoint(from: number, due: number, before: number, fraction: number): number {
  // The factor takes back the last bit of the product, so that 0.07 of 100 is 7 and not 8.
  const byFraction = from + Math.ceil((due - from) * fraction * 0.999_999_999_999_999)
  const byDistance = due - before
  return Math.min(byFraction, byDistance)
}
