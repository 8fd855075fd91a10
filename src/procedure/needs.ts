import type { Severity } from '../base/index.js'
import { makeStateKey } from './layout.js'
import { CLOSING_NEEDS, listAffectedInstances } from './needs/closing.js'
import { FILLING_NEEDS, listNotDrained } from './needs/filling.js'
import { FILTER_NEEDS } from './needs/filters.js'
import { listOtherFillOpenings, OPENING_NEEDS } from './needs/opening.js'
import { SECURING_NEEDS } from './needs/securing.js'
import type { Need, StepContext } from './stepContext.js'
import { getCoverState, getFilterState, getGearcaseState, getOpeningState } from './stepContext.js'

/** A need that is not met gives a finding with the code `procedure/<name>`. */
export type NeedName =
  | keyof typeof SECURING_NEEDS
  | keyof typeof OPENING_NEEDS
  | keyof typeof FILLING_NEEDS
  | keyof typeof CLOSING_NEEDS
  | keyof typeof FILTER_NEEDS

export const NEEDS: Readonly<Record<NeedName, Need>> = {
  ...SECURING_NEEDS,
  ...OPENING_NEEDS,
  ...FILLING_NEEDS,
  ...CLOSING_NEEDS,
  ...FILTER_NEEDS,
}

const WARNING_NEEDS: readonly NeedName[] = [
  'variant-not-found',
  'manual-not-read',
  'protection-not-worn',
  'magnet-not-cleaned',
  'oil-not-inspected',
  'sample-not-taken',
  'gearcase-not-wiped',
  'chocks-or-pan-in-place',
  'axle-not-chocked',
]

export function chooseSeverity(name: NeedName): Severity {
  return WARNING_NEEDS.includes(name) ? 'warning' : 'error'
}

/** Changes of state assumed after a need is reported, if the steps of its fix would change too much. */
export const ASSUMED_CHANGES: Readonly<Partial<Record<NeedName, (context: StepContext) => void>>> = {
  'machine-not-on-level-ground': ({ state }) => {
    state.ground = 'level'
  },
  'oil-not-warm': ({ state }) => {
    state.oilWarm = true
  },
  'sample-not-taken': ({ state, target }) => {
    if (target !== undefined) getGearcaseState(state, target).sampled = true
  },
  'fill-not-cracked': (context) => {
    const [fill] = listOtherFillOpenings(context)
    if (fill === undefined) return
    const part = getOpeningState(context.state, fill.opening, fill.instance)
    part.everCracked = true
    // Count a forgotten fill plug as one mistake, not two.
    if (part.position === 'tight') part.position = 'nipped'
    for (const seal of fill.opening.seals)
      context.state.seals[makeStateKey(seal.path, fill.instance)] = 'used'
  },
  'oil-not-drained': (context) => {
    for (const candidate of listNotDrained(context)) getGearcaseState(context.state, candidate).oil = 'out'
    if (context.state.usedOil === 'none') context.state.usedOil = 'in the pan'
  },
  // The oil is assumed to be poured without a spill.
  'run-without-oil': ({ state }) => {
    for (const gearcase of Object.values(state.gearcases)) if (gearcase.oil === 'out') gearcase.oil = 'new'
  },
  'level-not-rechecked': ({ state, owner }) => {
    if (owner !== undefined) getGearcaseState(state, owner).levelCheckedSinceRun = true
  },
  // Fitted parts are assumed to be tight from now on; later steps close the parts that are out.
  'part-not-tightened': (context) => {
    for (const { gearcase, instance } of listAffectedInstances(context)) {
      for (const opening of gearcase.openings) {
        const part = getOpeningState(context.state, opening, instance)
        if (part.position !== 'out') part.position = 'tight'
      }
      for (const cover of gearcase.covers) {
        const part = getCoverState(context.state, cover, instance)
        if (part.position !== 'off') part.position = 'tight'
      }
      for (const filter of gearcase.filters) {
        const part = getFilterState(context.state, filter, instance)
        if (part.position !== 'off') part.position = 'tight'
      }
    }
  },
}
