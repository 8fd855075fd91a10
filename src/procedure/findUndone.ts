import type { Params, Severity } from '../base/index.js'
import type { OilJob } from './jobs.js'
import { nameOf } from './judgeStep.js'
import { listUnits, listUnlooked, listUntight } from './needs/closing.js'
import { at, isLevelJudged, seedDrain } from './needs/filling.js'
import { gearcaseAt, type StepSeed, type World } from './site.js'
import type { Draft } from './state.js'

/** What is still to be done once the last step is. */
export interface Undone {
  readonly code: string
  readonly severity: Severity
  readonly params: Params
  readonly mend: readonly StepSeed[]
}

/** Everything that the services ask for is done, and the machine can go: what is missing for that. */
export function findUndone(world: World, state: Draft): readonly Undone[] {
  const undone: Undone[] = []
  const tell = (code: string, mend: readonly StepSeed[], params: Params = {}): void => {
    undone.push({ code: `procedure/${code}`, severity: 'error', params, mend })
  }
  for (const job of world.jobs) findUndoneOil(job, state, tell)
  for (const seed of listUntight({ state }, listUnits(world)))
    tell('not-tightened', [seed], nameSeed(world, seed))
  for (const seed of listUnlooked({ state }, listUnits(world)))
    tell('leaks-not-checked', [seed], nameSeed(world, seed))
  for (const shield of world.layout.shields.values())
    if (state.shields[shield.path] === 'off')
      tell('shield-left-off', [{ do: 'refit shield', on: shield.path }], { part: shield.shield.name })
  if (state.lifted.length > 0) tell('not-lowered', [{ do: 'lower the machine' }])
  if (state.usedOil === 'in the pan') tell('used-oil-left', [{ do: 'take used oil away' }])
  if (!state.recorded && world.jobs.length > 0) tell('not-recorded', [{ do: 'record' }])
  return undone
}

function findUndoneOil(
  job: OilJob,
  state: Draft,
  tell: (code: string, mend: readonly StepSeed[], params: Params) => void,
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
      tell('not-drained', undrained.flatMap(seedDrain), params)
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

function nameSeed(world: World, seed: StepSeed): Params {
  const part = seed.on === undefined ? undefined : world.layout.parts.get(seed.on)
  return { ...nameOf(part), ...(seed.at?.instance === undefined ? {} : { instance: seed.at.instance }) }
}
