import { isDisputed } from '../lookup/isDisputed.js'
import { listGearcaseValues } from '../lookup/listGearcaseValues.js'
import { pickFirstPrinted } from '../lookup/pickFirstPrinted.js'
import { readStatedRange } from '../lookup/readStatedRange.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A level far below its hole: no finger reaches it, and such a gearcase is hardly ever that deep. A decimal point or
 * a unit is wrong.
 * Judges: Every stated `below` of a fill method `to level hole`, overrides included, by its first printed figure.
 * Finds any whose highest figure is above 100 mm. Not judged if a printed figure beside it disagrees.
 * Place: the value
 * Params: gearcase: its name; below: as printed first
 * Harm: machine
 * Common practice, no source: levels are read with a finger or a bent wire, at most some centimetres down; the 100
 * mm are our own estimate.
 */
export const rule = sheetRule('fill/implausible-level-depth', 'warning', ({ sheet }) =>
  listGearcaseValues(sheet, 'oilSpace/fill/method/below').flatMap(({ path, value, gearcase }) => {
    if ((readStatedRange(value, 'mm')?.high ?? 0) <= MAX_DEPTH_MM || isDisputed(sheet, path)) return []
    return [{ path, params: { gearcase: gearcase.name, below: pickFirstPrinted(value) } }]
  }),
)

const MAX_DEPTH_MM = 100
