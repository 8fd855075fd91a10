import { type Reason, readPointer, splitPointer } from '../base/index.js'
import type { Gearcase, Opening, SpecSheet, Step } from '../spec/index.js'
import { HAZARD, type HazardCode } from './actionRow.js'
import { ACTIONS } from './actions.js'
import { procedureReason } from './codes.js'

/**
 * The hazards of the step's action that fit its part: washers only if it has one, tapers only if turns tighten it. Oil of
 * about 60 °C or more burns in seconds, so hot oil is a warning if `isOilHot`.
 */
export function findCautions(sheet: SpecSheet, step: Step, isOilHot = false): readonly Reason<HazardCode>[] {
  const openings = listOpenings(sheet, step)
  const fits: Partial<Record<HazardCode, boolean>> = {
    'procedure/caution-weeping-washer': openings.some(hasWasher),
    'procedure/caution-weeping-taper': openings.some((opening) => opening.tightening.kind === 'turns'),
  }
  return ACTIONS[step.do].hazards
    .filter((hazard) => fits[hazard.code] ?? true)
    .map(({ code, signal }) =>
      procedureReason(code, { signal: isOilHot && code === HAZARD.hotOil.code ? 'warning' : signal }),
    )
}

/** The opening of the step, or every opening of its gearcase. */
function listOpenings(sheet: SpecSheet, step: Step): readonly Opening[] {
  const [list, gearcase, kind, opening] = step.on === undefined ? [] : (splitPointer(step.on) ?? [])
  if (list !== 'gearcases' || gearcase === undefined) return []
  const found = readPointer(sheet.gearcases, `/${gearcase}`) as Gearcase | undefined
  if (found === undefined) return []
  if (kind !== 'openings') return Object.values(found.openings)
  return Object.entries(found.openings).flatMap(([id, one]) => (id === opening ? [one] : []))
}

function hasWasher(opening: Opening): boolean {
  return opening.seals.some((seal) => ['crush washer', 'bonded seal', 'o-ring', 'gasket'].includes(seal.kind))
}
