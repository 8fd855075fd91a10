import type { DocumentReference, Finding } from '../../base/index.js'
import type { OilJob } from '../listJobs.js'
import { isLevelJudged } from '../needs/filling.js'
import { checkPhase, isRaised, isRechecked } from './phases.js'

/** Why no order of work can be written for a job, and what the reader should know of one that can. */
export function findObstacles(job: OilJob, document: DocumentReference): readonly Finding[] {
  const { gearcase } = job.owner
  const findings: Finding[] = []
  const tell = (code: string, severity: Finding['severity'], path: string, part: string): void => {
    findings.push({
      code: `procedure/${code}`,
      severity,
      document,
      path,
      params: { part, gearcase: gearcase.gearcase.name },
    })
  }
  const { name } = gearcase.gearcase
  if (gearcase.gearcase.oilSpace.kind === 'shared')
    tell('no-owner-of-the-oil', 'error', `${gearcase.path}/oilSpace/with`, name)
  if (job.task === 'change') {
    if (gearcase.fillOpening === undefined)
      tell('no-fill-opening', 'error', `${gearcase.path}/openings`, name)
    if (gearcase.emptying === undefined) tell('no-way-to-empty', 'error', `${gearcase.path}/emptying`, name)
    const method = gearcase.fill?.method
    if (method !== undefined && method.kind !== 'by quantity' && gearcase.levelOpening === undefined)
      tell('no-level-opening', 'error', `${gearcase.path}/oilSpace/fill/method/opening`, name)
  } else if (!isLevelJudged(gearcase, 'check'))
    tell('no-level-opening', 'warning', `${gearcase.path}/oilSpace/fill/method`, name)
  if (!isRaised(job)) {
    const attitude = gearcase.fill?.level?.attitude
    const judged = isLevelJudged(gearcase, job.task)
    if (judged && attitude === 'level on stands')
      tell('no-supports', 'error', `${gearcase.path}/access`, name)
    const turning = job.units
      .flatMap((unit) => unit.gearcase.openings)
      .find((one) => one.opening.uses.some((use) => use.wheelMark))
    if (turning !== undefined)
      tell('wheel-on-the-ground', 'error', `${gearcase.path}/access`, turning.opening.name)
  }
  for (const unit of job.units)
    if (unit.gearcase.gearcase.access.kind === 'raised' && unit.gearcase.supports.length === 0)
      tell('no-supports', 'error', `${unit.gearcase.path}/access`, unit.gearcase.gearcase.name)
  const level = gearcase.fill?.level
  if (isLevelJudged(gearcase, job.task) && (level === undefined || level.attitude === 'not stated'))
    tell('attitude-not-stated', 'info', `${gearcase.path}/oilSpace/fill`, name)
  if (isRechecked(job) && checkPhase(job) !== 'before the lift')
    tell('second-lift', 'info', `${gearcase.path}/oilSpace/fill/level`, name)
  return findings
}
