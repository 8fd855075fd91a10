import type { JsonPointer } from '../base/index.js'

/** The growing lists of a log: each line of a history adds one item to one list. */
export const HISTORY_LISTS: readonly JsonPointer[] = [
  '/meters/hours/readings',
  '/meters/distance/readings',
  '/events',
  '/records',
  '/topUps',
  '/pauses',
]
