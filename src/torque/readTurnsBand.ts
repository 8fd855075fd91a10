import type { Reason } from '../base/index.js'
import { figureToNumber } from '../quantity/index.js'
import type { Tightening } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { requireTightening } from './requireInput.js'

export type TurnsBand =
  | {
      readonly verdict: 'turns'
      /** Turns past finger tight. */
      readonly min: number
      /** Absent: the manual gives no maximum; never assume one. */
      readonly max?: number
      readonly reasons: readonly Reason[]
    }
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason[] }

/**
 * Reads the turns past finger tight that the sheet states for a taper plug. For a torque, use
 * {@link checkWrench}.
 */
export function readTurnsBand(tightening: Tightening): TurnsBand {
  requireTightening('tightening', tightening)
  if (tightening.kind === 'not stated')
    return { verdict: 'cannot tell', reasons: [torqueReason('torque/not-stated', {})] }
  if (tightening.kind === 'torque')
    return { verdict: 'cannot tell', reasons: [torqueReason('torque/by-torque', {})] }
  const { min, max } = tightening
  if (max === undefined)
    return {
      verdict: 'turns',
      min: figureToNumber(min),
      reasons: [torqueReason('torque/turns-without-maximum', { min })],
    }
  return {
    verdict: 'turns',
    min: figureToNumber(min),
    max: figureToNumber(max),
    reasons: [torqueReason('torque/turns', { min, max })],
  }
}
