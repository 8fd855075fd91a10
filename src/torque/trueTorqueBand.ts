import { type Exact, exactOf, minus, over, plus, times } from '../quantity/index.js'
import type { Deviation } from './scaleMark.js'

/**
 * Between which torques the true one lies when the wrench shows or clicks at `mark`, both on the scale's unit. A
 * deviation of reading is of the reference: (mark − true) ÷ true = ±a, so true = mark ÷ (1 ± a). Internal.
 */
export function trueTorqueBand(
  mark: Exact,
  highest: Exact,
  deviation: Deviation,
): { least: Exact; most: Exact } {
  const part = times(exactOf(deviation.percent), exactOf('0.01'))
  if (deviation.of === 'reading') {
    const one = exactOf(1)
    return { least: over(mark, plus(one, part)), most: over(mark, minus(one, part)) }
  }
  const error = times(highest, part)
  return { least: minus(mark, error), most: plus(mark, error) }
}
