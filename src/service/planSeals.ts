import { dropUndefined, type JsonPointer } from '../base/index.js'
import { matchStockSeals, type SealTask } from '../seal/index.js'
import type { Id, Seal, StockSeal } from '../spec/index.js'
import { serviceReason } from './codes.js'
import { namePart, nameSeal } from './names.js'
import type { VisitContext } from './visitContext.js'
import type { PlannedSeal } from './visitPlan.js'

/**
 * Counts the seals that the steps of a visit use up, and what of them is to be bought. A seal that is fitted twice, as
 * where a plug is opened again for the level after a run, counts twice; sealant counts as one package, which serves every
 * place that takes the same. A seal to be used again if it is good is listed once, as a spare.
 */
export function planSeals({ sheet, procedure, figures, stock }: VisitContext): readonly PlannedSeal[] {
  let shelf: Readonly<Record<Id, StockSeal>> = stock?.seals ?? {}
  const packages = new Set<string>()
  return [...listUses(procedure)].flatMap(([path, { renewed, inspected }]): PlannedSeal | readonly [] => {
    const resolved = figures.at(path)?.resolved
    const figure = figures.pointerTo(path)
    if (resolved === undefined || figure === undefined) return []
    const part = namePart(sheet, path)
    const count = renewed > 0 ? renewed : inspected.size
    if (resolved.kind !== 'stated') {
      const reasons = [serviceReason('service/seal-open', { part })]
      return { part, figure, seal: { kind: 'not stated' }, replace: 'cannot tell', count, buy: 0, reasons }
    }
    const seal = resolved.value as Seal
    if (seal.kind === 'none' || seal.kind === 'not stated') return []
    const applied = renewed > 0 && APPLIED.has(seal.kind)
    // A spare is looked for like a piece to be fitted, so that the shelf's count is right.
    const task: SealTask = { path, seal, action: applied ? 'apply' : 'new', inspection: [], reasons: [] }
    const [line] = matchStockSeals(new Array<SealTask>(count).fill(task), shelf)
    const { take = [], buy = count, reasons = [] } = line ?? {}
    const atHand = applied && packages.has(nameSeal(seal))
    if (applied) packages.add(nameSeal(seal))
    const [taken] = take
    const onShelf = taken && shelf[taken.id]
    if (!applied) shelf = takeSeals(shelf, take)
    const why =
      renewed === 0
        ? 'service/seal-on-condition'
        : seal.replace === 'not stated'
          ? 'service/seal-replace-not-stated'
          : 'service/seal-every-opening'
    return dropUndefined({
      part,
      figure,
      seal,
      replace: seal.replace,
      count: applied ? 1 : count,
      stock: onShelf && { id: taken.id, name: onShelf.name, have: onShelf.count },
      take: take.length > 1 ? take : undefined,
      buy: atHand ? 0 : buy,
      reasons: [serviceReason(why, { count }), ...(atHand ? [] : reasons)],
    })
  })
}

const APPLIED: ReadonlySet<string> = new Set(['thread sealant', 'liquid gasket'])

/** By seal: how often a new one goes in, and the instances at which the old one is looked at. */
function listUses({ steps }: VisitContext['procedure']) {
  const uses = new Map<JsonPointer, { renewed: number; readonly inspected: Set<Id | undefined> }>()
  for (const { do: action, on, at } of steps) {
    if (on === undefined || !SEALING.has(action)) continue
    const entry = uses.get(on) ?? { renewed: 0, inspected: new Set() }
    if (action === 'inspect the seal') entry.inspected.add(at?.instance)
    else entry.renewed += 1
    uses.set(on, entry)
  }
  return uses
}

const SEALING: ReadonlySet<string> = new Set(['fit new seal', 'apply sealant', 'inspect the seal'])

function takeSeals(
  shelf: Readonly<Record<Id, StockSeal>>,
  take: readonly { readonly id: Id; readonly count: number }[],
): Readonly<Record<Id, StockSeal>> {
  const next = { ...shelf }
  for (const { id, count } of take) {
    const piece = next[id]
    if (piece !== undefined) next[id] = { ...piece, count: piece.count - count }
  }
  return next
}
