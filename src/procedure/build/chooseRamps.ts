import { dropUndefined, type Finding, joinPointer } from '../../base/index.js'
import type { Id, SpecSheet } from '../../spec/index.js'
import { type ProcedureCodes, procedureFinding, type RampObstacle } from '../codes.js'
import { findWheelMark, type IndexedSheet } from '../layout.js'
import { includesLevelCheck, type OilJob } from '../listJobs.js'
import { isDrainOpening } from '../needs/opening.js'
import { isTilted } from '../needs/securing.js'
import { chooseCheckPhase, isRechecked, needsRaising, type RampPosition } from './phases.js'

/** The ramps of a visit. */
export interface ChosenRamps {
  /** Axles whose wheels are driven onto ramps; empty if nothing is raised, or stands are used. */
  readonly axles: readonly Id[]
  readonly onRamps?: RampPosition
  readonly findings: readonly Finding<ProcedureCodes>[]
}

interface Obstacle {
  readonly because: RampObstacle
  readonly part?: string
  readonly path: string
}

/**
 * The axles to raise on ramps for this work; if ramps cannot be used, none, with a finding that gives the
 * reason.
 */
export function chooseRamps(
  sheet: SpecSheet,
  indexedSheet: IndexedSheet,
  jobs: readonly OilJob[],
  mustNotRun: boolean,
): ChosenRamps {
  const raised = jobs.filter(needsRaising)
  const supports = raised.flatMap(({ emptiedInstances }) =>
    emptiedInstances.flatMap(({ gearcase }) => gearcase.supports),
  )
  const axles = indexedSheet.axles.filter((axle) =>
    supports.some((support) => indexedSheet.axleOfSupport.get(support) === axle),
  )
  const document = { kind: 'spec-sheet', id: sheet.id } as const
  const readAxleName = (axle: Id) => sheet.machine.axles[axle]?.name ?? axle
  const obstacle = findObstacle()
  if (obstacle !== undefined) {
    const { path, ...params } = obstacle
    return {
      axles: [],
      findings: [procedureFinding('procedure/ramps-not-possible', 'warning', document, path, params)],
    }
  }
  const findings = axles
    .filter((axle) => !indexedSheet.areRampsAllowed.has(axle))
    .map((axle) => {
      const path = joinPointer(['machine', 'axles', axle])
      return procedureFinding('procedure/ramps-not-stated', 'info', document, path, {
        part: readAxleName(axle),
      })
    })
  return dropUndefined({
    axles,
    onRamps:
      axles.length === 0
        ? undefined
        : isTilted(indexedSheet, axles)
          ? ('tilted' as const)
          : ('level' as const),
    findings,
  })

  function findObstacle(): Obstacle | undefined {
    const [first] = raised
    if (first === undefined) return undefined
    if (mustNotRun) return { because: 'must not run', path: '/machine' }
    const unknownSupport = supports.find(
      (support) => !indexedSheet.axles.includes(indexedSheet.axleOfSupport.get(support) ?? ''),
    )
    if (unknownSupport !== undefined)
      return { because: 'axle not known', path: joinPointer(['machine', 'supports', unknownSupport]) }
    const forbiddenAxle = axles.find((axle) => indexedSheet.areRampsAllowed.get(axle) === false)
    if (forbiddenAxle !== undefined)
      return {
        ...{ because: 'manual forbids ramps', part: readAxleName(forbiddenAxle) },
        path: joinPointer(['machine', 'axles', forbiddenAxle]),
      }
    // Driving onto the next pair of ramps would drive off the first.
    if (axles.length > 1 && isTilted(indexedSheet, axles))
      return { because: 'level needs flat ground', path: '/machine/axles' }
    for (const job of raised) {
      const because = findJobObstacle(indexedSheet, jobs, job, isTilted(indexedSheet, axles))
      const { gearcase, path } = job.owner.gearcase
      if (because !== undefined) return { because, part: gearcase.name, path }
    }
    return undefined
  }
}

/**
 * The reason why this work cannot be done on ramps: wheels on ramps carry the machine and cannot turn, and a
 * machine with one end on ramps is tilted. Common practice, no source.
 */
function findJobObstacle(
  indexedSheet: IndexedSheet,
  jobs: readonly OilJob[],
  job: OilJob,
  isMachineTilted: boolean,
): RampObstacle | undefined {
  const { owner, emptiedInstances, task } = job
  const openings = emptiedInstances.flatMap(({ gearcase }) => gearcase.openings)
  const roles = ['fill', 'drain', 'level'] as const
  if (openings.some((opening) => roles.some((role) => findWheelMark(opening, role) !== undefined)))
    return 'wheel must turn'
  const { fill } = owner.gearcase
  const hasLevelCheck = includesLevelCheck(owner.gearcase, task)
  const attitude = fill?.level?.attitude
  if (hasLevelCheck && attitude === 'level on stands') return 'level needs stands'
  // Oil runs out at a level hole, and at a drain that is only turned in by hand.
  const mustStayOpen =
    fill?.method.kind === 'to level hole' ||
    owner.gearcase.possibleFillOpenings.some((possibleFillOpening) =>
      isDrainOpening(owner.gearcase, possibleFillOpening),
    )
  const isFilledLevel = task === 'change' && mustStayOpen
  const isOnlyChecked = task === 'check' && attitude !== 'level on its wheels'
  if (isMachineTilted && hasLevelCheck && (isFilledLevel || isOnlyChecked)) return 'level needs flat ground'
  const shields = emptiedInstances.flatMap(({ gearcase }) => gearcase.shields)
  const hasGuard = shields.some((id) => indexedSheet.shields.get(id)?.shield.guards === 'moving parts')
  // Such a guard would still be off while the machine drives: to the work, or to the level check after the run.
  const onRamps = isMachineTilted ? 'tilted' : 'level'
  const isCheckedOnGround = (other: OilJob) =>
    (other.task === 'check' || (isRechecked(other) && isRechecked(job))) &&
    chooseCheckPhase(other, onRamps) === 'before the lift'
  const isShared = jobs.some(
    (other) =>
      other !== job &&
      (!needsRaising(other) || isCheckedOnGround(other)) &&
      other.emptiedInstances.some(({ gearcase }) => gearcase.shields.some((id) => shields.includes(id))),
  )
  return hasGuard && ((isMachineTilted && hasLevelCheck) || isShared) ? 'guard is off' : undefined
}
