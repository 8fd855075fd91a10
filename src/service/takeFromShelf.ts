import type { ContainerChoice } from '../fill/index.js'
import { amountIn } from '../quantity/index.js'
import type { Id, OilContainer } from '../spec/index.js'
import type { PlannedOil } from './visitPlan.js'

/** Oil containers by id, as they stand at one moment of the visit. */
export type Shelf = Readonly<Record<Id, OilContainer>>

/** Takes what was chosen off the shelf: opened containers first, then full ones, whose rest stays as an opened one. */
export function takeFromShelf(
  shelf: Shelf,
  chosen: ContainerChoice,
): { readonly shelf: Shelf; readonly take: PlannedOil['take'] } {
  let left = amountIn(chosen.needed, 'mL').value
  const next: Record<Id, OilContainer> = { ...shelf }
  const take: PlannedOil['take'][number][] = []
  for (const { id, opened, full } of chosen.use) {
    const container = next[id]
    if (container === undefined) continue
    const { opened: before, ...rest } = container
    const open = before === undefined ? 0 : amountIn(before, 'mL').value
    const fromOpened = opened === undefined ? 0 : Math.min(amountIn(opened, 'mL').value, left)
    if (fromOpened > 0) {
      take.push({
        container: id,
        name: container.name,
        volume: { value: fromOpened, unit: 'mL' },
        opened: true,
      })
      left -= fromOpened
    }
    const size = amountIn(container.size, 'mL').value
    const fromFull = Math.min(full * size, left)
    if (fromFull > 0) {
      take.push({
        container: id,
        name: container.name,
        volume: { value: fromFull, unit: 'mL' },
        opened: false,
      })
      left -= fromFull
    }
    const remains = open - fromOpened + (full * size - fromFull)
    next[id] = {
      ...rest,
      count: container.count - full,
      ...(remains > 0 ? { opened: { value: remains, unit: 'mL' } } : {}),
    }
  }
  return { shelf: next, take }
}
