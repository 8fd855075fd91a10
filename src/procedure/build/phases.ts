import { findWheelMark } from '../layout.js'
import { includesLevelCheck, type OilJob } from '../listJobs.js'

export type Phase = 'before the lift' | 'on stands' | 'after the lift'

export function needsRaising(job: OilJob): boolean {
  return job.emptiedInstances.some(({ gearcase }) => gearcase.supports.length > 0)
}

export function chooseDrainPhase(job: OilJob): Phase {
  return needsRaising(job) ? 'on stands' : 'before the lift'
}

/** The position of a machine on ramps; undefined if it is raised on stands. */
export type RampPosition = 'tilted' | 'level' | undefined

/** The phase of filling: raised, unless the level is read on the wheels or the machine is tilted on ramps. */
export function chooseFillPhase(job: OilJob, onRamps: RampPosition): Phase {
  const owner = job.owner.gearcase
  if (!needsRaising(job)) return 'before the lift'
  const isOffStands = onRamps === undefined && owner.fill?.level?.attitude === 'level on its wheels'
  const isMoved = isOffStands || onRamps === 'tilted'
  return includesLevelCheck(owner, 'change') && isMoved ? 'after the lift' : 'on stands'
}

/** The phase in which the level is read. A wheel can be turned to its mark only while it is raised. */
export function chooseCheckPhase(job: OilJob, onRamps: RampPosition): Phase {
  const { gearcase } = job.owner
  const attitude = gearcase.fill?.level?.attitude
  const mustTurnWheel = needsWheelTurned(job)
  if (attitude === 'level on its wheels') return mustTurnWheel ? 'after the lift' : 'before the lift'
  if (attitude === 'level on stands') return 'on stands'
  if (onRamps === 'tilted') return 'before the lift'
  return mustTurnWheel || gearcase.supports.length > 0 ? 'on stands' : 'before the lift'
}

export function needsWheelTurned(job: OilJob): boolean {
  const level = job.owner.gearcase.levelOpening
  return needsRaising(job) && level !== undefined && findWheelMark(level, 'level') !== undefined
}

export function isRechecked(job: OilJob): boolean {
  const owner = job.owner.gearcase
  return (
    job.task === 'change' &&
    owner.fill?.level?.recheckAfterRun === true &&
    includesLevelCheck(owner, 'change')
  )
}
