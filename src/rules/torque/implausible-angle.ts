import { pickFirstPrinted } from '../lookup/printedValues.js'
import { hasDisagreement, readStatedRange } from '../lookup/statedValues.js'
import { tighteningRule } from '../ruleMakers.js'

/**
 * An angle of more than a whole turn after a torque. The bolt would be stretched until it breaks. The figure
 * has an extra zero.
 * Judges: Every `thenAngle` of a tightening, including overrides, by its first printed figure. Finds any
 * whose highest figure is above 360°. Skipped if a second printed figure disagrees with the first.
 * Place: `<tightening>/thenAngle`
 * Params: part: the name of the part (see terms); angle: as first printed
 * Harm: machine
 * Common practice, no source: bolts tightened by angle are turned 30° to 180°. The limit of a whole turn is
 * our own estimate.
 */
export const rule = tighteningRule(
  'torque/implausible-angle',
  'warning',
  ({ path, tightening, on }, { sheet }) => {
    const angle = tightening.kind === 'torque' ? tightening.thenAngle : undefined
    const at = `${path}/thenAngle`
    if (
      angle === undefined ||
      (readStatedRange(angle, 'deg')?.high ?? 0) <= 360 ||
      hasDisagreement(sheet, at)
    )
      return []
    return [{ path: at, params: { part: on.name, angle: pickFirstPrinted(angle) } }]
  },
)
