import { applyPatch, type Cure, type Finding } from '../base/index.js'
import { type ProcedureDocument, requireDocument, type SpecSheet } from '../spec/index.js'
import { checkSteps } from './checkSteps.js'
import type { ProcedureCodes } from './codes.js'
import { countTroubles, type TroubleCounter } from './countTroubles.js'
import { readContext } from './readContext.js'

export interface Repair {
  readonly procedure: ProcedureDocument
  /** The changes, in the order in which they were made. */
  readonly applied: readonly Cure[]
  /** The remaining findings. */
  readonly left: readonly Finding<ProcedureCodes>[]
}

/** The maximum number of steps that are run in the search for cures. */
const MAX_STEPS_RUN = 600_000

/**
 * Proposes a correction of a procedure with as few changes as possible. To see only the mistakes, use
 * {@link validateProcedure}.
 *
 * Method: tries the cures of the findings one at a time, then two together, and chooses the fewest that leave no finding.
 * If two are not enough, it makes the best ones as long as the number of findings falls.
 * @param procedure The procedure to correct; it is not changed.
 * @param sheet The sheet that it points into.
 * @returns The corrected procedure, the changes, and the remaining findings.
 * @throws TypeError if an argument is not a parsed procedure or sheet.
 *
 * Source: house rule: the fewest changes if one or two are enough; a person reads the proposal before working by it.
 * @example
 * import { repairProcedure } from 'drivetrain-service/v1/procedure'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: {}, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const steps = [{ id: 'a', do: 'read the manual' }, { id: 'a', do: 'stop the engine' }] as const
 * const procedure = { kind: 'procedure', version: '1.0', id: 'p', name: 'P', sheet: { id: 'example', revision: '1' }, identity: {}, services: [], steps } as const
 * // How are two steps with the same id corrected?
 * repairProcedure(procedure, sheet).applied[0] // => { op: 'replace', path: '/steps/1/id', value: 'a-2' }
 */
export function repairProcedure(procedure: ProcedureDocument, sheet: SpecSheet): Repair {
  requireDocument('procedure', procedure, 'procedure')
  requireDocument('sheet', sheet, 'spec-sheet')
  const { context, findings } = readContext(procedure, sheet)
  const counter: TroubleCounter = { sheet, context, known: new Map(), effort: { left: MAX_STEPS_RUN } }
  let attempt: RepairAttempt = { procedure, applied: [], troubles: countTroubles(counter, procedure.steps) }
  while (attempt.troubles > 0) {
    const next = chooseBestRepair(attempt, counter)
    if (next.troubles >= attempt.troubles) break
    attempt = next
  }
  const left = [...findings, ...checkSteps(counter, attempt.procedure)]
  return { procedure: attempt.procedure, applied: attempt.applied, left }
}

interface RepairAttempt {
  readonly procedure: ProcedureDocument
  readonly applied: readonly Cure[]
  readonly troubles: number
}

/** The best repair with one or two more cures. */
function chooseBestRepair(attempt: RepairAttempt, counter: TroubleCounter): RepairAttempt {
  const firstRepairs = listCandidateRepairs(attempt, counter)
  const completeRepair = firstRepairs.find((one) => one.troubles === 0)
  if (completeRepair !== undefined) return completeRepair
  let bestRepair = firstRepairs.reduce(
    (fewest, one) => (one.troubles < fewest.troubles ? one : fewest),
    attempt,
  )
  for (const one of firstRepairs)
    for (const second of listCandidateRepairs(one, counter)) {
      if (second.troubles === 0) return second
      if (second.troubles < bestRepair.troubles) bestRepair = second
    }
  return bestRepair
}

function listCandidateRepairs(from: RepairAttempt, counter: TroubleCounter): readonly RepairAttempt[] {
  const allCures = checkSteps(counter, from.procedure).flatMap((finding) => finding.cures ?? [])
  const cures = new Map(allCures.map((cure) => [JSON.stringify(cure), cure]))
  return [...cures.values()].map((cure) => {
    const procedure = applyPatch(from.procedure, [cure]) as ProcedureDocument
    return { procedure, applied: [...from.applied, cure], troubles: countTroubles(counter, procedure.steps) }
  })
}
