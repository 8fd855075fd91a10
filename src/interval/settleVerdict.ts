import type { Reason } from '../base/index.js'
import type { DueLine, DueVerdict } from './dueVerdict.js'

/** The first in this order that any line has is the verdict of the whole; a line that does not vote comes last. */
const ORDER: readonly DueLine['verdict'][] = [
  'overdue',
  'due',
  'cannot tell',
  'due soon',
  'not due',
  'not tracked',
]

/**
 * The verdict of all lines. The limit that comes first is found by the days on which they are reached, where
 * all are known; else by the fraction used. An event comes before every limit. Limits that cannot be
 * determined, or that the machine does not count, do not decide.
 */
export function settleVerdict(
  lines: readonly DueLine[],
  known: boolean,
  reasons: Reason[],
  missing: Reason[],
): DueVerdict {
  let worst = ORDER.indexOf(known ? 'not tracked' : 'cannot tell')
  let earliest: DueLine | undefined
  let fullest: DueLine | undefined
  let voting = 0
  let allDays = true
  for (const line of lines) {
    const { dueOn, fraction } = line
    worst = Math.min(worst, ORDER.indexOf(line.verdict))
    if (fraction === undefined) continue
    voting += 1
    if (dueOn === undefined) allDays = false
    else if (earliest?.dueOn === undefined || dueOn < earliest.dueOn) earliest = line
    if (fullest?.fraction === undefined || fraction > fullest.fraction) fullest = line
  }
  let verdict = ORDER[worst]
  if (verdict === undefined || verdict === 'not tracked') {
    verdict = 'cannot tell'
    missing.push({ code: 'interval/no-limit-tracked', params: {} })
  }
  const [event] = lines
  const first = event?.by === 'event' ? event : allDays ? earliest : fullest
  // Any other verdict comes from a line that has a fraction or is an event.
  if (first === undefined) return { verdict: 'cannot tell', lines, reasons, missing }
  const { by: dueBy, dueOn } = first
  const decidedBy =
    dueBy === 'event' ? 'event' : voting === 1 ? 'only limit' : allDays ? 'days' : 'fraction used'
  if (dueBy !== 'event' && voting > 1) {
    const params = dueOn === undefined ? { by: dueBy, decidedBy } : { by: dueBy, decidedBy, dueOn }
    reasons.push({ code: 'interval/which-first', params })
  }
  if (dueOn === undefined) return { verdict, lines, dueBy, decidedBy, reasons, missing }
  return { verdict, lines, dueBy, decidedBy, dueOn, reasons, missing }
}
