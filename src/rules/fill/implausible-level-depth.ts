import { pickFirstPrinted } from '../lookup/printedValues.js'
import { hasDisagreement, listGearcaseValues, readStatedRange } from '../lookup/statedValues.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * An oil level too far below its hole to reach with a finger. Such gearcases are hardly ever that deep, so a
 * decimal point or a unit is wrong.
 * Judges: Every stated `below` of a fill method `to level hole`, including overrides, by its first printed
 * figure. Finds any whose highest figure is above 100 mm. Skipped if a second printed figure disagrees with the first.
 * Place: the value
 * Params: gearcase: its name; below: as first printed
 * Harm: machine
 * Common practice, no source: levels are read with a finger or a bent wire, a few centimetres down at most. The limit
 * of 100 mm is our own estimate.
 */
export const rule = sheetRule('fill/implausible-level-depth', 'warning', ({ sheet }) =>
  listGearcaseValues(sheet, 'oilSpace/fill/method/below').flatMap(({ path, value, gearcase }) => {
    if ((readStatedRange(value, 'mm')?.high ?? 0) <= MAX_DEPTH_MM || hasDisagreement(sheet, path)) return []
    return [{ path, params: { gearcase: gearcase.name, below: pickFirstPrinted(value) } }]
  }),
)

const MAX_DEPTH_MM = 100
