import type { Reason } from '../base/index.js'
import {
  compareExact,
  exactIn,
  nearestDouble,
  over,
  type Quantity,
  readBand,
  sideOfBand,
  type TorqueUnit,
} from '../quantity/index.js'
import type { Tightening, TorqueWrench } from '../spec/index.js'
import { checkQuantity, checkTorqueWrench } from './checkInput.js'
import { checkTightening } from './checkTightening.js'
import { checkWrenchOptions } from './checkWrenchOptions.js'
import { torqueReason } from './codes.js'
import { newtonMetresIn, torqueIn } from './exactTorque.js'
import { oneLimitReason } from './oneLimitReason.js'
import { scaleMark } from './scaleMark.js'
import { wrenchDeviation } from './wrenchDeviation.js'
import type { WrenchOptions } from './wrenchVerdict.js'

export interface TorqueSetVerdict {
  /** Whether the torque lies in the sheet's band; both ends belong to it. */
  readonly torque: 'inside' | 'outside' | 'cannot tell'
  /** Whether the wrench can be set to exactly that: a mark inside the usable range of one of its scales. */
  readonly wrench: 'can' | 'cannot'
  readonly reasons: readonly Reason[]
}

/**
 * Whether a torque that a record writes down is the sheet's, and whether the wrench it names could give it. To choose a
 * setting beforehand use {@link checkWrench}.
 *
 * @param wrench - the wrench that the record names
 * @param tightening - as in the sheet, resolved for one machine
 * @param set - the torque as recorded, above 0, read by its shortest decimal
 * @param options - as for {@link checkWrench}, without an adaptor: a record keeps the torque of the fastener
 * @returns both verdicts with their reasons; the torque is `cannot tell` where the sheet states no band that decides
 * @throws TypeError or RangeError naming the argument
 *
 * Source: as {@link checkWrench}.
 *
 * @example
 * ```ts
 * import { checkTorqueSet } from 'drivetrain-service/v1/torque'
 * const wrench = {
 *   name: 'Large click wrench', type: 'click', drive: '1/2 in', accuracy: { kind: 'ISO 6789' },
 *   scales: [{ unit: 'N.m', lowest: 40, highest: 200, graduation: 1 }],
 * } as const
 * const plug = {
 *   kind: 'torque', torque: { kind: 'limits', min: '20', max: '30', unit: 'N.m' }, threadCondition: 'dry',
 * } as const
 * // A record says 25 N·m with the large wrench: can that be?
 * checkTorqueSet(wrench, plug, { value: 25, unit: 'N.m' }, { iso6789: '2017' }).wrench // => 'cannot'
 * ```
 */
export function checkTorqueSet(
  wrench: TorqueWrench,
  tightening: Tightening,
  set: Quantity<TorqueUnit>,
  options: Omit<WrenchOptions, 'adaptor'>,
): TorqueSetVerdict {
  checkTorqueWrench('wrench', wrench)
  checkTightening('tightening', tightening)
  checkQuantity('set', set, 'torque', 0, true)
  checkWrenchOptions(options)
  const torque = judgeTorque(tightening, set, options.tolerancePercent)
  const tool = judgeWrench(wrench, set, options.iso6789)
  return { torque: torque.verdict, wrench: tool.verdict, reasons: [...torque.reasons, ...tool.reasons] }
}

function judgeTorque(
  tightening: Tightening,
  set: Quantity<TorqueUnit>,
  tolerancePercent: number | undefined,
): { readonly verdict: TorqueSetVerdict['torque']; readonly reasons: readonly Reason[] } {
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

function judgeWrench(
  wrench: TorqueWrench,
  set: Quantity<TorqueUnit>,
  iso6789: '2017' | '2003',
): { readonly verdict: TorqueSetVerdict['wrench']; readonly reasons: readonly Reason[] } {
  const reasons: Reason[] = []
  const newtonMetres = exactIn(set, 'N.m')
  for (const scale of wrench.scales) {
    const { unit } = scale
    const value = over(newtonMetres, newtonMetresIn(unit))
    const wanted = { low: value, high: value, aim: value, told: set }
    const found = scaleMark(wrench, scale, iso6789, wrenchDeviation(wrench), wanted)
    if (found.kind === 'mark') return { verdict: 'can', reasons: [] }
    if (found.kind === 'out of range') reasons.push(found.reason)
    else
      reasons.push(
        torqueReason('torque/set-not-a-mark', {
          set,
          ...(found.below ? { below: { value: nearestDouble(found.below), unit } } : {}),
          ...(found.above ? { above: { value: nearestDouble(found.above), unit } } : {}),
        }),
      )
  }
  return { verdict: 'cannot', reasons }
}
