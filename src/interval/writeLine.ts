import type { DueCase } from './dueCase.js'
import type { DueLine, DueState } from './dueVerdict.js'
import { describePlace, type LimitScale } from './limitScale.js'
import { quantityOf } from './meterCount.js'
import { projectDate } from './projectDate.js'
import type { Limit, Limits } from './readLimits.js'

/** A line while it is made. */
export type OpenLine = { -readonly [Key in keyof DueLine]: DueLine[Key] }

/** The line of a limit whose due point is known. */
export function writeLine(
  { facts, start: { since } }: DueCase,
  by: keyof Limits,
  { asQuantity: limit, printed }: Limit,
  scale: LimitScale,
  due: number,
  verdict: DueState,
): OpenLine {
  const { unit, from, read: now } = scale
  const gone = scale.now - scale.start
  const way = due - scale.start
  const used = quantityOf(gone, unit)
  const left = quantityOf(due - scale.now, unit)
  const fraction = way > 0 ? gone / way : 1
  const duePoint = describePlace(scale, due)
  const dueOn = duePoint.date ?? projectDate(facts.log.pauses, scale.points, due)
  // Whole at once: a key that is added later makes every line of a fleet a second object.
  if (dueOn === undefined) {
    const line: OpenLine = { by, verdict, since, from, limit, used, left, duePoint, now, fraction }
    if (printed !== undefined) line.printed = printed
    return line
  }
  if (printed === undefined)
    return { by, verdict, since, from, limit, used, left, duePoint, now, fraction, dueOn }
  return { by, verdict, since, from, limit, used, left, duePoint, now, fraction, printed, dueOn }
}
