import type { Reason } from '../base/index.js'
import {
  exactIn,
  nearestDouble,
  over,
  type Quantity,
  requireQuantity,
  type TorqueUnit,
} from '../quantity/index.js'
import type { TorqueWrench } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { newtonMetresIn } from './exactTorque.js'
import { requireWrench } from './requireInput.js'
import { scaleMark } from './scaleMark.js'
import { wrenchDeviation } from './wrenchDeviation.js'

export interface WrenchRangeVerdict {
  /** Whether the wrench can be set to exactly that: a mark inside the usable range of one of its scales. */
  readonly verdict: 'can' | 'cannot'
  readonly reasons: readonly Reason[]
}

/** Whether the wrench that a record names could give the torque that it writes down. */
export function judgeWrenchReach(
  wrench: TorqueWrench,
  set: Quantity<TorqueUnit>,
  iso6789: '2017' | '2003',
): WrenchRangeVerdict {
  requireWrench('wrench', wrench)
  requireQuantity('set', set, 'torque', { above: 0 })
  const reasons: Reason[] = []
  const newtonMetres = exactIn(set, 'N.m')
  for (const scale of wrench.scales) {
    const { unit } = scale
    const value = over(newtonMetres, newtonMetresIn(unit))
    const target = { low: value, high: value, aim: value, asQuantity: set }
    const found = scaleMark(wrench, scale, iso6789, wrenchDeviation(wrench), target)
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
