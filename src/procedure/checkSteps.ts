import type { Finding } from '../base/index.js'
import type { ProcedureDocument } from '../spec/index.js'
import { examineSteps } from './examine.js'
import { countTroubles, findCures, type TroubleCounter } from './findCures.js'

/** The findings about the steps, each with the single changes that would remedy it. */
export function checkSteps(counter: TroubleCounter, procedure: ProcedureDocument): readonly Finding[] {
  const troubles = examineSteps(counter.sheet, counter.context, procedure)
  if (troubles.length === 0) return []
  const before = countTroubles(counter, procedure.steps)
  return troubles.map((trouble): Finding => {
    if (trouble.finding.cures !== undefined) return trouble.finding
    const cures = findCures(counter, procedure, trouble, before)
    return cures.length === 0 ? trouble.finding : { ...trouble.finding, cures }
  })
}
