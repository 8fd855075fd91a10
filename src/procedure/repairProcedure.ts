import { applyPatch, type Cure, type Finding } from '../base/index.js'
import { type ProcedureDocument, requireDocument, type SpecSheet } from '../spec/index.js'
import { checkSteps } from './checkSteps.js'
import type { ProcedureCodes } from './codes.js'
import { countTroubles, type TroubleCounter } from './countTroubles.js'
import { readContext } from './readContext.js'

export interface Repair {
  readonly procedure: ProcedureDocument
  /** Changes made, in the order in which they were made. */
  readonly applied: readonly Cure[]
  /** What is still wrong. */
  readonly left: readonly Finding<ProcedureCodes>[]
}

/** Steps run in search of cures, over the whole repair. */
const MAX_STEPS_RUN = 600_000

/**
 * Corrects a writer's order of work with as few changes as possible, for a writer who wants a proposal.
 * To see only what is wrong use {@link validateProcedure}.
 *
 * Equation: the cures that findings carry are tried one at a time, then two together; the fewest that leave no finding
 * are chosen. Where two do not suffice, the best ones are made as long as the number of findings falls.
 * @param procedure The steps.
 * @param sheet The sheet that they point into.
 * @returns The corrected procedure, the changes, and what is left. The given one stays as it was.
 * @throws TypeError where the arguments are no parsed procedure and sheet.
 *
 * Source: house rule: minimal up to two changes; a person reads a proposal before work starts by it.
 * @example
 * import { repairProcedure } from 'drivetrain-service/v1/procedure'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: {}, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const steps = [{ id: 'a', do: 'read the manual' }, { id: 'a', do: 'stop the engine' }] as const
 * const procedure = { kind: 'procedure', version: '1.0', id: 'p', name: 'P', sheet: { id: 'example', revision: '1' }, identity: {}, services: [], steps } as const
 * // What becomes of two steps with one id?
 * repairProcedure(procedure, sheet).applied[0] // => { op: 'replace', path: '/steps/1/id', value: 'a-2' }
 */
export function repairProcedure(procedure: ProcedureDocument, sheet: SpecSheet): Repair {
  requireDocument('procedure', procedure, 'procedure')
  requireDocument('sheet', sheet, 'spec-sheet')
  const { context, findings } = readContext(procedure, sheet)
  const counter: TroubleCounter = { sheet, context, known: new Map(), effort: { left: MAX_STEPS_RUN } }
  let here: RepairAttempt = { procedure, applied: [], troubles: countTroubles(counter, procedure.steps) }
  while (here.troubles > 0) {
    const next = chooseBestRepair(here, counter)
    if (next.troubles >= here.troubles) break
    here = next
  }
  const left = [...findings, ...checkSteps(counter, here.procedure)]
  return { procedure: here.procedure, applied: here.applied, left }
}

interface RepairAttempt {
  readonly procedure: ProcedureDocument
  readonly applied: readonly Cure[]
  readonly troubles: number
}

/** The best that one or two cures reach. */
function chooseBestRepair(here: RepairAttempt, counter: TroubleCounter): RepairAttempt {
  const first = listCandidateRepairs(here, counter)
  const done = first.find((one) => one.troubles === 0)
  if (done !== undefined) return done
  let best = first.reduce((fewest, one) => (one.troubles < fewest.troubles ? one : fewest), here)
  for (const one of first)
    for (const second of listCandidateRepairs(one, counter)) {
      if (second.troubles === 0) return second
      if (second.troubles < best.troubles) best = second
    }
  return best
}

function listCandidateRepairs(from: RepairAttempt, counter: TroubleCounter): readonly RepairAttempt[] {
  const all = checkSteps(counter, from.procedure).flatMap((finding) => finding.cures ?? [])
  const cures = new Map(all.map((cure) => [JSON.stringify(cure), cure]))
  return [...cures.values()].map((cure) => {
    const procedure = applyPatch(from.procedure, [cure]) as ProcedureDocument
    return { procedure, applied: [...from.applied, cure], troubles: countTroubles(counter, procedure.steps) }
  })
}
