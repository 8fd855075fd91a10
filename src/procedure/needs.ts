import type { Severity } from '../base/index.js'
import { stateKey } from './layout.js'
import { CLOSING_NEEDS, listAffectedInstances } from './needs/closing.js'
import { FILLING_NEEDS, listNotDrained } from './needs/filling.js'
import { FILTER_NEEDS } from './needs/filters.js'
import { listOtherFills, OPENING_NEEDS } from './needs/opening.js'
import { SECURING_NEEDS } from './needs/securing.js'
import { coverAt, filterAt, gearcaseAt, type Need, openingAt, type StepContext } from './stepContext.js'

/** Each need's finding has the code `procedure/` and its name. */
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

const WARNINGS: readonly NeedName[] = [
  'manual-not-read',
  'no-protection',
  'magnet-not-cleaned',
  'oil-not-inspected',
  'not-wiped-down',
  'not-cleared-away',
  'axle-not-chocked',
]

export function severityOf(name: NeedName): Severity {
  return WARNINGS.includes(name) ? 'warning' : 'error'
}

/** After a finding the need counts as met: by its remedy's steps, or by these where those would change more than that. */
export const ASSUMED: Readonly<Partial<Record<NeedName, (context: StepContext) => void>>> = {
  'not-on-level-ground': ({ state }) => {
    state.ground = 'level'
  },
  'oil-not-warm': ({ state }) => {
    state.oilWarm = true
  },
  'fill-not-cracked': (context) => {
    const [fill] = listOtherFills(context)
    if (fill === undefined) return
    const here = openingAt(context.state, fill.opening, fill.instance)
    here.everCracked = true
    // Cracked and nipped: a fill plug that was forgotten is one mistake, not two.
    if (here.position === 'tight') here.position = 'nipped'
    for (const seal of fill.opening.seals) context.state.seals[stateKey(seal.path, fill.instance)] = 'used'
  },
  'not-drained': (context) => {
    for (const one of listNotDrained(context)) gearcaseAt(context.state, one).oil = 'out'
    if (context.state.usedOil === 'none') context.state.usedOil = 'in the pan'
  },
  'not-rechecked': ({ state, owner }) => {
    if (owner !== undefined) gearcaseAt(state, owner).levelCheckedSinceRun = true
  },
  // What is still out is left to the steps that close it; what only lacks its tightening counts as tight from here.
  'not-tightened': (context) => {
    for (const { gearcase, instance } of listAffectedInstances(context)) {
      for (const opening of gearcase.openings) {
        const here = openingAt(context.state, opening, instance)
        if (here.position !== 'out') here.position = 'tight'
      }
      for (const cover of gearcase.covers) {
        const here = coverAt(context.state, cover, instance)
        if (here.position !== 'off') here.position = 'tight'
      }
      for (const filter of gearcase.filters) {
        const here = filterAt(context.state, filter, instance)
        if (here.position !== 'off') here.position = 'tight'
      }
    }
  },
}
