import type { Action } from '../spec/index.js'
import type { ActionRow } from './actionRow.js'
import { CLOSING_ACTIONS } from './actions/closingActions.js'
import { OPENING_ACTIONS } from './actions/openingActions.js'

/**
 * The one table of actions: for each, the parts it is done on, what must hold first, what it changes, the figures
 * that it shows, its hazards, tools, supplies and minutes. Building, simulation, checking, repair, kits, cards and the
 * table in the docs all read it. Minutes are a house estimate for one person with the tools at hand; `planned` ones
 * depend on the oil, the hose or the sealant, and the planner calculates them.
 *
 * Source: common practice, no source; signal words in the sense of ANSI Z535.6.
 * @example
 * import { ACTIONS } from 'drivetrain-service/v1/procedure'
 * // What must hold before the oil is left to drain?
 * ACTIONS['let drain'].needs.includes('fill-not-vented') // => true
 */
export const ACTIONS: Readonly<Record<Action, ActionRow>> = {
  ...OPENING_ACTIONS,
  ...CLOSING_ACTIONS,
}

/** Whether steps of this action show this figure: `tightening` where something is tightened, `oils` where oil is used. */
export function showsFigure(action: Action, name: string): boolean {
  return ACTIONS[action].figures.some((figure) => figure.name === name)
}
