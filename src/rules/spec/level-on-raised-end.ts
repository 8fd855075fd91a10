import { filledAt } from '../lookup/filledAt.js'
import { lookUp } from '../lookup/lookUp.js'
import { gearcaseRule } from '../ruleMakers.js'

/**
 * A level that is read on stands, where the stands lift one end only, or where nothing is raised: the machine is
 * tilted, and the level is wrong.
 * Judges: Every gearcase with its own oil whose `level` has the attitude `level on stands`. Finds one with access
 * `from the ground`, and one whose supports all lift a known axle, but not every axle of the machine. Not judged
 * where the opening of the fill method turns with a wheel (one of its uses has a `wheelMark`), since its mark makes
 * the level.
 * Place: `/gearcases/<id>/oilSpace/fill/level/attitude`
 * Params: gearcase: its name; raised: `nothing` or `one end`
 * Harm: machine
 * Common practice, no source.
 */
export const rule = gearcaseRule('spec/level-on-raised-end', 'warning', ([id, gearcase], { document }) => {
  const { oilSpace, access, openings, name } = gearcase
  if (oilSpace.kind === 'shared' || oilSpace.fill.level?.attitude !== 'level on stands') return []
  const filled = lookUp(openings, filledAt(oilSpace.fill) ?? '')
  if (filled === undefined || filled.uses.some(({ wheelMark }) => wheelMark !== undefined)) return []
  const { axles, supports } = document.machine
  const at = access.kind === 'raised' ? access.supports : []
  const lifted = at.map((support) => lookUp(supports, support)?.axle)
  const isWhole = Object.keys(axles).every((axle) => lifted.includes(axle))
  if (access.kind === 'raised' && (isWhole || at.length === 0 || lifted.includes(undefined))) return []
  const raised = access.kind === 'raised' ? ('one end' as const) : ('nothing' as const)
  return [{ path: `/gearcases/${id}/oilSpace/fill/level/attitude`, params: { gearcase: name, raised } }]
})
