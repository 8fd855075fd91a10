import { gearcaseRule } from '../ruleMakers.js'

/**
 * A level that is read with the engine running, some minutes after it was stopped: one of the two was read from
 * another line.
 * Judges: Every gearcase with its own oil whose `level` has `engine` of `running`. Finds a stated `minutesAfterStop`
 * in it; an override of the minutes is not judged.
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
