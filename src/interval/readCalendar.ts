import type { Reason } from '../base/index.js'
import type { DueCase } from './computeDue.js'
import type { LimitScale } from './limitScale.js'

/** The calendar as a scale for a limit. Points are counted from their start, never from the last point. */
export function readCalendar({ question, today, start, zero }: DueCase): LimitScale | Reason {
  const { day, date } = start
  if (Number.isNaN(question.intervals.countFrom === 'completion' ? day : zero.day))
    return { code: 'interval/first-use-missing', params: {} }
  return {
    unit: 'd',
    start: day,
    now: today,
    age: 0,
    earlier: 0,
    from: { date },
    read: { date: question.today },
    points: [],
  }
}
