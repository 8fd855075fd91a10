import type { Action } from '../spec/index.js'
import type { ActionRow } from './actionRow.js'
import { CLOSING_ACTIONS } from './actions/closingActions.js'
import { FILLING_ACTIONS } from './actions/fillingActions.js'
import { MACHINE_ACTIONS } from './actions/machineActions.js'
import { OPENING_ACTIONS } from './actions/openingActions.js'
import { SEALING_ACTIONS } from './actions/sealingActions.js'

/**
 * The one table of actions: for each, the parts it is done on, what must hold first, what it changes, its hazards,
 * tools, supplies and minutes. Building, simulation, checking, repair, kits, cards and the table in the docs are all
 * driven by it. Minutes are a house estimate for one person with the tools at hand; `planned` ones depend on the
 * oil, the hose or the sealant and are worked out by the planner.
 *
 * Source: common practice, no source; signal words in the sense of ANSI Z535.6.
 * @example
 * import { ACTIONS } from 'drivetrain-service/v1/procedure'
 * // What must hold before the oil is left to drain?
 * ACTIONS['let drain'].needs.includes('fill-not-vented') // => true
 */
export const ACTIONS: Readonly<Record<Action, ActionRow>> = {
  ...MACHINE_ACTIONS,
  ...OPENING_ACTIONS,
  ...SEALING_ACTIONS,
  ...FILLING_ACTIONS,
  ...CLOSING_ACTIONS,
}
