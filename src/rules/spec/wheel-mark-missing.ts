import type { OpeningRole } from '../../spec/index.js'
import { gearcaseRule } from '../ruleMakers.js'

/**
 * One opening for fill, drain and level without the wheel position for draining and for the level. It cannot
 * be at the bottom and at the level without turning the wheel, so a hub would be filled wrongly, or not at
 * all.
 * Judges: Every opening with the uses `fill`, `drain` and `level`. Finds an opening whose `drain` or `level`
 * has no `wheelMark`.
 * Place: `/gearcases/<id>/openings/<id>/uses`
 * Params: opening: its name
 * Harm: machine
 * Common practice, no source.
 */
export const rule = gearcaseRule('spec/wheel-mark-missing', 'error', ([id, { openings }]) =>
  Object.entries(openings).flatMap(([key, { name, uses }]) => {
    const findUses = (role: OpeningRole) => uses.filter((use) => use.role === role)
    if (findUses('fill').length === 0 || findUses('drain').length === 0 || findUses('level').length === 0)
      return []
    if ([...findUses('drain'), ...findUses('level')].every(({ wheelMark }) => wheelMark !== undefined))
      return []
    return [{ path: `/gearcases/${id}/openings/${key}/uses`, params: { opening: name } }]
  }),
)
