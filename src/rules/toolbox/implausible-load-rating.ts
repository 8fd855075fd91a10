import { exactIn, findNearestDouble } from '../../quantity/index.js'
import type { Jack, Stands } from '../../spec/index.js'
import { toolboxRule } from '../ruleMakers.js'

/**
 * A stand, ramp or jack rated for almost nothing, or for more than any such tool carries. Tonnes and kilograms were
 * confused, and the tool could collapse.
 * Judges: The `rating` of all stands, ramps and jacks. Finds one below 100 kg or above 50,000 kg.
 * Place: `/stands/<id>/rating`, `/ramps/<id>/rating` or `/jacks/<id>/rating`
 * Params: tool: its name; rating: as written
 * Harm: injury
 * Common practice, no source: the limits are our own estimates. Stands for such machines are rated from 500 kg to 10
 * t.
 */
export const rule = toolboxRule(
  'toolbox/implausible-load-rating',
  'error',
  ({ document: { stands, ramps = {}, jacks = {} } }) => {
    const findImplausible = (list: string, tools: Readonly<Record<string, Stands | Jack>>) =>
      Object.entries(tools).flatMap(([id, { name, rating }]) => {
        const kilograms = findNearestDouble(exactIn(rating, 'kg'))
        if (kilograms >= 100 && kilograms <= 50_000) return []
        return [{ path: `/${list}/${id}/rating`, params: { tool: name, rating: { ...rating } } }]
      })
    return [
      ...findImplausible('stands', stands),
      ...findImplausible('ramps', ramps),
      ...findImplausible('jacks', jacks),
    ]
  },
)
