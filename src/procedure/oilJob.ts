import type { Id, MachineEventKind } from '../spec/index.js'
import type { GearcaseInstance, GearcaseLayout } from './layout.js'

/** What is to be done to one oil space: the owner's, with every gearcase that is emptied for it. */
export interface OilJob {
  readonly owner: GearcaseInstance
  readonly task: 'check' | 'change'
  /** The owner first, then gearcases that share its oil and have a way out of their own. */
  readonly emptied: readonly GearcaseInstance[]
  readonly services: readonly Id[]
}

export function findJob(jobs: readonly OilJob[], owner: GearcaseInstance): OilJob | undefined {
  return jobs.find(
    (job) => job.owner.gearcase.id === owner.gearcase.id && job.owner.instance === owner.instance,
  )
}

/** Whether this gearcase's fill is judged by a level, for this task. */
export function isLevelJudged(owner: GearcaseLayout, task: OilJob['task'] | undefined): boolean {
  if (owner.fill === undefined || owner.levelOpening === undefined) return false
  return owner.fill.method.kind !== 'by quantity' || task === 'check'
}

/**
 * Whether the sheet only gives figures for this job: it states neither how the gearcase is filled nor all the openings that
 * the work needs. No order of work can be written, and nothing is wrong.
 */
export function hasFiguresOnly({ owner, task }: OilJob): boolean {
  const { fill, fillOpening, emptying, levelOpening } = owner.gearcase
  if (fill?.method.kind !== 'not stated') return false
  return task === 'change' ? fillOpening === undefined || emptying === undefined : levelOpening === undefined
}

const SPOILS_OIL: readonly MachineEventKind[] = ['submersion', 'contamination', 'seal failure', 'oil loss']

/** Whether the gears may run in what is in the case now. Source: common practice, no source. */
export function mustNotRun(events: readonly MachineEventKind[] = []): boolean {
  return events.some((event) => SPOILS_OIL.includes(event))
}
