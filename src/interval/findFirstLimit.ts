import type { DueLine, DueVerdict } from './dueVerdict.js'

type FirstLimit = Required<Pick<DueVerdict, 'dueBy' | 'decidedBy'>> & Pick<DueVerdict, 'dueOn'>

/**
 * Which limit comes first: by the days on which they are reached, where all are known; else by the fraction used. An event
 * comes before every limit. Limits that nobody can tell, or that the machine does not count, have no say.
 */
export function findFirstLimit(lines: readonly DueLine[]): FirstLimit | undefined {
  let earliest: DueLine | undefined
  let fullest: DueLine | undefined
  let voting = 0
  let allDays = true
  for (const line of lines) {
    if (line.by === 'event') {
      return line.dueOn === undefined
        ? { dueBy: 'event', decidedBy: 'event' }
        : { dueBy: 'event', decidedBy: 'event', dueOn: line.dueOn }
    }
    if (line.fraction === undefined) continue
    voting += 1
    if (line.dueOn === undefined) allDays = false
    else if (earliest?.dueOn === undefined || line.dueOn < earliest.dueOn) earliest = line
    if (fullest?.fraction === undefined || line.fraction > fullest.fraction) fullest = line
  }
  const first = allDays ? earliest : fullest
  if (first === undefined) return undefined
  const decidedBy = voting === 1 ? 'only limit' : allDays ? 'days' : 'fraction used'
  return first.dueOn === undefined
    ? { dueBy: first.by, decidedBy }
    : { dueBy: first.by, decidedBy, dueOn: first.dueOn }
}
