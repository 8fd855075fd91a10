import type { ContainerChoice } from '../fill/index.js'
import {
  type Exact,
  exactIn,
  exactOf,
  lowerExact,
  minus,
  nearestQuantity,
  plus,
  times,
} from '../quantity/index.js'
import type { Id, OilContainer } from '../spec/index.js'
import type { PlannedOil } from './visitPlan.js'

const NOTHING: Exact = { n: 0n, d: 1n }

/** Oil containers by id, as they stand at one moment of the visit. */
export type Shelf = Readonly<Record<Id, OilContainer>>

/** Takes what was chosen off the shelf: opened containers first, then full ones, whose rest stays as an opened one. */
export function takeFromShelf(
  shelf: Shelf,
  chosen: ContainerChoice,
): { readonly shelf: Shelf; readonly take: PlannedOil['take'] } {
  let left = exactIn(chosen.needed, 'mL')
  const next: Record<Id, OilContainer> = { ...shelf }
  const take: PlannedOil['take'][number][] = []
  for (const { id, opened, full } of chosen.use) {
    const container = next[id]
    if (container === undefined) continue
    const { opened: before, ...rest } = container
    const pour = (available: Exact, opened: boolean): Exact => {
      const taken = lowerExact(available, left)
      if (taken.n > 0n) {
        take.push({ container: id, name: container.name, volume: nearestQuantity(taken, 'mL', 'mL'), opened })
        left = minus(left, taken)
      }
      return minus(available, taken)
    }
    const open = before === undefined ? NOTHING : exactIn(before, 'mL')
    const fromOpened = opened === undefined ? NOTHING : exactIn(opened, 'mL')
    const keptOpen = plus(minus(open, fromOpened), pour(fromOpened, true))
    const keptFull = pour(times(exactIn(container.size, 'mL'), exactOf(full)), false)
    const remains = plus(keptOpen, keptFull)
    next[id] = {
      ...rest,
      count: container.count - full,
      ...(remains.n > 0n ? { opened: nearestQuantity(remains, 'mL', 'mL') } : {}),
    }
  }
  return { shelf: next, take }
}
