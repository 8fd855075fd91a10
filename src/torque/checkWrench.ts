import type { Reason } from '../finding.js'
import { nearestDouble } from '../quantity/nearestDouble.js'
import type { StatedValue, Tightening } from '../spec/leaf.js'
import type { TorqueWrench } from '../spec/toolbox.js'
import { adaptorRatio } from './adaptorRatio.js'
import { checkQuantity, checkTorqueWrench } from './checkInput.js'
import { checkTightening } from './checkTightening.js'
import { checkTorque } from './checkTorque.js'
import { checkWrenchOptions } from './checkWrenchOptions.js'
import { exactOf } from './exact.js'
import { torqueReason } from './torqueReason.js'
import type { Fit, TorqueFit, WrenchOptions, WrenchVerdict } from './wrenchVerdict.js'

const WORST_FIRST: readonly Fit[] = ['does not fit', 'cannot tell', 'fits with care', 'fits']

/** The angle's own figures; a tolerance around it is told by the sheet. */
function angleTold(angle: StatedValue<'deg'>): { nominal?: string; min?: string; max?: string } {
  if (angle.kind !== 'limits') return { nominal: angle.value }
  const { min, max } = angle
  return { ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) }
}

/**
 * Whether a torque wrench really covers a tightening, and which mark to set, for whoever lays out the tools of a
 * visit. To pick among several wrenches use {@link chooseWrenches}; for taper plugs tightened by turns use
 * {@link turnsBand}.
 *
 * Of the marks (lowest + n × step) inside the stated band and the usable range of any scale, the one nearest to the
 * nominal (the middle of two limits) is taken; ties go to the lower torque, then to the sheet's unit, then to the
 * order of the scales. The usable range is the maker's declared range; without one it starts at the lowest mark
 * (2017) or at 20 % of full scale (2003). True torque at setting S with error a of reading: S/(1+a) … S/(1−a); with
 * error e of full scale M: S − e·M … S + e·M. The true band decides only between `fits` and `fits with care`.
 *
 * @param wrench - as in a toolbox; its JSON numbers mean their shortest decimals, so that comparisons are exact.
 *   Values 0 to 1e9, percents above 0 and below 100
 * @param tightening - as in a sheet, resolved for one machine; the first printed figure of each torque decides
 * @param options - `edition` is required; `tolerancePercent` gives bare nominals a band and is said so in the
 *   reasons; `adaptor` corrects the setting, and needs the wrench's `leverLength`
 * @returns `fits`, `fits with care` (true band leaves the stated band, bare nominal, or below 20 % of full scale
 *   under 2017), `does not fit` or `cannot tell`, with the mark, the true band (nearest doubles) and every reason
 * @throws TypeError or RangeError naming the argument, for anything but valid documents and options
 *
 * Source: ISO 6789:2003 and ISO 6789-1:2017 clause 5.1.3, both as quoted by torque-tool makers (the standard's own
 * pages were not read); nearest mark, ties and `fits with care` are house rules: a mark outside the band is never set,
 * and an error that can leave the band is said aloud.
 *
 * @example
 * ```ts
 * import { checkWrench } from 'drivetrain-service/v1/torque'
 * const wrench = {
 *   name: 'Half-inch click wrench', type: 'click', drive: '1/2 in',
 *   scales: [{ unit: 'N.m', lowest: 10, highest: 100, graduation: 1 }], accuracy: { kind: 'ISO 6789' },
 * } as const
 * const plug = {
 *   kind: 'torque', threadCondition: 'dry',
 *   torque: { kind: 'nominal with tolerance', value: '40', minus: '4', plus: '4', unit: 'N.m' },
 * } as const
 * // Which mark, and what does the plug truly get when the wrench is ±4 %?
 * const { verdict, setting } = checkWrench(wrench, plug, { edition: '2017' })
 * verdict // => 'fits'
 * setting?.setting.value // => 40
 * setting?.trueBand.newtonMetres.min.value.toFixed(2) // => '38.46'
 * setting?.trueBand.newtonMetres.max.value.toFixed(2) // => '41.67'
 * ```
 */
export function checkWrench(
  wrench: TorqueWrench,
  tightening: Tightening,
  options: WrenchOptions,
): WrenchVerdict {
  checkTorqueWrench('wrench', wrench)
  checkTightening('tightening', tightening)
  checkWrenchOptions(options)
  const cannotTell = (reason: Reason): WrenchVerdict => ({
    verdict: 'cannot tell',
    reasons: [reason],
    stages: [],
  })
  if (tightening.kind === 'not stated') return cannotTell(torqueReason('torque/not-stated', {}))
  if (tightening.kind === 'turns') {
    const { min, max } = tightening
    return cannotTell(torqueReason('torque/by-turns', max === undefined ? { min } : { min, max }))
  }

  let ratio = exactOf(1)
  const { adaptor } = options
  if (adaptor !== undefined) {
    const { extension, angle } = adaptor
    const lever = wrench.leverLength
    if (lever === undefined) return cannotTell(torqueReason('torque/lever-length-missing', { extension }))
    checkQuantity('wrench.leverLength', lever, 'length', 0, true)
    const found = adaptorRatio(lever, extension, angle?.value ?? 0)
    if (found === undefined)
      throw new RangeError(
        `options.adaptor must not reach back to the hand: L + E·cos θ must be above 0, got L ${lever.value} ${lever.unit}, E ${extension.value} ${extension.unit} at ${angle?.value ?? 0}°`,
      )
    ratio = found
  }
  const final = checkTorque(wrench, tightening.torque, options, ratio)
  const stages = (tightening.stages ?? []).map((stage) => checkTorque(wrench, stage, options, ratio))
  const all: readonly TorqueFit[] = [final, ...stages]
  const verdict = WORST_FIRST.find((fit) => all.some((one) => one.verdict === fit)) ?? final.verdict

  const reasons: Reason[] = [...final.reasons]
  for (const [at, stage] of stages.entries())
    if (stage.verdict !== 'fits')
      for (const reason of stage.reasons)
        reasons.push(
          torqueReason('torque/stage', { stage: at + 1, stages: stages.length, reason: { ...reason } }),
        )
  if (adaptor !== undefined && final.setting !== undefined && wrench.leverLength !== undefined)
    reasons.push(
      torqueReason('torque/adaptor-changes-setting', {
        setting: final.setting.setting,
        torque: final.setting.atFastener,
        ratio: nearestDouble(ratio),
      }),
    )
  if (tightening.thenAngle !== undefined)
    reasons.push(torqueReason('torque/then-angle', { angle: angleTold(tightening.thenAngle) }))
  return { ...final, verdict, reasons, stages }
}
