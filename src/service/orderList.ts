import { dropUndefined, requireShape } from '../base/index.js'
import { chooseContainers } from '../fill/index.js'
import type { Quantity, VolumeUnit } from '../quantity/index.js'
import type { Kit } from './kitContents.js'
import { type KitFilter, type KitOil, type KitSeal, sumFilters, sumOils, sumSeals } from './kitSums.js'
import type { SoldOil } from './visitPlan.js'

/** An oil to order. */
export interface OrderOil extends KitOil {
  /** The containers to buy, of one oil; absent: no container is known. */
  readonly containers?: readonly (SoldOil & { readonly count: number })[]
  readonly leftOver?: Quantity<VolumeUnit>
}

/**
 * Adds up the items to order for several kits. Plan the visits in order, each with the stock that remains
 * after the previous one; with the full stock for each, the same washer would be used twice.
 *
 * @param kits - the results of {@link kitContents}
 * @returns the missing oil by name, in the containers in which it is sold (those of {@link chooseContainers}
 * for the whole sum) with what is left over, and the missing seals and filters by part number or description.
 * Spares of seals that are inspected are not ordered.
 * @throws TypeError if `kits` is not a list of kits
 *
 * Source: house rule.
 * @example
 * ```ts
 * import { type Kit, orderList } from 'drivetrain-service/v1/service'
 * const oil = [{ oil: 'SAE 80W-90, API GL-5', volume: { value: 150, unit: 'mL' } }] as const
 * const kit: Kit = { machine: { id: 'one', name: 'One' }, oil, seals: [], tools: [], buy: { oil, seals: [] } }
 * // How much oil must be bought for two machines?
 * orderList([kit, kit]).oil[0]?.volume.value // => 300
 * ```
 */
export function orderList(kits: readonly Kit[]): {
  readonly oil: readonly OrderOil[]
  readonly seals: readonly KitSeal[]
  readonly filters?: readonly KitFilter[]
} {
  const shape = [{ buy: { oil: [{}], seals: [{}], 'filters?': [{}] } }]
  requireShape('kits', kits, shape, 'pass the result of kitContents')
  return dropUndefined({
    oil: sumOils(kits.flatMap(({ buy }) => buy.oil))
      .filter(({ volume }) => volume.value > 0)
      .map(chooseSold),
    seals: sumSeals(kits.flatMap(({ buy }) => buy.seals)),
    filters: sumFilters(kits.flatMap(({ buy }) => buy.filters ?? [])),
  })
}

function chooseSold(oil: KitOil): OrderOil {
  const { sold = [] } = oil
  const shelf = sold.map(({ name, oil: label, size }, index) => [
    String(index),
    { name, oil: { name: label }, size, count: 0 },
  ])
  const { buy, leftOver } = chooseContainers(Object.fromEntries(shelf), oil.volume)
  const containers = buy.flatMap(({ id, count }) => {
    const container = sold[Number(id)]
    return container === undefined ? [] : [{ ...container, count }]
  })
  return containers.length === 0 ? oil : { ...oil, containers, leftOver }
}
