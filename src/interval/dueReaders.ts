import type { accumulateMeter } from './accumulateMeter.js'
import type { readLimits } from './readLimits.js'

/** Reads meters and intervals; those of {@link createDueJudge} remember what they read. */
export interface DueReaders {
  readonly meters: typeof accumulateMeter
  readonly limits: typeof readLimits
}
