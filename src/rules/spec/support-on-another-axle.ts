import { lookUp } from '../lookup/lookUp.js'
import { gearcaseRule } from '../ruleMakers.js'

/**
 * A gearcase whose supports lift other axles but not its own. The machine would be raised at the wrong end,
 * with the chocks under the lifted wheels.
 * Judges: Every gearcase with an `axle` and `access` of `raised`. Finds existing supports that all name an
 * axle, but not the gearcase's axle. Gearcases and supports without an axle are not judged.
 * Place: `/gearcases/<id>/access/supports`
 * Params: gearcase: its name; axle: name of its axle; lifted: names of the axles that the supports lift
 * Harm: injury
 * Common practice, no source: the axle that is worked on is raised, and the wheels of the other are chocked.
 */
export const rule = gearcaseRule(
  'spec/support-on-another-axle',
  'error',
  ([id, { name, axle, access }], { document }) => {
    const { axles, supports } = document.machine
    const ownAxle = axle === undefined ? undefined : lookUp(axles, axle)
    if (ownAxle === undefined || access.kind !== 'raised' || access.supports.length === 0) return []
    const lifted = access.supports.map((support) => lookUp(axles, lookUp(supports, support)?.axle ?? ''))
    if (lifted.some((liftedAxle) => liftedAxle === undefined || liftedAxle === ownAxle)) return []
    const names = [...new Set(lifted.map((liftedAxle) => liftedAxle?.name ?? ''))]
    const params = { gearcase: name, axle: ownAxle.name, lifted: names }
    return [{ path: `/gearcases/${id}/access/supports`, params }]
  },
)
