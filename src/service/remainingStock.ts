import { requireShape } from '../base/index.js'
import {
  add,
  compareExact,
  divide,
  type Exact,
  exactIn,
  findNearestQuantity,
  multiply,
  roundExact,
  subtract,
} from '../quantity/index.js'
import { type Id, type OilContainer, requireDocument, type Stock, type StockSeal } from '../spec/index.js'
import type { PlannedSeal, VisitPlan } from './visitPlan.js'

/** A millionth of a millilitre, or of a container. */
const ROUNDING_MARGIN: Exact = { n: 1n, d: 1_000_000n }

/**
 * The stock after a planned visit, to plan the next one: without the containers and seals that the visit takes.
 * Items bought for the visit are assumed to be used up. Source: house rule.
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
      const stockSeal = Object.hasOwn(seals, id) ? seals[id] : undefined
      // One package of sealant is enough for all places.
      if (stockSeal === undefined || opened.has(id)) continue
      if (line.seal.kind === 'thread sealant' || line.seal.kind === 'liquid gasket') opened.add(id)
      seals[id] = { ...stockSeal, count: Math.max(0, stockSeal.count - count) }
    }
  return { ...stock, containers, seals }
}

function listTaken({ stock, take, count }: PlannedSeal): NonNullable<PlannedSeal['take']> {
  return take ?? (stock === undefined ? [] : [{ id: stock.id, count }])
}

function pourFrom(
  { opened: openedBefore, ...containerFields }: OilContainer,
  taken: Exact,
  opened: boolean,
): OilContainer {
  const openedVolume = exactIn(openedBefore ?? { value: 0, unit: 'mL' }, 'mL')
  const size = exactIn(containerFields.size, 'mL')
  // The volumes of the plan are rounded; do not count a rounding error as another container.
  const full = opened || size.n === 0n ? 0n : roundExact(subtract(divide(taken, size), ROUNDING_MARGIN), 'up')
  const volumeLeft = subtract(add(openedVolume, multiply(size, { n: full, d: 1n })), taken)
  return {
    ...containerFields,
    count: containerFields.count - Number(full),
    ...(compareExact(volumeLeft, ROUNDING_MARGIN) > 0
      ? { opened: findNearestQuantity(volumeLeft, 'mL', 'mL') }
      : {}),
  }
}
