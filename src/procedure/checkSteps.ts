import type { Finding } from '../base/index.js'
import type { ProcedureDocument } from '../spec/index.js'
import { examineSteps } from './examine.js'
import { countTroubles, findCures, type Scale } from './findCures.js'

/** The findings about the steps, each with the single changes that would mend it. */
export function checkSteps(scale: Scale, procedure: ProcedureDocument): readonly Finding[] {
  const troubles = examineSteps(scale.sheet, scale.world, procedure)
  if (troubles.length === 0) return []
  const before = countTroubles(scale, procedure.steps)
  return troubles.map((trouble): Finding => {
    if (trouble.finding.cures !== undefined) return trouble.finding
    const cures = findCures(scale, procedure, trouble, before)
    return cures.length === 0 ? trouble.finding : { ...trouble.finding, cures }
  })
}
