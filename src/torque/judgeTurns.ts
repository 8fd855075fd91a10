import { type Reason, requireNumber } from '../base/index.js'
import { compareExact, exactOf, figureToNumber } from '../quantity/index.js'
import type { Tightening } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { requireTightening } from './requireInput.js'

interface TurnsVerdict {
  readonly verdict: 'inside' | 'too few' | 'too many' | 'cannot tell'
  readonly reasons: readonly Reason[]
}

/**
 * Compares recorded turns with the sheet. Both ends are inside the band; without a maximum, the answer for
 * more turns than the minimum is `cannot tell`.
 */
export function judgeTurns(tightening: Tightening, turns: number): TurnsVerdict {
  requireNumber('turns', turns, { min: 0 })
  const band = readTurnsBand(tightening)
  if (band.verdict === 'cannot tell' || tightening.kind !== 'turns')
    return { verdict: 'cannot tell', reasons: band.reasons }
  const { min, max } = tightening
  const recordedTurns = exactOf(turns)
  if (compareExact(recordedTurns, exactOf(min)) < 0)
    return { verdict: 'too few', reasons: [torqueReason('torque/turns-too-few', { turns, min })] }
  if (max === undefined)
    return compareExact(recordedTurns, exactOf(min)) === 0
      ? { verdict: 'inside', reasons: [torqueReason('torque/turns-correct', { turns, min })] }
      : { verdict: 'cannot tell', reasons: band.reasons }
  if (compareExact(recordedTurns, exactOf(max)) > 0)
    return { verdict: 'too many', reasons: [torqueReason('torque/turns-too-many', { turns, max })] }
  return { verdict: 'inside', reasons: [torqueReason('torque/turns-correct', { turns, min, max })] }
}

type TurnsBand =
  | {
      readonly verdict: 'turns'
      /** Turns past finger tight. */
      readonly min: number
      /** Absent if the manual gives no maximum; never assume one. */
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
