import { type Reason, readPointer, splitPointer } from '../base/index.js'
import type { Gearcase, Opening, SpecSheet, Step } from '../spec/index.js'
import { HAZARDS, type HazardCode, type ShieldCode } from './actionRow.js'
import { ACTIONS } from './actions.js'
import { procedureReason } from './codes.js'

/**
 * The hazards of the step's action that apply to its part: washers only if it has one, tapers only if it is
 * tightened by turns. Oil of about 60 °C or more burns in seconds, so hot oil is a warning if `isOilHot`.
 * Names a shield that stays on.
 */
export function findCautions(
  sheet: SpecSheet,
  step: Step,
  isOilHot = false,
): readonly Reason<HazardCode | ShieldCode>[] {
  const openings = listOpenings(sheet, step)
  const appliesByCode: Partial<Record<HazardCode, boolean>> = {
    'procedure/caution-weeping-washer': openings.some(hasWasher),
    'procedure/caution-weeping-taper': openings.some((opening) => opening.tightening.kind === 'turns'),
  }
  const hazards = ACTIONS[step.do].hazards
    .filter((hazard) => appliesByCode[hazard.code] ?? true)
    .map(({ code, signal }) =>
      procedureReason(code, { signal: isOilHot && code === HAZARDS.hotOil.code ? 'warning' : signal }),
    )
  if (step.do !== 'clean around') return hazards
  return [
    ...hazards,
    ...listShieldsLeftOn(sheet, step).map((shield) =>
      procedureReason('procedure/caution-shield-stays', { signal: 'notice', shield }),
    ),
  ]
}

/** The shields of the step's gearcase that stay on. */
function listShieldsLeftOn({ gearcases, shields = {} }: SpecSheet, { on = '' }: Step): readonly string[] {
  const [, gearcase = ''] = splitPointer(on) ?? []
  const found = readPointer(gearcases, `/${gearcase}`) as Gearcase | undefined
  return (found?.shields ?? []).flatMap((id) => {
    const shield = shields[id]
    return shield?.reachedThrough === true ? [shield.name] : []
  })
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
