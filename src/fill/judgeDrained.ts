import { type Reason, requireObject } from '../base/index.js'
import type { Exact, Quantity, VolumeUnit } from '../quantity/index.js'
import {
  compareExact,
  exactIn,
  minus,
  nearestDouble,
  over,
  readBand,
  requireBand,
} from '../quantity/index.js'
import type { SpecValue } from '../spec/index.js'
import { type FillCodes, fillReason } from './codes.js'
import { comparedWith } from './comparedWith.js'
import { requireAmount } from './requireAmount.js'
import { volumeIn } from './volumeAmount.js'

export interface DrainedVerdict {
  readonly verdict: 'as expected' | 'less' | 'more' | 'not judged' | 'cannot tell'
  /** Recommendations, no diagnosis: what to look at next. */
  readonly reasons: readonly Reason<keyof FillCodes>[]
}

/** House rule: oil stays on walls and in corners, so 10 % either way says nothing; 10 % itself neither. */
const NOTEWORTHY_PERCENT = 10n

/**
 * Whether the oil that ran out is noteworthy against what the manual states or what was put back, and what to look at
 * then. It recommends; it does not diagnose: little oil may be a leak, a wrong refill last time, or a short wait.
 */
export function judgeDrained(
  drained: Quantity<VolumeUnit> | 'not judged',
  expected: SpecValue<VolumeUnit> | Quantity<VolumeUnit>,
): DrainedVerdict {
  requireObject('expected', expected)
  if (drained === 'not judged')
    return { verdict: 'not judged', reasons: [fillReason('fill/drained-not-judged', {})] }
  requireAmount('drained', drained, 'volume')
  const volume = exactIn(drained, 'mL')
  const from = expectedVolume(volume, expected)
  if (from === undefined || from.n <= 0n)
    return { verdict: 'cannot tell', reasons: [fillReason('fill/drained-not-comparable', {})] }
  const gap = minus(volume, from)
  const share = over({ n: gap.n * 100n, d: gap.d }, from)
  const size = { n: share.n < 0n ? -share.n : share.n, d: share.d }
  const shown = { drained, expected: volumeIn(from, drained.unit) }
  if (compareExact(size, { n: NOTEWORTHY_PERCENT, d: 1n }) <= 0)
    return { verdict: 'as expected', reasons: [fillReason('fill/drained-as-expected', shown)] }
  const params = { ...shown, percent: nearestDouble(size) }
  return share.n < 0n
    ? { verdict: 'less', reasons: [fillReason('fill/drained-less', params)] }
    : { verdict: 'more', reasons: [fillReason('fill/drained-more', params)] }
}

function expectedVolume(
  volume: Exact,
  expected: SpecValue<VolumeUnit> | Quantity<VolumeUnit>,
): Exact | undefined {
  if (!('kind' in expected)) {
    requireAmount('expected', expected, 'volume')
    return exactIn(expected, 'mL')
  }
  if (expected.kind === 'not stated') return undefined
  requireBand('expected', expected)
  return comparedWith(volume, readBand(expected, 'mL'))
}
