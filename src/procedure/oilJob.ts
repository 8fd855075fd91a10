import type { Id, MachineEventKind } from '../spec/index.js'
import type { GearcaseInstance, GearcaseLayout } from './layout.js'

/** The work on one oil space. */
export interface OilJob {
  readonly owner: GearcaseInstance
  readonly task: 'check' | 'change'
  /** The owner first, then gearcases that share its oil and can be emptied. */
  readonly emptiedInstances: readonly GearcaseInstance[]
  /** The emptied instances that an oil sample is taken from. */
  readonly sampledInstances: readonly GearcaseInstance[]
  readonly services: readonly Id[]
}

export function findJob(jobs: readonly OilJob[], owner: GearcaseInstance): OilJob | undefined {
  return jobs.find(
    (job) => job.owner.gearcase.id === owner.gearcase.id && job.owner.instance === owner.instance,
  )
}

/** Whether this task includes a level check. */
export function includesLevelCheck(owner: GearcaseLayout, task: OilJob['task'] | undefined): boolean {
  if (owner.fill === undefined || owner.levelOpening === undefined) return false
  return owner.fill.method.kind !== 'by quantity' || task === 'check'
}

/**
 * Whether the sheet only gives figures for this job: it does not state the fill method or all openings for
 * the work. No procedure can be written then, which is not a mistake.
 */
export function hasFiguresOnly({ owner, task }: OilJob): boolean {
  const { fill, fillOpening, emptying, levelOpening } = owner.gearcase
  if (fill?.method.kind !== 'not stated') return false
  return task === 'change' ? fillOpening === undefined || emptying === undefined : levelOpening === undefined
}

const OIL_SPOILING_EVENTS: readonly MachineEventKind[] = [
  'submersion',
  'contamination',
  'seal failure',
  'oil loss',
]

/** Whether an event makes it unsafe to run the gears in the old oil. Common practice, no source. */
export function mustNotRun(events: readonly MachineEventKind[] = []): boolean {
  return events.some((event) => OIL_SPOILING_EVENTS.includes(event))
}
