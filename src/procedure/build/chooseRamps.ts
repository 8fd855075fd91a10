import { dropUndefined, type Finding, joinPointer } from '../../base/index.js'
import type { Id, SpecSheet } from '../../spec/index.js'
import { type ProcedureCodes, procedureFinding, type RampObstacle } from '../codes.js'
import { findWheelMark, type IndexedSheet } from '../layout.js'
import { isTilted } from '../needs/securing.js'
import { includesLevelCheck, type OilJob } from '../oilJob.js'
import { isRaised, type OnRamps } from './phases.js'

/** The ramps of a visit. */
export interface ChosenRamps {
  /** Axles whose wheels go onto ramps; empty: nothing is raised, or stands are used. */
  readonly axles: readonly Id[]
  readonly onRamps?: OnRamps
  readonly findings: readonly Finding<ProcedureCodes>[]
}

interface Obstacle {
  readonly because: RampObstacle
  readonly part?: string
  readonly path: string
}

/** The axles that ramps raise for this work; none if ramps cannot be used, with a finding that says why. */
export function chooseRamps(
  sheet: SpecSheet,
  layout: IndexedSheet,
  jobs: readonly OilJob[],
  mustNotRun: boolean,
): ChosenRamps {
  const raised = jobs.filter(isRaised)
  const supports = raised.flatMap(({ emptiedInstances }) =>
    emptiedInstances.flatMap(({ gearcase }) => gearcase.supports),
  )
  const axles = layout.axles.filter((axle) => supports.some((one) => layout.axleOfSupport.get(one) === axle))
  const document = { kind: 'spec-sheet', id: sheet.id } as const
  const nameAxle = (axle: Id) => sheet.machine.axles[axle]?.name ?? axle
  const obstacle = findObstacle()
  if (obstacle !== undefined) {
    const { path, ...params } = obstacle
    return {
      axles: [],
      findings: [procedureFinding('procedure/ramps-not-possible', 'warning', document, path, params)],
    }
  }
  const findings = axles
    .filter((axle) => !layout.rampsOfAxle.has(axle))
    .map((axle) => {
      const path = joinPointer(['machine', 'axles', axle])
      return procedureFinding('procedure/ramps-not-stated', 'info', document, path, { part: nameAxle(axle) })
    })
  return dropUndefined({
    axles,
    onRamps:
      axles.length === 0 ? undefined : isTilted(layout, axles) ? ('tilted' as const) : ('level' as const),
    findings,
  })

  function findObstacle(): Obstacle | undefined {
    const [first] = raised
    if (first === undefined) return undefined
    if (mustNotRun) return { because: 'must not run', path: '/machine' }
    const unknown = supports.find((one) => !layout.axles.includes(layout.axleOfSupport.get(one) ?? ''))
    if (unknown !== undefined)
      return { because: 'axle not known', path: joinPointer(['machine', 'supports', unknown]) }
    const forbidden = axles.find((axle) => layout.rampsOfAxle.get(axle) === false)
    if (forbidden !== undefined)
      return {
        ...{ because: 'manual forbids ramps', part: nameAxle(forbidden) },
        path: joinPointer(['machine', 'axles', forbidden]),
      }
    // Driving onto the next pair would drive off the first.
    if (axles.length > 1 && isTilted(layout, axles))
      return { because: 'level needs flat ground', path: '/machine/axles' }
    for (const job of raised) {
      const because = judgeJob(layout, jobs, job, isTilted(layout, axles))
      const { gearcase, path } = job.owner.gearcase
      if (because !== undefined) return { because, part: gearcase.name, path }
    }
    return undefined
  }
}

/**
 * Why this work cannot be done on ramps: wheels on ramps carry the machine and cannot turn, and a machine with one end on
 * ramps is tilted. Common practice, no source.
 */
function judgeJob(
  layout: IndexedSheet,
  jobs: readonly OilJob[],
  { owner, emptiedInstances, task }: OilJob,
  tilted: boolean,
): RampObstacle | undefined {
  const openings = emptiedInstances.flatMap(({ gearcase }) => gearcase.openings)
  const roles = ['fill', 'drain', 'level'] as const
  if (openings.some((one) => roles.some((role) => findWheelMark(one, role) !== undefined)))
    return 'wheel must turn'
  const { fill } = owner.gearcase
  const judged = includesLevelCheck(owner.gearcase, task)
  const attitude = fill?.level?.attitude
  if (judged && attitude === 'level on stands') return 'level needs stands'
  const isPouredByLevel = task === 'change' && fill?.method.kind === 'to level hole'
  const isOnlyChecked = task === 'check' && attitude !== 'level on its wheels'
  if (tilted && judged && (isPouredByLevel || isOnlyChecked)) return 'level needs flat ground'
  const shields = emptiedInstances.flatMap(({ gearcase }) => gearcase.shields)
  const hasGuard = shields.some((id) => layout.shields.get(id)?.shield.guards === 'moving parts')
  // Such a guard would still be off as the machine drives.
  const isShared = jobs.some(
    (job) =>
      !isRaised(job) &&
      job.emptiedInstances.some(({ gearcase }) => gearcase.shields.some((id) => shields.includes(id))),
  )
  return hasGuard && ((tilted && judged) || isShared) ? 'guard is off' : undefined
}
