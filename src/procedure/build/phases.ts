import { findWheelMark } from '../layout.js'
import { includesLevelCheck, type OilJob } from '../oilJob.js'

export type Phase = 'before the lift' | 'on stands' | 'after the lift'

export function isRaised(job: OilJob): boolean {
  return job.emptiedInstances.some(({ gearcase }) => gearcase.supports.length > 0)
}

export function chooseDrainPhase(job: OilJob): Phase {
  return isRaised(job) ? 'on stands' : 'before the lift'
}

/** The phase of filling: on stands, unless the level is read with the machine on its wheels. */
export function chooseFillPhase(job: OilJob): Phase {
  const owner = job.owner.gearcase
  if (!isRaised(job)) return 'before the lift'
  const isOnWheels =
    includesLevelCheck(owner, 'change') && owner.fill?.level?.attitude === 'level on its wheels'
  return isOnWheels ? 'after the lift' : 'on stands'
}

/** The phase in which the level is read. A wheel can only be turned to its mark while it is raised. */
export function chooseCheckPhase(job: OilJob): Phase {
  const { gearcase } = job.owner
  const attitude = gearcase.fill?.level?.attitude
  const mustTurnWheel = needsWheelTurned(job)
  if (attitude === 'level on its wheels') return mustTurnWheel ? 'after the lift' : 'before the lift'
  if (attitude === 'level on stands') return 'on stands'
  return mustTurnWheel || gearcase.supports.length > 0 ? 'on stands' : 'before the lift'
}

export function needsWheelTurned(job: OilJob): boolean {
  const level = job.owner.gearcase.levelOpening
  return isRaised(job) && level !== undefined && findWheelMark(level, 'level') !== undefined
}

export function isRechecked(job: OilJob): boolean {
  const owner = job.owner.gearcase
  return (
    job.task === 'change' &&
    owner.fill?.level?.recheckAfterRun === true &&
    includesLevelCheck(owner, 'change')
  )
}
