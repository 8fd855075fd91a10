import { dropUndefined } from '../../base/index.js'
import type { Stock } from '../../spec/index.js'
import { planOil } from '../planOil.js'
import { planWaits } from '../planWaits.js'
import type { GearcaseInVisit, VisitContext } from '../visitContext.js'
import type { PlannedWait } from '../visitPlan.js'
import type { WallPour } from './wallFactsTypes.js'

/** Air temperatures in degrees Celsius for which a wall card gives pouring times. */
const TEMPERATURES = [0, 10, 20] as const

/** Enough of each oil for any refill: a wall card must not depend on the amounts in stock. */
const LARGE_COUNT = 40

/** The pouring time of each refill at the temperatures of the card, if the stock has an oil for it. */
export function listPours(
  visit: VisitContext,
  oilsOfWorkshop: Stock | undefined,
  changes: readonly GearcaseInVisit[],
): readonly WallPour[] {
  const stock = oilsOfWorkshop && fillShelf(oilsOfWorkshop)
  const plans = TEMPERATURES.map((celsius) => {
    const atTemperature = dropUndefined({
      ...visit,
      stock,
      ambient: { value: celsius, unit: 'degC' as const },
    })
    const oil = planOil(atTemperature, changes)
    return { celsius, oil, ...planWaits(atTemperature, oil) }
  })
  const [first] = plans
  const pours = first?.waits.filter(({ kind }) => kind === 'pour') ?? []
  return pours.map(({ part }): WallPour => {
    const filler = first?.fillers.find(({ for: parts }) => parts.some(({ path }) => path === part.path))
    return dropUndefined({
      part,
      filler: filler?.have?.name,
      at: plans.map(({ celsius, oil, waits }) => {
        const wait = waits.find(
          (plannedWait) => plannedWait.kind === 'pour' && plannedWait.part.path === part.path,
        )
        const container = oil.containerByGearcase.get(part.path.split('/')[2] ?? '')
        return dropUndefined({ celsius, oil: container?.oil.name, ends: wait && findEnds(wait) })
      }),
    })
  })
}

/** The end of each part of a pour in whole seconds; the last time is rounded up, as on the visit card. */
function findEnds({ seconds, parts = [] }: PlannedWait): readonly [number, number, number] | undefined {
  const [fills, empties] = parts
  if (seconds === undefined || fills === undefined || empties === undefined) return undefined
  const full = Math.round(fills.seconds)
  return [full, Math.round(fills.seconds + empties.seconds), seconds]
}

function fillShelf(stock: Stock): Stock {
  const containers = Object.entries(stock.containers).map(([id, { opened: _opened, ...container }]) => [
    id,
    { ...container, count: LARGE_COUNT },
  ])
  return { ...stock, containers: Object.fromEntries(containers) }
}
