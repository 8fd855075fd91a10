import type { Severity } from '../base/index.js'
import { ACTIONS } from './actions.js'
import { EFFECTS } from './effects.js'
import { findNeed, type NeedName } from './needs.js'
import { findSite, type Location, locate, type Site, type StepSeed, type World } from './site.js'
import type { Draft } from './state.js'

export interface FailedNeed {
  readonly name: NeedName
  readonly severity: Severity
  readonly mend: readonly StepSeed[]
}

/**
 * Does one step to the state. A need that does not hold is told once and then taken as held, so that one mistake
 * gives one finding and not a tail of them.
 */
export function runStep(
  world: World,
  state: Draft,
  step: StepSeed,
  location: Location = locate(world, step),
): readonly FailedNeed[] {
  const site: Site = { ...location, state }
  const row = ACTIONS[step.do]
  const failed: FailedNeed[] = []
  for (const name of row.needs) {
    const need = findNeed(name)
    if (need.holds(site)) continue
    const mend = need.mend(site)
    failed.push({ name, severity: need.severity, mend })
    if (need.assume !== undefined) need.assume(site)
    else for (const seed of mend) change(findSite(world, state, seed))
  }
  change(site)
  return failed
}

function change(site: Site): void {
  for (const name of ACTIONS[site.step.do].changes) EFFECTS[name](site)
}
