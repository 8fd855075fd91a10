import { gearcaseRule } from '../ruleMakers.js'

/**
 * A drain used with the wheel mark up. The opening is then at the top, and the oil stays in.
 * Judges: Every opening: each of its `uses` with the role `drain`. Finds any whose `wheelMark` is `mark up`.
 * Place: `/gearcases/<id>/openings/<id>/uses/<place>/wheelMark`
 * Params: opening: its name
 * Harm: machine
 * Common practice, no source: oil drains from the lowest point.
 */
export const rule = gearcaseRule('spec/drain-at-mark-up', 'error', ([id, { openings }]) =>
  Object.entries(openings).flatMap(([key, { name, uses }]) =>
    uses.flatMap(({ role, wheelMark }, place) => {
      if (role !== 'drain' || wheelMark !== 'mark up') return []
      const path = `/gearcases/${id}/openings/${key}/uses/${place}/wheelMark`
      return [{ path, params: { opening: name } }]
    }),
  ),
)
