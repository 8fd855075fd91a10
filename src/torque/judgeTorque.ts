import type { Reason } from '../base/index.js'
import type { Exact, TorqueUnit } from '../quantity/index.js'
import {
  add,
  compareExact,
  divide,
  exactOf,
  findNearestDouble,
  multiply,
  readBandAsPrinted,
  subtract,
} from '../quantity/index.js'
import type { StatedValue, TorqueWrench } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { findNearestTorque, findTorqueRatio } from './exactTorque.js'
import { findNearestMark } from './findNearestMark.js'
import { type Deviation, deviationAsFraction } from './findScaleMark.js'
import { findWrenchDeviation } from './findWrenchDeviation.js'
import { makeOneLimitReason } from './noBandReason.js'
import type { TorqueBand, TorqueFit, WrenchOptions } from './wrenchVerdict.js'

const toPercent = (part: Exact, whole: Exact) =>
  findNearestDouble(divide(multiply(part, exactOf(100)), whole))

function makeTorqueBand(low: Exact, high: Exact, unit: TorqueUnit): TorqueBand {
  return { min: findNearestTorque(low, unit), max: findNearestTorque(high, unit) }
}

/**
 * The verdict on one stated torque; `ratio` is the reading of the wrench for each unit of torque at the fastener.
 */
export function judgeTorque(
  wrench: TorqueWrench,
  torque: StatedValue<TorqueUnit>,
  options: WrenchOptions,
  ratio: Exact,
): TorqueFit {
  const { unit } = torque
  const { tolerancePercent } = options
  const exactBand = readBandAsPrinted(torque, tolerancePercent)
  if (exactBand.basis === 'one limit')
    return { verdict: 'cannot tell', reasons: [makeOneLimitReason(exactBand, unit)] }
  const isNominalOnly = exactBand.basis === 'nominal'
  const { aim: exactAim, low = exactAim, high = exactAim } = exactBand
  const aim = findNearestTorque(exactAim, unit)
  const band = makeTorqueBand(low, high, unit)
  const statedBand = isNominalOnly
    ? {}
    : { band: { ...band, from: exactBand.basis === 'caller' ? ('caller' as const) : ('manual' as const) } }
  const makeFitWithoutSetting = (verdict: 'does not fit' | 'cannot tell', ...reasons: readonly Reason[]) => ({
    verdict,
    ...statedBand,
    reasons,
  })
  if (compareExact(low, high) > 0)
    return makeFitWithoutSetting('cannot tell', torqueReason('torque/band-empty', { band }))

  const bandReasons: Reason[] = []
  if (isNominalOnly) bandReasons.push(torqueReason('torque/band-not-stated', { nominal: aim }))
  if (exactBand.basis === 'caller') {
    const percent = tolerancePercent as number
    bandReasons.push(torqueReason('torque/tolerance-from-caller', { nominal: aim, percent, band }))
  }

  const deviation = findWrenchDeviation(wrench)
  const target = { low, high, aim: exactAim, unit, isNominalOnly }
  const { chosen, refusals } = findNearestMark(wrench, options.iso6789, deviation, target, ratio)
  if (chosen === undefined) return makeFitWithoutSetting('does not fit', ...bandReasons, ...refusals)
  if (deviation === undefined)
    return makeFitWithoutSetting(
      'cannot tell',
      ...bandReasons,
      torqueReason('torque/iso-figure-unknown', { type: wrench.type }),
    )

  const { scale, index } = chosen
  const highest = exactOf(scale.highest)
  const share = divide(chosen.value, highest)
  const trueRange = calculateTrueBand(chosen.value, highest, deviation)
  const torqueFromScale = (scaleValue: Exact) =>
    divide(multiply(scaleValue, findTorqueRatio(scale.unit, unit)), ratio)
  const trueLow = torqueFromScale(trueRange.low)
  const trueHigh = torqueFromScale(trueRange.high)
  const isInside = compareExact(trueLow, low) >= 0 && compareExact(trueHigh, high) <= 0
  const setting = findNearestTorque(chosen.value, scale.unit)
  const torqueAtFastener = torqueFromScale(chosen.value)
  const differenceFromAim = subtract(torqueAtFastener, exactAim)
  const toNewtonMetres = findTorqueRatio(unit, 'N.m')
  const trueBand = {
    newtonMetres: makeTorqueBand(
      multiply(trueLow, toNewtonMetres),
      multiply(trueHigh, toNewtonMetres),
      'N.m',
    ),
    sheetUnit: makeTorqueBand(trueLow, trueHigh, unit),
  }

  const reasons: Reason[] = [
    isNominalOnly && differenceFromAim.n !== 0n
      ? torqueReason('torque/nearest-mark', {
          setting,
          nominal: aim,
          percent: toPercent(differenceFromAim, exactAim),
        })
      : torqueReason('torque/setting-chosen', {
          setting,
          aim,
          from: exactBand.basis === 'limits' ? 'middle' : 'nominal',
        }),
    ...bandReasons,
  ]
  if (!isNominalOnly) {
    const params = { trueBand: trueBand.sheetUnit, band, percent: deviation.percent, of: deviation.of }
    reasons.push(
      torqueReason(isInside ? 'torque/actual-torque-in-band' : 'torque/actual-torque-out-of-band', params),
    )
  }
  const isLowOnScale = wrench.declaredRange === undefined && compareExact(share, exactOf('0.2')) < 0
  if (isLowOnScale)
    reasons.push(
      torqueReason('torque/low-on-scale', {
        setting,
        highest: { value: scale.highest, unit: scale.unit },
        sharePercent: toPercent(chosen.value, highest),
      }),
    )
  return {
    verdict: isNominalOnly || !isInside || isLowOnScale ? 'fits with care' : 'fits',
    setting: {
      scale: index,
      setting,
      atFastener: findNearestTorque(torqueAtFastener, unit),
      shareOfFullScale: findNearestDouble(share),
      deviation,
      trueBand,
      trueBandInside: isNominalOnly ? 'cannot tell' : isInside ? 'yes' : 'no',
    },
    ...statedBand,
    reasons,
  }
}

/**
 * Calculates the limits of the true torque when the wrench shows or clicks at `mark`, in the unit of the
 * scale. A deviation of reading is relative to the true torque: (mark − true) ÷ true = ±a, so true = mark ÷
 * (1 ± a).
 */
function calculateTrueBand(mark: Exact, highest: Exact, deviation: Deviation): { low: Exact; high: Exact } {
  const part = deviationAsFraction(deviation)
  if (deviation.of === 'reading') {
    const one = exactOf(1)
    return { low: divide(mark, add(one, part)), high: divide(mark, subtract(one, part)) }
  }
  const error = multiply(highest, part)
  return { low: subtract(mark, error), high: add(mark, error) }
}
