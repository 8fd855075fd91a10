import { convert } from '../quantity/index.js'
import type { Id, OilContainer, Stock, StockSeal } from '../spec/index.js'
import type { VisitPlan } from './visitPlan.js'

/**
 * Finds what a planned visit leaves on the shelf, for planning the next one: opened containers with their rest, full
 * ones and seals less what was taken. What had to be bought is taken to be used up.
 *
 * @param stock - the shelf that the visit was planned with
 * @param plan - the visit
 * @returns a new stock
 *
 * Source: house rule.
 * @example
 * ```ts
 * import { leaveStock } from 'drivetrain-service/v1/service'
 * const washer = { name: 'washer', seal: { kind: 'not stated' }, count: 3 } as const
 * const stock = { kind: 'stock', version: '1.0', id: 'shelf', name: 'Shelf', containers: {}, seals: { washer } } as const
 * const use = { count: 2, stock: { id: 'washer', name: 'washer', have: 3 } }
 * // Three washers on the shelf, two taken: how many are left?
 * leaveStock(stock, { oil: [], seals: [use] }).seals.washer.count // => 1
 * ```
 */
export function leaveStock(stock: Stock, plan: VisitPlan): Stock {
  const containers: Record<Id, OilContainer> = { ...stock.containers }
  for (const { container: id, volume, opened } of plan.oil.flatMap(({ take }) => take)) {
    const container = containers[id]
    if (container !== undefined) containers[id] = pourFrom(container, convert(volume, 'mL').value, opened)
  }
  const seals: Record<Id, StockSeal> = { ...stock.seals }
  for (const { stock: taken, count } of plan.seals) {
    const piece = taken === undefined ? undefined : seals[taken.id]
    if (taken !== undefined && piece !== undefined)
      seals[taken.id] = { ...piece, count: Math.max(0, piece.count - count) }
  }
  return { ...stock, containers, seals }
}

function pourFrom({ opened: before, ...rest }: OilContainer, taken: number, opened: boolean): OilContainer {
  const open = before === undefined ? 0 : convert(before, 'mL').value
  const size = convert(rest.size, 'mL').value
  // A hair less than whole containers is rounding, not another container.
  const full = opened ? 0 : Math.ceil(taken / size - 1e-9)
  const left = open + full * size - taken
  return {
    ...rest,
    count: rest.count - full,
    ...(left > 1e-6 ? { opened: { value: left, unit: 'mL' } } : {}),
  }
}
