import type { Finding } from '../finding.js'
import type { ProcedureDocument } from '../spec/index.js'
import { examineSteps } from './examine.js'
import { countTroubles, findCures, type Scale } from './findCures.js'

/** Past this many troubles the list is no slip but another job; cures are looked for in the first ones only. */
const MOST_CURED = 40

/** The findings about the steps, each with the single changes that would mend it. */
export function checkSteps(scale: Scale, procedure: ProcedureDocument): readonly Finding[] {
  const troubles = examineSteps(scale.sheet, scale.world, procedure)
  if (troubles.length === 0) return []
  const before = countTroubles(scale, procedure.steps)
  return troubles.map((trouble, place): Finding => {
    if (trouble.finding.cures !== undefined || place >= MOST_CURED) return trouble.finding
    const cures = findCures(scale, procedure, trouble, before)
    return cures.length === 0 ? trouble.finding : { ...trouble.finding, cures }
  })
}
