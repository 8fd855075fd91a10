import type { JsonPointer } from '../base/index.js'
import { matchStockSeals, type SealTask } from '../seal/index.js'
import type { Id, ProcedureDocument, Seal, SpecSheet, Stock, StockSeal } from '../spec/index.js'
import { serviceReason } from './codes.js'
import type { CollectedFigures } from './collectFigures.js'
import { namePart, nameSeal } from './names.js'
import type { PlannedSeal } from './visitPlan.js'

/**
 * Counts the seals that the steps of a visit use up, and what of them is to be bought. A seal that is fitted twice, as
 * where a plug is opened again for the level after a run, counts twice; sealant counts as one package, which serves every
 * place that takes the same. A seal to be used again if it is good is listed once, as a spare to have at hand.
 */
export function planSeals(
  sheet: SpecSheet,
  procedure: ProcedureDocument,
  figures: CollectedFigures,
  stock: Stock | undefined,
): readonly PlannedSeal[] {
  let shelf: Readonly<Record<Id, StockSeal>> = stock?.seals ?? {}
  const packages = new Set<string>()
  return [...listUses(procedure)].flatMap(([path, uses]): readonly PlannedSeal[] => {
    const resolved = figures.at(path)?.resolved
    const figure = figures.pointerTo(path)
    if (resolved === undefined || figure === undefined) return []
    const part = namePart(sheet, path)
    const count = uses.renewed > 0 ? uses.renewed : uses.inspected
    if (resolved.kind !== 'stated') {
      const seal: Seal = { kind: 'not stated' }
      const reasons = [serviceReason('service/seal-open', { part })]
      return [{ part, figure, seal, replace: 'cannot tell', count, buy: 0, reasons }]
    }
    const seal = resolved.value as Seal
    if (seal.kind === 'none' || seal.kind === 'not stated') return []
    const action = uses.renewed === 0 ? 'inspect' : APPLIED.has(seal.kind) ? 'apply' : 'new'
    const task: SealTask = { path, seal, action, inspection: [], reasons: [] }
    // A spare is looked for like a piece to be fitted, so that the shelf's count is right.
    const required: SealTask = action === 'inspect' ? { ...task, action: 'new' } : task
    const [line] = matchStockSeals(new Array<SealTask>(count).fill(required), shelf)
    const atHand = action === 'apply' && packages.has(nameSeal(seal))
    if (action === 'apply') packages.add(nameSeal(seal))
    const [taken] = line?.take ?? []
    const onShelf = taken === undefined ? undefined : shelf[taken.id]
    if (action !== 'apply') shelf = takeSeals(shelf, line?.take ?? [])
    return [
      {
        part,
        figure,
        seal,
        replace: seal.replace,
        count: action === 'apply' ? 1 : count,
        ...(taken === undefined || onShelf === undefined
          ? {}
          : { stock: { id: taken.id, name: onShelf.name, have: onShelf.count } }),
        ...(line !== undefined && line.take.length > 1 ? { take: line.take } : {}),
        buy: atHand ? 0 : (line?.buy ?? count),
        reasons: [
          serviceReason(action === 'inspect' ? 'service/seal-on-condition' : 'service/seal-every-opening', {
            count,
          }),
          ...(atHand ? [] : (line?.reasons ?? [])),
        ],
      },
    ]
  })
}

const APPLIED: ReadonlySet<string> = new Set(['thread sealant', 'liquid gasket'])

interface SealUses {
  /** How often a new one goes in. */
  readonly renewed: number
  /** How many instances are looked at. */
  readonly inspected: number
}

function listUses(procedure: ProcedureDocument): ReadonlyMap<JsonPointer, SealUses> {
  const uses = new Map<JsonPointer, { renewed: number; instances: Set<Id | undefined> }>()
  for (const { do: action, on, at } of procedure.steps) {
    if (on === undefined || !SEALING.has(action)) continue
    const entry = uses.get(on) ?? { renewed: 0, instances: new Set() }
    if (action === 'inspect the seal') entry.instances.add(at?.instance)
    else entry.renewed += 1
    uses.set(on, entry)
  }
  return new Map(
    [...uses].map(([path, { renewed, instances }]) => [path, { renewed, inspected: instances.size }]),
  )
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
