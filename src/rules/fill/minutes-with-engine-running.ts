import { gearcaseRule } from '../ruleMakers.js'

/**
 * A level to be read both with the engine running and some minutes after it stopped. One of the two was
 * copied from the wrong line.
 * Judges: Every gearcase with its own oil and a `level` with `engine: running`. Finds a stated
 * `minutesAfterStop`. Overrides are not judged.
 * Place: `/gearcases/<id>/oilSpace/fill/level/minutesAfterStop`
 * Params: gearcase: its name
 * Harm: job
 * House rule.
 */
export const rule = gearcaseRule(
  'fill/minutes-with-engine-running',
  'warning',
  ([id, { name, oilSpace }]) => {
    const level = oilSpace.kind === 'own' ? oilSpace.fill.level : undefined
    const minutes = level?.minutesAfterStop
    if (level?.engine !== 'running' || minutes === undefined || minutes.kind === 'not stated') return []
    return [{ path: `/gearcases/${id}/oilSpace/fill/level/minutesAfterStop`, params: { gearcase: name } }]
  },
)
