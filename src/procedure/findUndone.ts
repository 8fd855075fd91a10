import type { Params, Severity } from '../base/index.js'
import { nameOf } from './judgeStep.js'
import type { OilJob } from './listJobs.js'
import { listGearcaseInstances, listUnlooked, listUntight } from './needs/closing.js'
import { at, draftDrain, isLevelJudged } from './needs/filling.js'
import type { MutableState } from './state.js'
import { gearcaseAt, type ProcedureContext, type StepDraft } from './stepContext.js'

/** What is still to be done once the last step is. */
export interface Undone {
  readonly code: string
  readonly severity: Severity
  readonly params: Params
  readonly remedy: readonly StepDraft[]
}

/** Everything that the services ask for is done, and the machine can go: what is missing for that. */
export function findUndone(context: ProcedureContext, state: MutableState): readonly Undone[] {
  const undone: Undone[] = []
  const tell = (code: string, remedy: readonly StepDraft[], params: Params = {}): void => {
    undone.push({ code: `procedure/${code}`, severity: 'error', params, remedy })
  }
  for (const job of context.jobs) findUndoneOil(job, state, tell)
  for (const draft of listUntight({ state }, listGearcaseInstances(context)))
    tell('not-tightened', [draft], nameDraft(context, draft))
  for (const draft of listUnlooked({ state }, listGearcaseInstances(context)))
    tell('leaks-not-checked', [draft], nameDraft(context, draft))
  for (const shield of context.layout.shields.values())
    if (state.shields[shield.path] === 'off')
      tell('shield-left-off', [{ do: 'refit shield', on: shield.path }], { part: shield.shield.name })
  if (state.lifted.length > 0) tell('not-lowered', [{ do: 'lower the machine' }])
  if (state.usedOil === 'in the pan') tell('used-oil-left', [{ do: 'take used oil away' }])
  if (!state.recorded && context.jobs.length > 0) tell('not-recorded', [{ do: 'record' }])
  return undone
}

function findUndoneOil(
  job: OilJob,
  state: MutableState,
  tell: (code: string, remedy: readonly StepDraft[], params: Params) => void,
): void {
  const { gearcase, instance } = job.owner
  const here = gearcaseAt(state, job.owner)
  const params: Params = {
    gearcase: gearcase.gearcase.name,
    ...(instance === undefined
      ? {}
      : { instance: gearcase.gearcase.instances?.[instance]?.name ?? instance }),
  }
  const level = gearcase.levelOpening
  const check = level === undefined ? [] : [at('check the level', level.path, instance)]
  const fill = gearcase.fillOpening
  if (job.task === 'change') {
    const undrained = job.units.filter((unit) => gearcaseAt(state, unit).oil === 'old')
    if (undrained.length > 0) {
      tell('not-drained', undrained.flatMap(draftDrain), params)
      return
    }
    if (here.oil !== 'new') {
      tell('not-refilled', fill === undefined ? [] : [at('pour the oil', fill.path, instance)], params)
      return
    }
  }
  if (!isLevelJudged(gearcase, job.task)) return
  if (!here.levelChecked) tell('level-not-checked', check, params)
  else if (job.task === 'change' && gearcase.fill?.level?.recheckAfterRun === true) {
    if (!here.ranSinceFill) tell('no-short-run', [{ do: 'short run' }], params)
    else if (!here.levelCheckedSinceRun) tell('not-rechecked', check, params)
  }
}

function nameDraft(context: ProcedureContext, draft: StepDraft): Params {
  const part = draft.on === undefined ? undefined : context.layout.parts.get(draft.on)
  return { ...nameOf(part), ...(draft.at?.instance === undefined ? {} : { instance: draft.at.instance }) }
}
