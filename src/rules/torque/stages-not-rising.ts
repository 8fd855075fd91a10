import { compareExact, getStatedEnds, readBand, type TorqueUnit } from '../../quantity/index.js'
import type { StatedValue } from '../../spec/index.js'
import { hasFigure } from '../lookup/printedValues.js'
import { tighteningRule } from '../ruleMakers.js'

/**
 * Stages of a tightening that do not rise, or a last stage not below the final torque. A stage below the
 * previous one changes nothing, so two figures were swapped or one belongs to another bolt.
 * Judges: Every torque with `stages`, including overrides: the stages in order, then the final torque; for
 * each the nominal, or the maximum of limits (the minimum, if there is no maximum), converted exactly. Finds
 * the first torque not above the previous one. The final torque may equal the last stage if `thenAngle`
 * follows.
 * Place: `<tightening>/stages/<place>`, or `<tightening>/torque`
 * Params: part: the name of the part (see terms); before: the previous figure, as printed; step: this figure,
 * as printed
 * Harm: machine
 * Common practice, no source.
 */
export const rule = tighteningRule('torque/stages-not-rising', 'error', ({ path, tightening, on }) => {
  if (tightening.kind !== 'torque' || tightening.stages === undefined) return []
  const { stages, torque, thenAngle } = tightening
  const steps = [...stages, torque]
  const maxTorques = steps.map((step) =>
    hasFigure(step) ? getStatedEnds(readBand(step, torque.unit)).high : undefined,
  )
  const wrongIndex = maxTorques.findIndex((high, place) => {
    const before = maxTorques[place - 1]
    if (before === undefined || high === undefined) return false
    const order = compareExact(before, high)
    return order > 0 || (order === 0 && !(place === stages.length && thenAngle !== undefined))
  })
  const [before, step] = [steps[wrongIndex - 1], steps[wrongIndex]]
  if (before === undefined || step === undefined) return []
  const at = wrongIndex === stages.length ? `${path}/torque` : `${path}/stages/${wrongIndex}`
  return [{ path: at, params: { part: on.name, before: pickHighest(before), step: pickHighest(step) } }]
})

/** The highest printed figure. */
function pickHighest(torque: StatedValue<TorqueUnit>): { value: string; unit: TorqueUnit } {
  const value = torque.kind === 'limits' ? (torque.max ?? torque.min ?? '') : torque.value
  return { value, unit: torque.unit }
}
