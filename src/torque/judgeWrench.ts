import type { Reason } from '../base/index.js'
import { exactOf, findNearestDouble, LENGTH_FACTORS, requireQuantityOf } from '../quantity/index.js'
import type { StatedValue, Tightening, TorqueWrench } from '../spec/index.js'
import { calculateAdaptorRatio } from './calculateAdaptorRatio.js'
import { torqueReason } from './codes.js'
import { judgeTorque } from './judgeTorque.js'
import { makeNoTorqueReason } from './noBandReason.js'
import type { Fit, TorqueFit, WrenchOptions, WrenchVerdict } from './wrenchVerdict.js'

const FITS_WORST_FIRST: readonly Fit[] = ['does not fit', 'cannot tell', 'fits with care', 'fits']

/** The figures of the angle, without its tolerance. */
function makeAngleParams(angle: StatedValue<'deg'>): { nominal?: string; min?: string; max?: string } {
  if (angle.kind !== 'limits') return { nominal: angle.value }
  const { min, max } = angle
  return { ...(min && { min }), ...(max && { max }) }
}

/** {@link checkWrench} without the checks of its arguments. */
export function judgeWrench(
  wrench: TorqueWrench,
  tightening: Tightening,
  options: WrenchOptions,
): WrenchVerdict {
  const cannotTell = (reason: Reason): WrenchVerdict => ({
    verdict: 'cannot tell',
    reasons: [reason],
    stages: [],
  })
  if (tightening.kind !== 'torque') return cannotTell(makeNoTorqueReason(tightening))

  let ratio = exactOf(1)
  const { adaptor } = options
  const isCrowfoot = adaptor !== undefined && (adaptor.kind === undefined || adaptor.kind === 'crowfoot')
  if (isCrowfoot) {
    const { extension, angle } = adaptor
    const lever = wrench.leverLength
    if (extension === undefined) return cannotTell(torqueReason('torque/extension-missing', {}))
    if (lever === undefined) return cannotTell(torqueReason('torque/lever-length-missing', { extension }))
    requireQuantityOf(LENGTH_FACTORS, 'wrench.leverLength', lever, { above: 0 })
    const degrees = angle?.value ?? 0
    const adaptorRatio = calculateAdaptorRatio(lever, extension, degrees)
    if (adaptorRatio === undefined)
      throw new RangeError(
        `options.adaptor must not reach back to the hand: L + E·cos θ must be above 0, got L ${lever.value} ${lever.unit}, E ${extension.value} ${extension.unit} at ${degrees}°`,
      )
    ratio = adaptorRatio
  }
  const finalFit = judgeTorque(wrench, tightening.torque, options, ratio)
  const stages = (tightening.stages ?? []).map((stage) => judgeTorque(wrench, stage, options, ratio))
  const fits: readonly TorqueFit[] = [finalFit, ...stages]
  const verdict = FITS_WORST_FIRST.find((fit) => fits.some((torqueFit) => torqueFit.verdict === fit)) as Fit

  const reasons: Reason[] = [...finalFit.reasons]
  for (const [at, stage] of stages.entries())
    if (stage.verdict !== 'fits')
      for (const reason of stage.reasons)
        reasons.push(
          torqueReason('torque/stage', { stage: at + 1, stages: stages.length, reason: { ...reason } }),
        )
  if (isCrowfoot && finalFit.setting !== undefined)
    reasons.push(
      torqueReason('torque/adaptor-changes-setting', {
        setting: finalFit.setting.setting,
        torque: finalFit.setting.atFastener,
        ratio: findNearestDouble(ratio),
      }),
    )
  if (tightening.thenAngle !== undefined)
    reasons.push(torqueReason('torque/angle-after-torque', { angle: makeAngleParams(tightening.thenAngle) }))
  // no setting if a stage has none, so that it agrees with `verdict`
  const setting = fits.every((fit) => fit.setting) ? finalFit.setting : undefined
  return { ...finalFit, setting, verdict, reasons, stages } as WrenchVerdict
}
