import type { Opening, OpeningRole } from '../../spec/index.js'
import { checkPlugsSwapped, findTorqueSlip } from '../../torque/index.js'
import { hasFigure, pickFirstPrinted } from '../lookup/printedValues.js'
import { gearcaseRule } from '../ruleMakers.js'

/**
 * Fill and drain plugs whose torques fit each other's threads clearly better than their own. The lines of the
 * table were swapped. It is a warning, since some manuals print unusual pairs.
 * Judges: Every gearcase with exactly one opening only for filling and one only for draining, each with a
 * torque figure that no factor of `torque/slip-at-plug` explains. Overrides are not judged. The usual torque
 * of a plug is the geometric mean of the lowest and the highest published figure for its thread and housing;
 * a torque (nominal, middle of two limits, or the single limit) misses it by the ratio of the larger to the
 * smaller. Finds two torques if swapping them divides the product of both ratios by 1.5 or more. Skipped if
 * both plugs have the same usual torque, or one of them has none.
 * Place: `<fill opening>/tightening/torque`
 * Params: gearcase: its name; fill: torque of the fill plug as first printed; drain: torque of the drain plug
 * as first printed
 * Harm: machine
 * Common practice, no source. Judged against the plug torques of MTN 5183-1 and -6, from a secondary source.
 */
export const rule = gearcaseRule(
  'torque/fill-and-drain-swapped',
  'warning',
  ([id, { name, openings }], { document }) => {
    const [fill, ...moreFills] = findOpeningsWithOnlyRole(openings, 'fill', 'drain')
    const [drain, ...moreDrains] = findOpeningsWithOnlyRole(openings, 'drain', 'fill')
    if (fill === undefined || drain === undefined || moreFills.length > 0 || moreDrains.length > 0) return []
    if (checkPlugsSwapped(fill.plug, drain.plug).verdict !== 'looks swapped') return []
    const torquePath = (opening: string) => `/gearcases/${id}/openings/${opening}/tightening/torque`
    const params = { gearcase: name, fill: fill.torque, drain: drain.torque }
    const related = { document: { kind: 'spec-sheet', id: document.id }, path: torquePath(drain.id) } as const
    return [{ path: torquePath(fill.id), params, related: [related] }]
  },
)

/** Openings with a plausible torque and with one role but not the other. */
function findOpeningsWithOnlyRole(
  openings: Readonly<Record<string, Opening>>,
  role: OpeningRole,
  otherRole: OpeningRole,
) {
  return Object.entries(openings).flatMap(([id, { uses, tightening, thread, housing = 'not stated' }]) => {
    const roles = uses.map((use) => use.role)
    if (!roles.includes(role) || roles.includes(otherRole) || tightening.kind !== 'torque') return []
    if (!hasFigure(tightening.torque)) return []
    if (findTorqueSlip(tightening.torque, thread, housing).verdict === 'slip') return []
    const torque = pickFirstPrinted(tightening.torque)
    return [{ id, torque, plug: { torque, housing, ...(thread === undefined ? {} : { thread }) } }]
  })
}
