import { type Reason, readPointer, requireShape, shown, splitPointer } from '../base/index.js'
import { type Gearcase, type Opening, requireDocument, type SpecSheet, type Step } from '../spec/index.js'
import type { HazardCode } from './actionRow.js'
import { ACTIONS } from './actions.js'

/**
 * The cautions to read before a step, for a card or a plan: few, and only those that its part calls for. They are no
 * complete list: the machine's own manual comes first.
 * For everything else that an action brings with it read {@link ACTIONS}.
 *
 * Equation: the hazards of the action, without those about washers where the part has none, and about taper threads
 * where nothing is tightened by turns.
 * @param sheet The sheet that the step points into.
 * @param step The step.
 * @returns Reasons with the code of each caution and its signal word.
 * @throws TypeError where the arguments are no parsed sheet and step.
 *
 * Source: signal words in the sense of ANSI Z535.6; what is cautioned of is common practice, no source.
 * @example
 * import { findCautions } from 'drivetrain-service/v1/procedure'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: {}, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} }
 * // How strong is the caution before the machine is raised?
 * findCautions(sheet, { id: 'raise', do: 'raise the machine' })[0].params.signal // => 'warning'
 */
export function findCautions(sheet: SpecSheet, step: Step): readonly Reason[] {
  requireDocument('sheet', sheet, 'spec-sheet')
  requireShape('step', step, { do: 'string', 'on?': 'string' })
  if (!Object.hasOwn(ACTIONS, step.do))
    throw new TypeError(`step.do must be a known action, got ${shown(step.do)}; parse the document first`)
  const openings = listOpenings(sheet, step)
  const fits: Partial<Record<HazardCode, boolean>> = {
    'procedure/caution-weeping-washer': openings.some(hasWasher),
    'procedure/caution-weeping-taper': openings.some((opening) => opening.tightening.kind === 'turns'),
  }
  return ACTIONS[step.do].hazards
    .filter((hazard) => fits[hazard.code] ?? true)
    .map((hazard) => ({ code: hazard.code, params: { signal: hazard.signal } }))
}

/** The step's own opening, or every opening of its gearcase. */
function listOpenings(sheet: SpecSheet, step: Step): readonly Opening[] {
  const [room, gearcase, kind, opening] = step.on === undefined ? [] : (splitPointer(step.on) ?? [])
  if (room !== 'gearcases' || gearcase === undefined) return []
  const found = readPointer(sheet.gearcases, `/${gearcase}`) as Gearcase | undefined
  if (found === undefined) return []
  if (kind !== 'openings') return Object.values(found.openings)
  return Object.entries(found.openings).flatMap(([id, one]) => (id === opening ? [one] : []))
}

function hasWasher(opening: Opening): boolean {
  return opening.seals.some((seal) => ['crush washer', 'bonded seal', 'o-ring', 'gasket'].includes(seal.kind))
}
