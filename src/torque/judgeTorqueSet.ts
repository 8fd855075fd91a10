import { type Reason, requireNumber } from '../base/index.js'
import {
  compareExact,
  exactIn,
  type Quantity,
  readBand,
  requireQuantity,
  sideOfBand,
  type TorqueUnit,
} from '../quantity/index.js'
import type { Tightening } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { torqueIn } from './exactTorque.js'
import { oneLimitReason } from './oneLimitReason.js'
import { requireTightening } from './requireInput.js'

export interface TorqueSetVerdict {
  /** Whether the torque is in the sheet's band; both ends belong to it. */
  readonly verdict: 'inside' | 'outside' | 'cannot tell'
  readonly reasons: readonly Reason[]
}

/** Whether a recorded torque is the sheet's; `cannot tell` where the sheet states no band that decides. */
export function judgeTorqueSet(
  tightening: Tightening,
  set: Quantity<TorqueUnit>,
  tolerancePercent?: number,
): TorqueSetVerdict {
  requireTightening('tightening', tightening)
  requireQuantity('set', set, 'torque', { above: 0 })
  if (tolerancePercent !== undefined) requireNumber('tolerancePercent', tolerancePercent, { above: 0 })
  if (tightening.kind === 'not stated')
    return { verdict: 'cannot tell', reasons: [torqueReason('torque/not-stated', {})] }
  if (tightening.kind === 'turns') {
    const { min, max } = tightening
    const params = max === undefined ? { min } : { min, max }
    return { verdict: 'cannot tell', reasons: [torqueReason('torque/by-turns', params)] }
  }
  const { unit } = tightening.torque
  const stated = readBand(tightening.torque, 'N.m', tolerancePercent)
  const done = exactIn(set, 'N.m')
  if (stated.basis === 'nominal') {
    const nominal = torqueIn(stated.aim, unit)
    return {
      verdict: compareExact(done, stated.aim) === 0 ? 'inside' : 'cannot tell',
      reasons: [torqueReason('torque/band-not-stated', { nominal })],
    }
  }
  const inside = sideOfBand(done, stated) === 0
  if (stated.basis === 'one limit')
    return { verdict: inside ? 'cannot tell' : 'outside', reasons: [oneLimitReason(stated, unit)] }
  const band = { min: torqueIn(stated.low, unit), max: torqueIn(stated.high, unit) }
  return {
    verdict: inside ? 'inside' : 'outside',
    reasons: [torqueReason(inside ? 'torque/set-inside' : 'torque/set-outside', { set, band })],
  }
}
