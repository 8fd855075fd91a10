import { calculateMaxTorque } from '../lookup/fastenings.js'
import { pickFirstPrinted } from '../lookup/printedValues.js'
import { hasDisagreement, readStatedRange } from '../lookup/statedValues.js'
import { tighteningRule } from '../ruleMakers.js'

/**
 * A torque far too large for a hexagon of that size. Inch-pounds were taken for foot-pounds, or there is an
 * extra zero. The thread or the key would fail. A stated thread gives a closer limit.
 * Judges: Every torque of an opening, cover or shield without a `thread`, including overrides, whose drive is
 * a hexagon with a size in mm or inches, by its first printed figure. Finds a highest figure above 0.25 N·m
 * times the cube of the width in mm of an internal hexagon, 0.025 N·m times that of the external hexagon of
 * an opening, or 0.04 N·m times that of the external hexagon of a bolt. Skipped if a second printed figure disagrees with the first.
 * Place: `<tightening>/torque`
 * Params: part: the name of the part (see terms); drive: the size as written; torque: as first printed;
 * limit: the largest plausible torque in N·m
 * Harm: machine
 * Common practice, no source: the limits are our own estimates, about six times the torque of an ordinary
 * plug and twice that of a bolt of class 10.9.
 */
export const rule = tighteningRule(
  'torque/large-for-drive',
  'warning',
  ({ path, tightening, on }, { sheet }) => {
    if (tightening.kind !== 'torque' || hasDisagreement(sheet, `${path}/torque`)) return []
    const maxTorque = calculateMaxTorque(on)
    const torque = readStatedRange(tightening.torque, 'N.m')
    if (maxTorque === undefined || torque === undefined || torque.high <= maxTorque.limit) return []
    const limit = { value: maxTorque.limit, unit: 'N.m' as const }
    const params = {
      part: on.name,
      drive: maxTorque.size,
      torque: pickFirstPrinted(tightening.torque),
      limit,
    }
    return [{ path: `${path}/torque`, params }]
  },
)
