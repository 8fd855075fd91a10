import { applyPatch, type Finding, type Fix, isSameJson } from '../base/index.js'
import { type ProcedureDocument, requireDocument, type SpecSheet } from '../spec/index.js'
import { checkSteps, FULL_SEARCH_LIMIT } from './checkSteps.js'
import type { ProcedureCodes } from './codes.js'
import { countTroubles } from './countTroubles.js'
import { diffSteps } from './diffSteps.js'
import { fillReferences } from './fillReferences.js'
import { findTroubles } from './findTroubles.js'
import { rankHarm } from './rankHarm.js'
import { readContext } from './readContext.js'
import { rebuildSteps } from './rebuildSteps.js'
import { type TroubleCounter, traceSteps } from './runStep.js'

export interface Repair {
  readonly procedure: ProcedureDocument
  /** The changes in the order made: ids and figures first, then the most dangerous mistakes. */
  readonly applied: readonly Fix[]
  /** The findings that the changes removed, the most dangerous first. */
  readonly fixed: readonly Finding<ProcedureCodes>[]
  /** The remaining findings, the most dangerous first. */
  readonly left: readonly Finding<ProcedureCodes>[]
  /**
   * `done`: no finding about the steps remains. `rebuilt`: the same, but in the builder's order, since there
   * were too many findings for single changes. `no fix`: neither a change nor the builder's order helps.
   * `effort`: the search reached its limit.
   */
  readonly stopped: 'done' | 'rebuilt' | 'no fix' | 'effort'
}

/** The maximum number of steps that are run in the search for one or two changes. */
const MAX_STEPS_RUN = 60_000

/**
 * Proposes a correction of a procedure, the most dangerous mistakes first. To see only the mistakes, use
 * {@link validateProcedure}.
 *
 * Method: fills in ids and figures that have only one answer. Then tries one change for each finding; with at
 * most four findings, also pairs of changes. If there are more findings, or the changes do not help, it
 * writes the steps in the order of {@link buildProcedure}, and keeps the writer's ids, notes and further
 * steps. If no procedure can be built, it makes single changes while the number of findings falls. A second
 * repair changes nothing.
 * @param procedure The procedure to correct; it is not changed.
 * @param sheet The sheet of the procedure.
 * @returns The corrected procedure, the changes, the corrected and remaining findings, and why the repair ended.
 * @throws TypeError if an argument is not a parsed procedure or sheet.
 *
 * Source: house rule: the fewest changes if one or two are enough. A person reads the proposal first.
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
  const stepChecks: TroubleCounter['stepChecks'] = new Map()
  const makeCounter = (): TroubleCounter => ({ sheet, context, stepChecks, budget: { left: MAX_STEPS_RUN } })
  const before = findTroubles(sheet, context, procedure).troubles.map(({ finding }) => finding)
  const filled = fillReferences(sheet, context, procedure)
  let attempt: RepairAttempt = {
    ...filled,
    troubles: traceSteps(makeCounter(), filled.procedure.steps).total,
  }
  let stopped: Repair['stopped'] = 'done'
  while (attempt.troubles > 0) {
    // Each round has its own limit: a second repair of the result must find no more than the first.
    const counter = makeCounter()
    const next = findBetterAttempt(attempt, filled, counter)
    if (next.troubles >= attempt.troubles) {
      stopped = counter.budget.left > 0 ? 'no fix' : 'effort'
      break
    }
    if (next.isRebuilt === true) stopped = 'rebuilt'
    attempt = next
  }
  const openFindings = checkSteps(makeCounter(), attempt.procedure)
  const left = [...findings, ...openFindings].toSorted(compareHarm)
  const fixed = before
    .filter((candidate) => !openFindings.some((other) => isSameMistake(candidate, other)))
    .toSorted(compareHarm)
  return { procedure: attempt.procedure, applied: attempt.applied, fixed, left, stopped }
}

interface RepairAttempt {
  readonly procedure: ProcedureDocument
  readonly applied: readonly Fix[]
  readonly troubles: number
  readonly isRebuilt?: boolean
}

function compareHarm(one: Finding<ProcedureCodes>, other: Finding<ProcedureCodes>): number {
  return rankHarm(one.code) - rankHarm(other.code)
}

/** The same code at the same step, wherever the step is now. */
function isSameMistake(one: Finding<ProcedureCodes>, other: Finding<ProcedureCodes>): boolean {
  return one.code === other.code && isSameJson(one.params, other.params)
}

/** The next better attempt, or the same one if there is none. */
function findBetterAttempt(
  attempt: RepairAttempt,
  start: Pick<RepairAttempt, 'procedure' | 'applied'>,
  counter: TroubleCounter,
): RepairAttempt {
  const singleRepairs = listCandidateRepairs(attempt, counter)
  const completeRepair = singleRepairs.find((singleRepair) => singleRepair.troubles === 0)
  if (completeRepair !== undefined) return completeRepair
  // The repairs are in the order of harm: take the first that helps.
  let bestAttempt = singleRepairs.find((singleRepair) => singleRepair.troubles < attempt.troubles) ?? attempt
  if (attempt.troubles <= FULL_SEARCH_LIMIT) {
    for (const singleRepair of singleRepairs)
      for (const repairPair of listCandidateRepairs(singleRepair, counter)) {
        if (repairPair.troubles === 0) return repairPair
        if (repairPair.troubles < bestAttempt.troubles) bestAttempt = repairPair
      }
    if (bestAttempt.troubles < attempt.troubles) return bestAttempt
  }
  const rebuiltAttempt = rebuildAttempt(start, counter)
  return rebuiltAttempt !== undefined && rebuiltAttempt.troubles < bestAttempt.troubles
    ? rebuiltAttempt
    : bestAttempt
}

function rebuildAttempt(
  { procedure, applied }: Pick<RepairAttempt, 'procedure' | 'applied'>,
  counter: TroubleCounter,
): RepairAttempt | undefined {
  const budget = { left: MAX_STEPS_RUN }
  const steps = rebuildSteps({ ...counter, budget }, procedure)
  if (steps === undefined) return undefined
  counter.budget.left -= steps.length
  return {
    procedure: { ...procedure, steps: [...steps] },
    applied: [...applied, ...diffSteps(procedure.steps, steps)],
    troubles: traceSteps(counter, steps).total,
    isRebuilt: true,
  }
}

/** The result of each fix of the findings, in the order of harm. */
function listCandidateRepairs(attempt: RepairAttempt, counter: TroubleCounter): readonly RepairAttempt[] {
  const trace = traceSteps(counter, attempt.procedure.steps)
  const findings = checkSteps(counter, attempt.procedure, trace).toSorted(compareHarm)
  const fixes = new Map(
    findings.flatMap(({ cures = [] }) => cures.map((fix) => [JSON.stringify(fix), fix] as const)),
  )
  return [...fixes.values()].map((fix) => {
    const procedure = applyPatch(attempt.procedure, [fix]) as ProcedureDocument
    return {
      procedure,
      applied: [...attempt.applied, fix],
      troubles: countTroubles(counter, trace, procedure.steps),
    }
  })
}
