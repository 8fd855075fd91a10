import type { Reason } from '../base/index.js'
import {
  compareExact,
  type Exact,
  exactOf,
  nearestDouble,
  over,
  readBand,
  type TorqueUnit,
  times,
} from '../quantity/index.js'
import type { StatedValue, TorqueWrench } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { newtonMetresIn, torqueIn } from './exactTorque.js'
import { nearestMark } from './nearestMark.js'
import { oneLimitReason } from './oneLimitReason.js'
import { trueTorqueBand } from './trueTorqueBand.js'
import { wrenchDeviation } from './wrenchDeviation.js'
import type { TorqueBand, TorqueFit, WrenchOptions } from './wrenchVerdict.js'

function bandIn(low: Exact, high: Exact, unit: TorqueUnit): TorqueBand {
  return { min: torqueIn(low, unit), max: torqueIn(high, unit) }
}

/**
 * The verdict on one stated torque; `ratio` is what the wrench reads for each unit of torque at the fastener.
 * Internal: arguments are checked by {@link checkWrench}.
 */
export function judgeTorque(
  wrench: TorqueWrench,
  torque: StatedValue<TorqueUnit>,
  options: WrenchOptions,
  ratio: Exact,
): TorqueFit {
  const { unit } = torque
  const { tolerancePercent } = options
  const stated = readBand(torque, 'N.m', tolerancePercent)
  if (stated.basis === 'one limit') return { verdict: 'cannot tell', reasons: [oneLimitReason(stated, unit)] }
  const bare = stated.basis === 'nominal'
  const { low, high } = bare ? { low: stated.aim, high: stated.aim } : stated
  const aim = torqueIn(stated.aim, unit)
  const band = bandIn(low, high, unit)
  const told = bare
    ? {}
    : { band: { ...band, from: stated.basis === 'caller' ? ('caller' as const) : ('manual' as const) } }
  if (compareExact(low, high) > 0)
    return { verdict: 'cannot tell', ...told, reasons: [torqueReason('torque/band-empty', { band })] }

  const basis: Reason[] = []
  if (bare) basis.push(torqueReason('torque/band-not-stated', { nominal: aim }))
  else if (stated.basis === 'caller' && tolerancePercent !== undefined)
    basis.push(
      torqueReason('torque/tolerance-from-caller', { nominal: aim, percent: tolerancePercent, band }),
    )

  const deviation = wrenchDeviation(wrench)
  const wanted = { low, high, aim: stated.aim, unit }
  const { taken, refusals, betweenMarks } = nearestMark(wrench, options.iso6789, deviation, wanted, ratio)
  if (taken === undefined) {
    // beside a bare nominal a mark may or may not do: only the manual's tolerance could say
    const verdict = bare && betweenMarks ? 'cannot tell' : 'does not fit'
    return { verdict, ...told, reasons: [...basis, ...refusals] }
  }
  if (deviation === undefined)
    return {
      verdict: 'cannot tell',
      ...told,
      reasons: [...basis, torqueReason('torque/iso-figure-unknown', { type: wrench.type })],
    }

  const { scale, index } = taken
  const highest = exactOf(scale.highest)
  const share = over(taken.value, highest)
  const ends = trueTorqueBand(taken.value, highest, deviation)
  const atFastener = (onScale: Exact) => over(times(onScale, newtonMetresIn(scale.unit)), ratio)
  const least = atFastener(ends.least)
  const most = atFastener(ends.most)
  const inside = compareExact(least, low) >= 0 && compareExact(most, high) <= 0
  const setting = { value: nearestDouble(taken.value), unit: scale.unit }
  const trueBand = { newtonMetres: bandIn(least, most, 'N.m'), sheetUnit: bandIn(least, most, unit) }

  const reasons: Reason[] = [
    torqueReason('torque/setting-chosen', {
      setting,
      aim,
      from: stated.basis === 'limits' ? 'middle' : 'nominal',
    }),
    ...basis,
  ]
  if (!bare) {
    const params = { trueBand: trueBand.sheetUnit, band, percent: deviation.percent, of: deviation.of }
    reasons.push(torqueReason(inside ? 'torque/true-band-inside' : 'torque/true-band-leaves', params))
  }
  const lowOnScale = wrench.declaredRange === undefined && compareExact(share, exactOf('0.2')) < 0
  if (lowOnScale)
    reasons.push(
      torqueReason('torque/low-on-scale', {
        setting,
        highest: { value: scale.highest, unit: scale.unit },
        sharePercent: nearestDouble(times(share, exactOf(100))),
      }),
    )
  return {
    verdict: bare || !inside || lowOnScale ? 'fits with care' : 'fits',
    setting: {
      scale: index,
      setting,
      atFastener: torqueIn(over(taken.newtonMetres, ratio), unit),
      shareOfFullScale: nearestDouble(share),
      deviation,
      trueBand,
      trueBandInside: bare ? 'cannot tell' : inside ? 'yes' : 'no',
    },
    ...told,
    reasons,
  }
}
