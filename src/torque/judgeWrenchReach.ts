import type { Reason } from '../base/index.js'
import { exactOf, type Quantity, requireQuantityOf, TORQUE, type TorqueUnit } from '../quantity/index.js'
import type { TorqueWrench } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { exactTorque, nearestTorque } from './exactTorque.js'
import { requireWrench } from './requireInput.js'
import { scaleMark } from './scaleMark.js'
import { wrenchDeviation } from './wrenchDeviation.js'

export interface WrenchRangeVerdict {
  /** `can`: one of the scales has a mark at exactly this torque, inside its usable range. */
  readonly verdict: 'can' | 'cannot'
  readonly reasons: readonly Reason[]
}

/** Whether a wrench can be set to a recorded torque. */
export function judgeWrenchReach(
  wrench: TorqueWrench,
  set: Quantity<TorqueUnit>,
  iso6789: '2017' | '2003',
): WrenchRangeVerdict {
  requireWrench('wrench', wrench)
  requireQuantityOf(TORQUE, 'set', set, { above: 0 })
  const reasons: Reason[] = []
  for (const scale of wrench.scales) {
    const { unit } = scale
    const value = exactTorque(set, unit)
    const target = { low: value, high: value, aim: value, slack: exactOf(0), asQuantity: set }
    const found = scaleMark(wrench, scale, iso6789, wrenchDeviation(wrench), target)
    if (found.mark) return { verdict: 'can', reasons: [] }
    if (found.refusal) reasons.push(found.refusal)
    else
      reasons.push(
        torqueReason('torque/set-not-a-mark', {
          set,
          ...(found.below && { below: nearestTorque(found.below, unit) }),
          ...(found.above && { above: nearestTorque(found.above, unit) }),
        }),
      )
  }
  return { verdict: 'cannot', reasons }
}
