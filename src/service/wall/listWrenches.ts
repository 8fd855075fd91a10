import type { Toolbox } from '../../spec/index.js'
import type { PlannedTightening } from '../visitPlan.js'
import type { WallWrench } from './wallFactsTypes.js'

/** The wrenches of the job in the order of use, each with its own scales and all settings on them. */
export function listWrenches(
  { wrenches }: Toolbox,
  tightenings: readonly PlannedTightening[],
): readonly WallWrench[] {
  const settings = tightenings.flatMap(({ wrench, setting }, place) =>
    wrench === undefined || setting === undefined
      ? []
      : { id: wrench.id, tightening: `/tightenings/${place}`, setting },
  )
  return [...new Set(settings.map(({ id }) => id))].flatMap((id) => {
    const wrench = wrenches[id]
    if (wrench === undefined) return []
    const scales = wrench.scales
      .map((scale) => ({
        scale,
        settings: settings
          .filter((setting) => setting.id === id && setting.setting.unit === scale.unit)
          .map(({ tightening, setting }) => ({ tightening, setting })),
      }))
      .filter((scale) => scale.settings.length > 0)
    const { name, type, drive } = wrench
    return { id, name, type, drive, scales }
  })
}
