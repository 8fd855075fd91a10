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
      /** Absent: the manual gives no most; nobody may make one up. */
      readonly max?: number
      readonly reasons: readonly Reason[]
    }
  | { readonly verdict: 'cannot tell'; readonly reasons: readonly Reason[] }

/**
 * How many turns past finger tight a taper plug gets, for steps and records. For a torque use {@link checkWrench}.
 *
 * @param tightening - as in a sheet, resolved for one machine
 * @returns the turns, or `cannot tell` where the tightening is not stated or is a torque
 * @throws TypeError for anything but a tightening
 *
 * Source: the sheet; house rule, no general table fills a gap.
 *
 * @example
 * ```ts
 * import { turnsBand } from 'drivetrain-service/v1/torque'
 * const plug = { kind: 'turns', min: '1.5', max: '3', threadCondition: 'sealant' } as const
 * // How far may this taper plug be turned past finger tight?
 * const band = turnsBand(plug)
 * band.verdict === 'turns' && band.max // => 3
 * ```
 */
export function turnsBand(tightening: Tightening): TurnsBand {
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
      reasons: [torqueReason('torque/turns-open', { min })],
    }
  return {
    verdict: 'turns',
    min: figureToNumber(min),
    max: figureToNumber(max),
    reasons: [torqueReason('torque/turns', { min, max })],
  }
}
