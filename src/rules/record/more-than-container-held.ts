import { add, compareExact, exactIn, exactOf, findNearestQuantity, multiply } from '../../quantity/index.js'
import type { RecordEntry } from '../../spec/index.js'
import { lookUp } from '../lookup/lookUp.js'
import { recordRule } from '../ruleMakers.js'

/**
 * A record that takes far more oil from a container than the stock had. The wrong container was recorded, or
 * the unit is wrong.
 * Judges: Every record that is not inside a log: each container that is in exactly one stock of the set, with
 * the total refilled from it. Finds a total above `size` × (`count`, or 1 if that is 0) + `opened` + one
 * extra `size`, since a container may have been bought for the work, or used up before the stock was counted.
 * Place: `/entries/<place>/oil/container` of the first entry that names it
 * Params: container: its name; used: the total of the record, in mL; held: the volume in the stock, in mL,
 * without the extra container
 * Harm: record
 * House rule. The extra container is our own estimate.
 */
export const rule = recordRule('record/more-than-container-held', 'warning', ({ document, log, set }) => {
  if (log?.records.some(({ id }) => id === document.id)) return []
  const firstPaths = new Map<string, string>()
  for (const [place, { oil }] of document.entries.entries())
    if (oil?.container !== undefined && !firstPaths.has(oil.container))
      firstPaths.set(oil.container, `/entries/${place}/oil/container`)
  return [...firstPaths].flatMap(([id, path]) => {
    const containers = set.stocks.flatMap(({ document: stock }) => lookUp(stock.containers, id) ?? [])
    const [container] = containers
    if (container === undefined || containers.length > 1) return []
    const { name, size, count, opened } = container
    const containerSize = exactIn(size, 'mL')
    const fullVolume = multiply(containerSize, exactOf(Math.max(1, count)))
    const held = opened === undefined ? fullVolume : add(fullVolume, exactIn(opened, 'mL'))
    const used = sumRefilled(document.entries, id)
    if (compareExact(used, add(held, containerSize)) <= 0) return []
    const amounts = {
      used: findNearestQuantity(used, 'mL', 'mL'),
      held: findNearestQuantity(held, 'mL', 'mL'),
    }
    return [{ path, params: { container: name, ...amounts } }]
  })
})

const sumRefilled = (entries: readonly RecordEntry[], id: string) =>
  entries.reduce(
    (sum, { oil, refilled }) =>
      oil?.container === id && refilled !== undefined ? add(sum, exactIn(refilled, 'mL')) : sum,
    exactOf(0),
  )
