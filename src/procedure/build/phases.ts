import { wheelMarkFor } from '../layout.js'
import { isLevelJudged, type OilJob } from '../oilJob.js'

/** When a piece of work is done: before the one lift, on the stands, or after the lift. */
export type Phase = 'before the lift' | 'on stands' | 'after the lift'

export function isRaised(job: OilJob): boolean {
  return job.emptied.some(({ gearcase }) => gearcase.supports.length > 0)
}

/** Draining is done where the gearcases are reached. */
export function drainPhase(job: OilJob): Phase {
  return isRaised(job) ? 'on stands' : 'before the lift'
}

/** Filling is done at once, unless the level is read on the wheels and the machine is on stands. */
export function fillPhase(job: OilJob): Phase {
  const owner = job.owner.gearcase
  if (!isRaised(job)) return 'before the lift'
  const onWheels = isLevelJudged(owner, 'change') && owner.fill?.level?.attitude === 'level on its wheels'
  return onWheels ? 'after the lift' : 'on stands'
}

/** A level is read as the manual says; a wheel that must be turned to its mark first needs the lift for that. */
export function checkPhase(job: OilJob): Phase {
  const { gearcase } = job.owner
  const attitude = gearcase.fill?.level?.attitude
  const turns = needsWheelTurned(job)
  if (attitude === 'level on its wheels') return turns ? 'after the lift' : 'before the lift'
  if (attitude === 'level on stands') return 'on stands'
  return turns || gearcase.supports.length > 0 ? 'on stands' : 'before the lift'
}

export function needsWheelTurned(job: OilJob): boolean {
  const level = job.owner.gearcase.levelOpening
  return isRaised(job) && level !== undefined && wheelMarkFor(level, 'level') !== undefined
}

export function isRechecked(job: OilJob): boolean {
  const owner = job.owner.gearcase
  return (
    job.task === 'change' && owner.fill?.level?.recheckAfterRun === true && isLevelJudged(owner, 'change')
  )
}
