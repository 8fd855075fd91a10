import type { Reason } from '../base/index.js'
import type { Exact, TorqueUnit } from '../quantity/index.js'
import {
  compareExact,
  exactOf,
  minus,
  nearestDouble,
  over,
  plus,
  readBandAsPrinted,
  times,
} from '../quantity/index.js'
import type { StatedValue, TorqueWrench } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { nearestTorque, torqueRatio } from './exactTorque.js'
import { nearestMark } from './nearestMark.js'
import { oneLimitReason } from './noBandReason.js'
import { type Deviation, deviationPart } from './scaleMark.js'
import { wrenchDeviation } from './wrenchDeviation.js'
import type { TorqueBand, TorqueFit, WrenchOptions } from './wrenchVerdict.js'

const percentOf = (part: Exact, whole: Exact) => nearestDouble(over(times(part, exactOf(100)), whole))

function bandIn(low: Exact, high: Exact, unit: TorqueUnit): TorqueBand {
  return { min: nearestTorque(low, unit), max: nearestTorque(high, unit) }
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
  const stated = readBandAsPrinted(torque, tolerancePercent)
  if (stated.basis === 'one limit') return { verdict: 'cannot tell', reasons: [oneLimitReason(stated, unit)] }
  const nominalOnly = stated.basis === 'nominal'
  const { aim: exactAim, low = exactAim, high = exactAim } = stated
  const aim = nearestTorque(exactAim, unit)
  const band = bandIn(low, high, unit)
  const statedBand = nominalOnly
    ? {}
    : { band: { ...band, from: stated.basis === 'caller' ? ('caller' as const) : ('manual' as const) } }
  const noSetting = (verdict: 'does not fit' | 'cannot tell', ...reasons: readonly Reason[]) => ({
    verdict,
    ...statedBand,
    reasons,
  })
  if (compareExact(low, high) > 0)
    return noSetting('cannot tell', torqueReason('torque/band-empty', { band }))

  const basis: Reason[] = []
  if (nominalOnly) basis.push(torqueReason('torque/band-not-stated', { nominal: aim }))
  if (stated.basis === 'caller') {
    const percent = tolerancePercent as number
    basis.push(torqueReason('torque/tolerance-from-caller', { nominal: aim, percent, band }))
  }

  const deviation = wrenchDeviation(wrench)
  const target = { low, high, aim: exactAim, unit, nominalOnly }
  const { chosen, refusals } = nearestMark(wrench, options.iso6789, deviation, target, ratio)
  if (chosen === undefined) return noSetting('does not fit', ...basis, ...refusals)
  if (deviation === undefined)
    return noSetting(
      'cannot tell',
      ...basis,
      torqueReason('torque/iso-figure-unknown', { type: wrench.type }),
    )

  const { scale, index } = chosen
  const highest = exactOf(scale.highest)
  const share = over(chosen.value, highest)
  const ends = trueTorqueBand(chosen.value, highest, deviation)
  const atFastener = (onScale: Exact) => over(times(onScale, torqueRatio(scale.unit, unit)), ratio)
  const trueLow = atFastener(ends.low)
  const trueHigh = atFastener(ends.high)
  const inside = compareExact(trueLow, low) >= 0 && compareExact(trueHigh, high) <= 0
  const setting = nearestTorque(chosen.value, scale.unit)
  const torqueAtFastener = atFastener(chosen.value)
  const fromAim = minus(torqueAtFastener, exactAim)
  const inNewtonMetres = torqueRatio(unit, 'N.m')
  const trueBand = {
    newtonMetres: bandIn(times(trueLow, inNewtonMetres), times(trueHigh, inNewtonMetres), 'N.m'),
    sheetUnit: bandIn(trueLow, trueHigh, unit),
  }

  const reasons: Reason[] = [
    nominalOnly && fromAim.n !== 0n
      ? torqueReason('torque/nearest-mark', {
          setting,
          nominal: aim,
          percent: percentOf(fromAim, exactAim),
        })
      : torqueReason('torque/setting-chosen', {
          setting,
          aim,
          from: stated.basis === 'limits' ? 'middle' : 'nominal',
        }),
    ...basis,
  ]
  if (!nominalOnly) {
    const params = { trueBand: trueBand.sheetUnit, band, percent: deviation.percent, of: deviation.of }
    reasons.push(torqueReason(inside ? 'torque/true-band-inside' : 'torque/true-band-outside', params))
  }
  const lowOnScale = wrench.declaredRange === undefined && compareExact(share, exactOf('0.2')) < 0
  if (lowOnScale)
    reasons.push(
      torqueReason('torque/low-on-scale', {
        setting,
        highest: { value: scale.highest, unit: scale.unit },
        sharePercent: percentOf(chosen.value, highest),
      }),
    )
  return {
    verdict: nominalOnly || !inside || lowOnScale ? 'fits with care' : 'fits',
    setting: {
      scale: index,
      setting,
      atFastener: nearestTorque(torqueAtFastener, unit),
      shareOfFullScale: nearestDouble(share),
      deviation,
      trueBand,
      trueBandInside: nominalOnly ? 'cannot tell' : inside ? 'yes' : 'no',
    },
    ...statedBand,
    reasons,
  }
}

/**
 * The limits of the true torque when the wrench shows or clicks at `mark`, in the unit of the scale. A deviation of
 * reading refers to the true torque: (mark − true) ÷ true = ±a, so true = mark ÷ (1 ± a).
 */
function trueTorqueBand(mark: Exact, highest: Exact, deviation: Deviation): { low: Exact; high: Exact } {
  const part = deviationPart(deviation)
  if (deviation.of === 'reading') {
    const one = exactOf(1)
    return { low: over(mark, plus(one, part)), high: over(mark, minus(one, part)) }
  }
  const error = times(highest, part)
  return { low: minus(mark, error), high: plus(mark, error) }
}
