import type { Reason } from '../base/index.js'
import type { Quantity, TorqueUnit } from '../quantity/index.js'
import { exactOf, requireQuantityOf, TORQUE_FACTORS } from '../quantity/index.js'
import type { TorqueWrench } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { exactTorque, findNearestTorque } from './exactTorque.js'
import { findScaleMark } from './findScaleMark.js'
import { findWrenchDeviation } from './findWrenchDeviation.js'
import { requireWrench } from './requireInput.js'

export interface WrenchSettingVerdict {
  /** `can`: one of the scales has a mark at exactly this torque, inside its usable range. */
  readonly verdict: 'can' | 'cannot'
  readonly reasons: readonly Reason[]
}

/** Whether a wrench can be set to a recorded torque. */
export function judgeWrenchSetting(
  wrench: TorqueWrench,
  set: Quantity<TorqueUnit>,
  iso6789: '2017' | '2003',
): WrenchSettingVerdict {
  requireWrench('wrench', wrench)
  requireQuantityOf(TORQUE_FACTORS, 'set', set, { above: 0 })
  const reasons: Reason[] = []
  for (const scale of wrench.scales) {
    const { unit } = scale
    const value = exactTorque(set, unit)
    const target = { low: value, high: value, aim: value, slack: exactOf(0), asQuantity: set }
    const scaleMark = findScaleMark(wrench, scale, iso6789, findWrenchDeviation(wrench), target)
    if (scaleMark.mark) return { verdict: 'can', reasons: [] }
    if (scaleMark.refusal) reasons.push(scaleMark.refusal)
    else
      reasons.push(
        torqueReason('torque/setting-not-a-mark', {
          set,
          ...(scaleMark.below && { below: findNearestTorque(scaleMark.below, unit) }),
          ...(scaleMark.above && { above: findNearestTorque(scaleMark.above, unit) }),
        }),
      )
  }
  return { verdict: 'cannot', reasons }
}
