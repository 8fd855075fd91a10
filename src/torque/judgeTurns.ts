import { type Reason, requireNumber } from '../base/index.js'
import { compareExact, exactOf } from '../quantity/index.js'
import type { Tightening } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { readTurnsBand } from './readTurnsBand.js'

export interface TurnsVerdict {
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
