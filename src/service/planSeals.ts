import { dropUndefined, type JsonPointer } from '../base/index.js'
import { matchStockSeals, type SealTask } from '../seal/index.js'
import type { Id, Seal, StockSeal } from '../spec/index.js'
import { serviceReason } from './codes.js'
import { describePart, describeSeal } from './names.js'
import type { VisitContext } from './visitContext.js'
import type { PlannedSeal } from './visitPlan.js'

/**
 * Counts the seals for the steps of a visit, and those that must be bought. A seal that is fitted twice,
 * because a plug is opened again after a run, counts twice. Sealant counts as one package for all places. A
 * seal that can be used again is listed once, as a spare; spares are not bought.
 */
export function planSeals({ sheet, procedure, figures, stock }: VisitContext): readonly PlannedSeal[] {
  let shelf: Readonly<Record<Id, StockSeal>> = stock?.seals ?? {}
  const packages = new Set<string>()
  return [...countSealUses(procedure)].flatMap(
    ([path, { newCount, inspected }]): PlannedSeal | readonly [] => {
      const resolved = figures.at(path)?.resolved
      const figure = figures.pointerTo(path)
      if (resolved === undefined || figure === undefined) return []
      const part = describePart(sheet, path)
      const count = newCount > 0 ? newCount : inspected.size
      if (resolved.kind !== 'stated') {
        const reasons = [serviceReason('service/seal-not-known', { part })]
        return { part, figure, seal: { kind: 'not stated' }, replace: 'cannot tell', count, buy: 0, reasons }
      }
      const seal = resolved.value as Seal
      if (seal.kind === 'none' || seal.kind === 'not stated') return []
      const isSealant = newCount > 0 && APPLIED_KINDS.has(seal.kind)
      // A spare is taken from the stock like a fitted seal, to keep the counts right.
      const task: SealTask = { path, seal, action: isSealant ? 'apply' : 'new', inspection: [], reasons: [] }
      const [line] = matchStockSeals(new Array<SealTask>(count).fill(task), shelf)
      const { take = [], buy = count, reasons = [] } = line ?? {}
      const isPackagePlanned = isSealant && packages.has(describeSeal(seal))
      if (isSealant) packages.add(describeSeal(seal))
      const [taken] = take
      const stockEntry = taken && shelf[taken.id]
      if (!isSealant) shelf = takeSeals(shelf, take)
      const replaceCode =
        newCount === 0
          ? 'service/seal-on-condition'
          : seal.replace === 'not stated'
            ? 'service/seal-replace-not-stated'
            : 'service/seal-every-opening'
      return dropUndefined({
        part,
        figure,
        seal,
        replace: seal.replace,
        count: isSealant ? 1 : count,
        stock: stockEntry && { id: taken.id, name: stockEntry.name, have: stockEntry.count },
        take: take.length > 1 ? take : undefined,
        buy: isPackagePlanned || newCount === 0 ? 0 : buy,
        reasons: [serviceReason(replaceCode, { count }), ...(isPackagePlanned ? [] : reasons)],
      })
    },
  )
}

const APPLIED_KINDS: ReadonlySet<string> = new Set(['thread sealant', 'liquid gasket'])

/** For each seal, the number of new ones, and the instances at which the old one is inspected. */
function countSealUses({ steps }: VisitContext['procedure']) {
  const uses = new Map<JsonPointer, { newCount: number; readonly inspected: Set<Id | undefined> }>()
  for (const { do: action, on, at } of steps) {
    if (on === undefined || !SEALING_ACTIONS.has(action)) continue
    const entry = uses.get(on) ?? { newCount: 0, inspected: new Set() }
    if (action === 'inspect the seal') entry.inspected.add(at?.instance)
    else entry.newCount += 1
    uses.set(on, entry)
  }
  return uses
}

const SEALING_ACTIONS: ReadonlySet<string> = new Set(['fit new seal', 'apply sealant', 'inspect the seal'])

function takeSeals(
  shelf: Readonly<Record<Id, StockSeal>>,
  take: readonly { readonly id: Id; readonly count: number }[],
): Readonly<Record<Id, StockSeal>> {
  const next = { ...shelf }
  for (const { id, count } of take) {
    const stockSeal = next[id]
    if (stockSeal !== undefined) next[id] = { ...stockSeal, count: stockSeal.count - count }
  }
  return next
}
