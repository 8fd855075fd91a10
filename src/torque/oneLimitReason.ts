import { type Band, singleFigure, type TorqueUnit } from '../quantity/index.js'
import { torqueReason } from './codes.js'
import { torqueIn } from './exactTorque.js'

/** Why a torque of one limit gives no setting: it can prove a torque wrong, never right. */
export function oneLimitReason(band: Band, unit: TorqueUnit) {
  const limit = torqueIn(singleFigure(band), unit)
  return torqueReason('torque/one-limit-only', {
    limit,
    which: band.low === undefined ? 'maximum' : 'minimum',
  })
}
