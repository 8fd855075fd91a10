import { logRule } from '../ruleMakers.js'

/**
 * A pause in the machine's use that ends before it starts.
 * Judges: Every entry of `pauses`. Finds `from` after `to`; a pause of one day has the same date twice.
 * Place: `/pauses/<place>`
 * Params: from: as written; to: as written
 * Harm: record
 * House rule.
 */
export const rule = logRule('log/pause-reversed', 'error', ({ document: { pauses = [] } }) =>
  pauses.flatMap(({ from, to }, place) => {
    if (from <= to) return []
    const path = `/pauses/${place}`
    const fixes = [{ op: 'replace' as const, path, value: { from: to, to: from } }]
    return [{ path, params: { from, to }, cures: fixes }]
  }),
)
