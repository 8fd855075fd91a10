import { lookUp } from '../lookup/lookUp.js'
import { entryRule } from '../ruleMakers.js'

/**
 * An oil change without a refilled quantity: it was not recorded, or no oil was filled in.
 * Judges: Every judged entry of a service whose task is `change`, on a gearcase with its own oil. Finds one without
 * `refilled`.
 * Place: `/entries/<place>`
 * Params: gearcase: its name
 * Harm: machine
 * Common practice, no source.
 */
export const rule = entryRule('record/refill-not-recorded', 'error', ({ path, entry, sheet, gearcase }) => {
  const isChange = lookUp(sheet.document.services, entry.service)?.task === 'change'
  if (!isChange || entry.refilled !== undefined || gearcase.oilSpace.kind === 'shared') return []
  return [{ path, params: { gearcase: gearcase.name } }]
})
