import { findFillOpening } from '../lookup/findFillOpening.js'
import { lookUp } from '../lookup/lookUp.js'
import { gearcaseRule } from '../ruleMakers.js'

/**
 * A level read on stands although the stands lift only one end, or nothing is raised. The machine is tilted,
 * and the level is wrong.
 * Judges: Every gearcase with its own oil whose `level` has the attitude `level on stands`. Finds access
 * `from the ground`, and supports that all lift a known axle but not every axle of the machine. Skipped if
 * the opening of the fill method turns with a wheel (one of its uses has a `wheelMark`), since its mark sets
 * the level.
 * Place: `/gearcases/<id>/oilSpace/fill/level/attitude`
 * Params: gearcase: its name; raised: `nothing` or `one end`
 * Harm: machine
 * Common practice, no source.
 */
export const rule = gearcaseRule('spec/level-on-raised-end', 'warning', ([id, gearcase], { document }) => {
  const { oilSpace, access, openings, name } = gearcase
  if (oilSpace.kind === 'shared' || oilSpace.fill.level?.attitude !== 'level on stands') return []
  const fillOpening = lookUp(openings, findFillOpening(oilSpace.fill) ?? '')
  if (fillOpening === undefined || fillOpening.uses.some(({ wheelMark }) => wheelMark !== undefined))
    return []
  const { axles, supports } = document.machine
  const supportIds = access.kind === 'raised' ? access.supports : []
  const lifted = supportIds.map((support) => lookUp(supports, support)?.axle)
  const liftsEveryAxle = Object.keys(axles).every((axle) => lifted.includes(axle))
  if (access.kind === 'raised' && (liftsEveryAxle || supportIds.length === 0 || lifted.includes(undefined)))
    return []
  const raised = access.kind === 'raised' ? ('one end' as const) : ('nothing' as const)
  return [{ path: `/gearcases/${id}/oilSpace/fill/level/attitude`, params: { gearcase: name, raised } }]
})
