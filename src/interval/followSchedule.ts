import type { CountFrom } from '../spec/specSheet.js'

/** How points of one limit are reckoned: hours and distances as counts, the calendar as day numbers. */
export interface PointRule {
  /** `times` repeats after an anchor; of the first stretch (`withFirst`), after its first limit. */
  readonly point: (anchor: number, withFirst: boolean, times: number) => number
  readonly late: (point: number) => number
  /** The earliest place where a service answers the point; `NaN`: the manual states no window. */
  readonly early: (point: number) => number
}

export interface ScheduledPoint {
  /** The next point; NaN where a completion's place is not known. */
  readonly due: number
  readonly note?: 'early-answers-the-point' | 'early-leaves-the-point' | 'count-moved'
  /** The point that the note speaks of. */
  readonly notedPoint?: number
}

/**
 * The next due point when the count keeps to a schedule. `schedule`: points stand where they stand; a service answers
 * the point that it comes after, or the coming one when it comes inside the window before it (no window stated: in the
 * second half of the way to it, house rule); an earlier one leaves the point. `schedule inside window`: inside the
 * window on both sides the points stand; outside it the count starts again from the completion.
 */
export function followSchedule(
  countFrom: Exclude<CountFrom, 'completion'>,
  zero: number,
  completions: readonly number[],
  rule: PointRule,
): ScheduledPoint {
  let anchor = zero
  let withFirst = true
  let times = 0
  let note: ScheduledPoint['note']
  let notedPoint = Number.NaN
  for (const completion of completions) {
    const point = rule.point(anchor, withFirst, times)
    if (Number.isNaN(completion) || Number.isNaN(point)) return { due: Number.NaN }
    note = undefined
    notedPoint = point
    const early = rule.early(point)
    if (countFrom === 'schedule inside window') {
      if (completion >= (Number.isNaN(early) ? point : early) && completion <= rule.late(point)) {
        times += 1
        if (completion < point) note = 'early-answers-the-point'
      } else {
        anchor = completion
        withFirst = false
        times = 1
        note = 'count-moved'
      }
    } else if (completion >= point) {
      times += 1
      for (let next = rule.point(anchor, withFirst, times); next <= completion; times += 1) {
        next = rule.point(anchor, withFirst, times + 1)
      }
    } else {
      const before = times > 0 || !withFirst ? rule.point(anchor, withFirst, times - 1) : anchor
      const answers = Number.isNaN(early) ? (completion - before) * 2 > point - before : completion >= early
      if (answers) times += 1
      note = answers ? 'early-answers-the-point' : 'early-leaves-the-point'
    }
  }
  const due = rule.point(anchor, withFirst, times)
  return note === undefined ? { due } : { due, note, notedPoint }
}
