import type { DocumentReference, Finding, Severity } from '../../base/index.js'
import { type CodeWith, type OfGearcase, type ProcedureCodes, procedureFinding } from '../codes.js'
import { isLevelJudged, type OilJob } from '../oilJob.js'
import { checkPhase, isRaised, isRechecked } from './phases.js'

/** Why no order of work can be written for a job, and what the reader should know of one that can. */
export function findObstacles(job: OilJob, document: DocumentReference): readonly Finding<ProcedureCodes>[] {
  const { gearcase } = job.owner
  const { fill } = gearcase
  const findings: Finding<ProcedureCodes>[] = []
  const add = (
    code: CodeWith<OfGearcase>,
    severity: Severity,
    at: string,
    { path, gearcase: { name: part } } = gearcase,
    params = { part, gearcase: gearcase.gearcase.name },
  ): void => {
    findings.push(procedureFinding(code, severity, document, `${path}${at}`, params))
  }
  if (gearcase.gearcase.oilSpace.kind === 'shared')
    add('procedure/no-owner-of-the-oil', 'error', '/oilSpace/with')
  const judged = isLevelJudged(gearcase, job.task)
  if (job.task === 'change') {
    if (gearcase.fillOpening === undefined) add('procedure/no-fill-opening', 'error', '/openings')
    if (gearcase.emptying === undefined) add('procedure/no-way-to-empty', 'error', '/emptying')
    if (fill !== undefined && fill.method.kind !== 'by quantity' && gearcase.levelOpening === undefined)
      add('procedure/no-level-opening', 'error', '/oilSpace/fill/method/opening')
  } else if (!judged) add('procedure/no-level-opening', 'warning', '/oilSpace/fill/method')
  if (!isRaised(job)) {
    if (judged && fill?.level?.attitude === 'level on stands')
      add('procedure/no-supports', 'error', '/access')
    const turning = job.emptied
      .flatMap((one) => one.gearcase.openings)
      .find(({ opening }) => opening.uses.some((use) => use.wheelMark))
    if (turning !== undefined)
      add('procedure/wheel-on-the-ground', 'error', '/access', gearcase, {
        part: turning.opening.name,
        gearcase: gearcase.gearcase.name,
      })
  }
  for (const one of job.emptied)
    if (one.gearcase.gearcase.access.kind === 'raised' && one.gearcase.supports.length === 0)
      add('procedure/no-supports', 'error', '/access', one.gearcase)
  if (judged && (fill?.level === undefined || fill.level.attitude === 'not stated'))
    add('procedure/attitude-not-stated', 'info', '/oilSpace/fill')
  if (isRechecked(job) && checkPhase(job) !== 'before the lift')
    add('procedure/second-lift', 'info', '/oilSpace/fill/level')
  return findings
}
