import type { Emptying, Opening } from '../../spec/index.js'
import { lookUp } from '../lookup/lookUp.js'
import { gearcaseRule } from '../ruleMakers.js'

/**
 * A drain plug that no method of emptying names. It stays closed, the old oil behind it stays in, and the
 * refill overflows.
 * Judges: Every opening with the use `drain`. Finds an opening that no `drain plug` or `suction` under
 * `emptying` of its gearcase names. Skipped if `emptying` is empty, names a missing opening or cover, or has
 * a `drain plug` whose opening lacks the use `drain`.
 * Place: `/gearcases/<id>/openings/<id>/uses`
 * Params: opening: its name; gearcase: name of its gearcase
 * Harm: machine
 * Common practice, no source: every drain plug is opened unless the manual says why not.
 */
export const rule = gearcaseRule('spec/drain-not-named', 'warning', ([id, gearcase]) => {
  const { name, openings, covers, emptying } = gearcase
  const isOnSheet = (way: Emptying) =>
    way.kind === 'cover'
      ? lookUp(covers, way.cover) !== undefined
      : way.kind === 'suction'
        ? lookUp(openings, way.opening) !== undefined
        : isDrain(lookUp(openings, way.opening))
  if (emptying.length === 0 || !emptying.every(isOnSheet)) return []
  const namedOpenings = emptying.flatMap((way) =>
    way.kind === 'cover' ? [] : [way.opening, ...((way.kind === 'drain plug' && way.also) || [])],
  )
  return Object.entries(openings).flatMap(([key, opening]) => {
    if (!isDrain(opening) || namedOpenings.includes(key)) return []
    const path = `/gearcases/${id}/openings/${key}/uses`
    return [{ path, params: { opening: opening.name, gearcase: name } }]
  })
})

const isDrain = (opening: Opening | undefined) => opening?.uses.some(({ role }) => role === 'drain') === true
