import { type Reason, requireNumber } from '../base/index.js'
import type { Quantity, TorqueUnit } from '../quantity/index.js'
import { compareExact, readOwnBand, requireQuantityOf, sideOfBand, TORQUE } from '../quantity/index.js'
import type { Tightening } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { exactTorque, nearestTorque } from './exactTorque.js'
import { noTorqueReason, oneLimitReason } from './noBandReason.js'
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
  requireQuantityOf(TORQUE, 'set', set, { above: 0 })
  if (tolerancePercent !== undefined) requireNumber('tolerancePercent', tolerancePercent, { above: 0 })
  if (tightening.kind !== 'torque') return { verdict: 'cannot tell', reasons: [noTorqueReason(tightening)] }
  const { unit } = tightening.torque
  const stated = readOwnBand(tightening.torque, tolerancePercent)
  const done = exactTorque(set, unit)
  if (stated.basis === 'nominal') {
    const nominal = nearestTorque(stated.aim, unit)
    return {
      verdict: compareExact(done, stated.aim) === 0 ? 'inside' : 'cannot tell',
      reasons: [torqueReason('torque/band-not-stated', { nominal })],
    }
  }
  const inside = sideOfBand(done, stated) === 0
  if (stated.basis === 'one limit')
    return { verdict: inside ? 'cannot tell' : 'outside', reasons: [oneLimitReason(stated, unit)] }
  const band = { min: nearestTorque(stated.low, unit), max: nearestTorque(stated.high, unit) }
  return {
    verdict: inside ? 'inside' : 'outside',
    reasons: [torqueReason(inside ? 'torque/set-inside' : 'torque/set-outside', { set, band })],
  }
}
