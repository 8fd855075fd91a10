import type { JsonPointer } from '../base/index.js'

/** The lists of a log that grow: a line of a history adds one item to one of them. */
export const HISTORY_LISTS: readonly JsonPointer[] = [
  '/meters/hours/readings',
  '/meters/distance/readings',
  '/events',
  '/records',
  '/topUps',
  '/pauses',
]
