import type { Reason } from '../base/index.js'
import { type Band, chooseSingleFigure, type TorqueUnit } from '../quantity/index.js'
import type { Tightening } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { findNearestTorque } from './exactTorque.js'

/** Explains why a tightening without a torque has no setting. */
export function makeNoTorqueReason(tightening: Exclude<Tightening, { kind: 'torque' }>): Reason {
  if (tightening.kind === 'not stated') return torqueReason('torque/not-stated', {})
  const { min, max } = tightening
  return torqueReason('torque/by-turns', { min, ...(max && { max }) })
}

/** Explains why one limit gives no setting: it can prove a torque wrong, but never right. */
export function makeOneLimitReason(band: Band, unit: TorqueUnit): Reason {
  const limit = findNearestTorque(chooseSingleFigure(band), unit)
  return torqueReason('torque/one-limit-only', {
    limit,
    which: band.low === undefined ? 'maximum' : 'minimum',
  })
}
