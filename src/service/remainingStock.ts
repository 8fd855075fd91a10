import { requireShape } from '../base/index.js'
import {
  compareExact,
  type Exact,
  exactIn,
  minus,
  nearestQuantity,
  over,
  plus,
  roundExact,
  times,
} from '../quantity/index.js'
import { type Id, type OilContainer, requireDocument, type Stock, type StockSeal } from '../spec/index.js'
import type { PlannedSeal, VisitPlan } from './visitPlan.js'

/** A millionth of a millilitre, or of a container. */
const ROUNDING_MARGIN: Exact = { n: 1n, d: 1_000_000n }

/**
 * Finds what a planned visit leaves on the shelf, for planning the next one: opened containers with their rest, full
 * ones and seals less what was taken. What had to be bought is assumed to be used up.
 *
 * @param stock - the shelf that the visit was planned with
 * @param plan - the visit
 * @returns a new stock
 * @throws TypeError where `stock` is not a parsed stock or `plan` no plan
 *
 * Source: house rule.
 * @example
 * ```ts
 * import { remainingStock } from 'drivetrain-service/v1/service'
 * const washer = { name: 'washer', seal: { kind: 'not stated' }, count: 3 } as const
 * const stock = { kind: 'stock', version: '1.0', id: 'shelf', name: 'Shelf', containers: {}, seals: { washer } } as const
 * const use = { seal: { kind: 'not stated' }, count: 2, stock: { id: 'washer', name: 'washer', have: 3 } }
 * // Three washers on the shelf, two taken: how many are left?
 * remainingStock(stock, { oil: [], seals: [use] }).seals.washer.count // => 1
 * ```
 */
export function remainingStock(stock: Stock, plan: VisitPlan): Stock {
  requireDocument('stock', stock, 'stock')
  const shape = { oil: [{ take: [{}] }], seals: [{ seal: {} }] }
  requireShape('plan', plan, shape, 'pass the result of planVisit')
  const containers: Record<Id, OilContainer> = { ...stock.containers }
  for (const { container: id, volume, opened } of plan.oil.flatMap(({ take }) => take)) {
    const container = Object.hasOwn(containers, id) ? containers[id] : undefined
    if (container !== undefined) containers[id] = pourFrom(container, exactIn(volume, 'mL'), opened)
  }
  const seals: Record<Id, StockSeal> = { ...stock.seals }
  const opened = new Set<Id>()
  for (const line of plan.seals)
    for (const { id, count } of listTaken(line)) {
      const piece = Object.hasOwn(seals, id) ? seals[id] : undefined
      // One package of sealant is enough for every place that needs it.
      if (piece === undefined || opened.has(id)) continue
      if (line.seal.kind === 'thread sealant' || line.seal.kind === 'liquid gasket') opened.add(id)
      seals[id] = { ...piece, count: Math.max(0, piece.count - count) }
    }
  return { ...stock, containers, seals }
}

function listTaken({ stock, take, count }: PlannedSeal): NonNullable<PlannedSeal['take']> {
  return take ?? (stock === undefined ? [] : [{ id: stock.id, count }])
}

function pourFrom({ opened: before, ...rest }: OilContainer, taken: Exact, opened: boolean): OilContainer {
  const open = exactIn(before ?? { value: 0, unit: 'mL' }, 'mL')
  const size = exactIn(rest.size, 'mL')
  // The plan's volumes were rounded: a rounding error below whole containers is not another container.
  const full = opened || size.n === 0n ? 0n : roundExact(minus(over(taken, size), ROUNDING_MARGIN), 'up')
  const left = minus(plus(open, times(size, { n: full, d: 1n })), taken)
  return {
    ...rest,
    count: rest.count - Number(full),
    ...(compareExact(left, ROUNDING_MARGIN) > 0 ? { opened: nearestQuantity(left, 'mL', 'mL') } : {}),
  }
}
