import { compareExact, exactIn, exactOf, nearestQuantity, plus, times } from '../../quantity/index.js'
import type { RecordEntry } from '../../spec/index.js'
import { lookUp } from '../lookup/lookUp.js'
import { recordRule } from '../ruleMakers.js'

/**
 * A record of far more oil from a container than the stock ever had of it: the wrong container was written down, or
 * the quantity has the wrong unit.
 * Judges: Every record of its own, not inside a log: each container that one stock of the set holds, with all that
 * the entries refilled from it. Finds where that is more than what the stock has, `size` times `count` (at least one)
 * and `opened`, and one full container more: one may have been bought for the work, or used up before the stock was counted.
 * Place: `/entries/<place>/oil/container` of the first entry that names it
 * Params: container: its name; used: all that the record takes from it, in mL; held: what the stock has, in mL
 * Harm: record
 * House rule; the one container more is our own estimate.
 */
export const rule = recordRule('record/more-than-container-held', 'warning', ({ document, log, set }) => {
  if (log?.records.includes(document)) return []
  const first = new Map<string, string>()
  for (const [place, { oil }] of document.entries.entries())
    if (oil?.container !== undefined && !first.has(oil.container))
      first.set(oil.container, `/entries/${place}/oil/container`)
  return [...first].flatMap(([id, path]) => {
    const containers = set.stocks.flatMap(({ document: stock }) => lookUp(stock.containers, id) ?? [])
    const [container] = containers
    if (container === undefined || containers.length > 1) return []
    const { name, size, count, opened } = container
    const one = exactIn(size, 'mL')
    const full = times(one, exactOf(Math.max(1, count)))
    const held = opened === undefined ? full : plus(full, exactIn(opened, 'mL'))
    const used = usedFrom(document.entries, id)
    if (compareExact(used, plus(held, one)) <= 0) return []
    const shown = { used: nearestQuantity(used, 'mL', 'mL'), held: nearestQuantity(held, 'mL', 'mL') }
    return [{ path, params: { container: name, ...shown } }]
  })
})

const usedFrom = (entries: readonly RecordEntry[], id: string) =>
  entries.reduce(
    (sum, { oil, refilled }) =>
      oil?.container === id && refilled !== undefined ? plus(sum, exactIn(refilled, 'mL')) : sum,
    exactOf(0),
  )
