import { type JsonPointer, quoteValue, type Reason, refuse, requireObject } from '../base/index.js'
import type { Id, Seal, StockSeal } from '../spec/index.js'
import { type SealCodes, sealReason } from './codes.js'
import { compareSeals } from './compareSeals.js'
import type { SealTask } from './listSealTasks.js'
import { requireSeal } from './requireSeal.js'

/** One kind of seal that a job needs. */
export interface SealLine {
  readonly seal: SealTask['seal']
  /** Pointers to the seals in the sheet. */
  readonly paths: readonly JsonPointer[]
  /**
   * Number of pieces that will certainly be fitted; for sealants and liquid gaskets, one package for all.
   */
  readonly needed: number
  /** Number of further pieces that an inspection may require. */
  readonly toInspect: number
  readonly take: readonly { readonly id: Id; readonly count: number }[]
  /** Number to buy. */
  readonly buy: number
  /** Stock seals that may be the same: check them. */
  readonly possibleMatches: readonly Id[]
  readonly reasons: readonly Reason<keyof SealCodes>[]
}

/**
 * Matches the seals of a job with the stock, one line for each kind. Seals are compared by part number if
 * both have one, otherwise by kind and every property. If a property is missing, the stock seal is only
 * listed for checking. No piece is used twice: lines are filled in the order of the tasks. Common practice,
 * no source.
 */
export function matchStockSeals(
  tasks: readonly SealTask[],
  stock: Readonly<Record<Id, StockSeal>>,
): readonly SealLine[] {
  if (!Array.isArray(tasks)) throw refuse('tasks', tasks, 'a list')
  requireObject('stock', stock)
  const shelf = Object.entries(stock).map(([id, piece]) => {
    requireObject(`stock.${id}`, piece)
    const { name, seal, count } = piece
    requireSeal(`stock.${id}.seal`, seal)
    if (!Number.isInteger(count) || count < 0)
      throw new RangeError(`stock.${id}.count must be a whole number from 0, got ${quoteValue(count)}`)
    return { id, name, seal, left: count }
  })
  const groups: { seal: SealTask['seal']; tasks: SealTask[] }[] = []
  tasks.forEach((task: SealTask, place) => {
    requireObject(`tasks[${place}]`, task)
    requireSeal(`tasks[${place}].seal`, task.seal)
    if (task.action === 'look up') return
    const group = groups.find(({ seal }) => canShareLine(seal, task.seal))
    if (group === undefined) groups.push({ seal: task.seal, tasks: [task] })
    else group.tasks.push(task)
  })
  return groups.map(({ seal, tasks }) => takeFromStock(seal, tasks, shelf))
}

function takeFromStock(
  seal: SealTask['seal'],
  tasks: readonly SealTask[],
  shelf: { readonly id: Id; readonly name: string; readonly seal: Seal; left: number }[],
): SealLine {
  const isApplied = tasks.some(({ action }) => action === 'apply')
  const needed = isApplied ? 1 : tasks.filter(({ action }) => action === 'new').length
  const toInspect = tasks.filter(({ action }) => action === 'inspect').length
  const nameOf = (id: Id) => shelf.find((piece) => piece.id === id)?.name ?? id
  const take: { id: Id; count: number }[] = []
  const possibleMatches: Id[] = []
  let missing = needed
  let spareCount = 0
  for (const piece of shelf) {
    const match = compareSeals(seal, piece.seal)
    if (match === 'perhaps' && piece.left > 0) possibleMatches.push(piece.id)
    if (match !== 'yes') continue
    const count = Math.min(missing, piece.left)
    missing -= count
    // a package of sealant also serves other lines
    if (!isApplied) piece.left -= count
    if (count > 0) take.push({ id: piece.id, count })
    spareCount += piece.left
  }
  return {
    seal,
    paths: [...new Set(tasks.map(({ path }) => path))],
    needed,
    toInspect,
    take,
    buy: missing,
    possibleMatches,
    reasons: [
      ...take.map(({ id, count }) => sealReason('seal/in-stock', { name: nameOf(id), count })),
      ...(missing > 0 ? [sealReason('seal/buy', { count: missing })] : []),
      ...(toInspect > spareCount ? [sealReason('seal/keep-spare', { count: toInspect - spareCount })] : []),
      ...(missing > 0 || toInspect > spareCount
        ? possibleMatches.map((id) => sealReason('seal/stock-may-match', { name: nameOf(id) }))
        : []),
    ],
  }
}

/** Whether two needed seals share a line: they are certainly the same, or described in the same words. */
function canShareLine(first: Seal, second: Seal): boolean {
  const writeProperties = (seal: Seal) =>
    JSON.stringify(
      Object.entries({ ...seal, replace: null, source: null }).sort(([a], [b]) => (a < b ? -1 : 1)),
    )
  return compareSeals(first, second) === 'yes' || writeProperties(first) === writeProperties(second)
}
