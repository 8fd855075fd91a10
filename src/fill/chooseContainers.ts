import { quoteValue, type Reason, requireObject } from '../base/index.js'
import { exactIn, type Quantity, type VolumeUnit } from '../quantity/index.js'
import type { Id, OilContainer } from '../spec/index.js'
import { type FillCodes, fillReason } from './codes.js'
import { requireAmount } from './requireAmount.js'
import { searchContainers } from './searchContainers.js'
import { compareWhole, type VolumeAmount, volumeIn, wholeParts } from './volumeAmount.js'

export interface ContainerUse {
  /** Id in the stock. */
  readonly id: Id
  /** Taken from the opened one. */
  readonly opened?: Quantity<VolumeUnit>
  /** Full ones to open. */
  readonly full: number
}

export type ContainerChoice = ContainersTaken &
  (
    | { readonly verdict: 'enough'; readonly short?: undefined }
    /** `short`: what is missing on the shelf. */
    | { readonly verdict: 'short'; readonly short: Quantity<VolumeUnit> }
  )

interface ContainersTaken {
  /** Name of the one oil that all containers hold; absent where the list is empty. */
  readonly oil?: string
  readonly needed: Quantity<VolumeUnit>
  readonly use: readonly ContainerUse[]
  /** What stays in the last container opened. */
  readonly leftOver: Quantity<VolumeUnit>
  /** Containers to buy for it, of the sizes that the shelf knows; none where it would take more than 10,000 of a size. */
  readonly buy: readonly { readonly id: Id; readonly count: number }[]
  readonly reasons: readonly Reason<keyof FillCodes>[]
}

/**
 * Which containers on the shelf cover a refill, and what to buy where they do not, for the oil list of a visit. The
 * caller passes only containers of oils that the manual permits ({@link oilMeets}); here only volumes count.
 *
 * The rule: one oil only, never two mixed. Opened containers first, the smallest rest first, so that rests get used up;
 * then full ones with the smallest remainder, then the fewest of them. Between oils: one that is enough, then the one with
 * more opened oil used, then less left over, then fewer to open, then the one named first.
 *
 * @param containers - stock containers by id, in the stock's order
 * @param volume - needed, 0 … 1e15; a printed figure of the sheet or a number
 * @returns what to use and what to buy, in the unit of `volume`. Sums are exact, numbers read by their shortest decimal
 * @throws TypeError or RangeError when an argument has the wrong shape, or a size or volume is not within 0 … 1e15
 *
 * Source: house rule: opened oil takes up water, so the rule leaves as little of it as it can.
 *
 * @example
 * ```ts
 * import { chooseContainers } from 'drivetrain-service/v1/fill'
 * // Two US quarts are needed, and the shelf has three bottles of one US quart: what is left over?
 * const bottle = { name: 'Bottle', oil: { name: 'Invented 80W-90' }, size: { value: 1, unit: 'qt_us' }, count: 3 } as const
 * const choice = chooseContainers({ bottle }, { value: '2', unit: 'qt_us' })
 * console.log(choice.use[0]?.full, choice.leftOver.value) // => 2 0
 * ```
 */
export function chooseContainers(
  containers: Readonly<Record<Id, OilContainer>>,
  volume: VolumeAmount,
): ContainerChoice {
  requireObject('containers', containers)
  requireAmount('volume', volume, 'volume', { figure: true })
  const names: string[] = []
  for (const [id, container] of Object.entries(containers)) {
    requireObject(`containers.${id}`, container)
    requireObject(`containers.${id}.oil`, container.oil)
    requireAmount(`containers.${id}.size`, container.size, 'volume')
    if (container.opened !== undefined) requireAmount(`containers.${id}.opened`, container.opened, 'volume')
    if (!Number.isInteger(container.count) || container.count < 0 || container.count > MAX_OF_ONE_SIZE) {
      throw new RangeError(
        `containers.${id}.count must be whole, 0 … ${MAX_OF_ONE_SIZE}, got ${quoteValue(container.count)}`,
      )
    }
    if (!names.includes(container.oil.name)) names.push(container.oil.name)
  }
  const choices = names.map((oil) => chooseOfOneOil(oil, containers, volume))
  const [best] = choices.sort(rank)
  if (best === undefined) {
    const needed = volumeIn(exactIn(volume, 'mL'), volume.unit)
    return {
      verdict: 'short',
      needed,
      use: [],
      leftOver: { value: 0, unit: volume.unit },
      short: needed,
      buy: [],
      reasons: [fillReason('fill/no-containers', { short: needed })],
    }
  }
  const others = names.filter((other) => other !== best.choice.oil)
  const oil = best.choice.oil ?? ''
  const reasons = others.map((other) => fillReason('fill/other-oil-not-mixed', { oil, other }))
  return { ...best.choice, reasons: [...best.choice.reasons, ...reasons] }
}

/** More of one size on a shelf or in a purchase is a typing mistake. */
const MAX_OF_ONE_SIZE = 10_000

interface RankedChoice {
  readonly choice: ContainerChoice
  readonly opened: bigint
  readonly left: bigint
  readonly missing: bigint
  readonly full: number
}

function rank(first: RankedChoice, second: RankedChoice): number {
  return (
    compareWhole(first.missing, second.missing) ||
    compareWhole(second.opened, first.opened) ||
    compareWhole(first.left, second.left) ||
    first.full - second.full
  )
}

function smaller(one: bigint, other: bigint): bigint {
  return one < other ? one : other
}

function chooseOfOneOil(
  oil: string,
  containers: Readonly<Record<Id, OilContainer>>,
  volume: VolumeAmount,
): RankedChoice {
  const shelf = Object.entries(containers).filter(([, container]) => container.oil.name === oil)
  const sizes = shelf.map(([, { size }]) => size)
  const openings = shelf.map(([, { opened, size }]) => opened ?? { value: 0, unit: size.unit })
  const { parts, perMillilitre } = wholeParts([volume, ...sizes, ...openings])
  const need = parts[0] ?? 0n
  // a size of 0 passes the shape of a document: such a container holds nothing and is never bought
  const kinds = shelf.map(([, { count }], place) => {
    const size = parts[1 + place] ?? 0n
    return size > 0n ? { size, count, maxCount: MAX_OF_ONE_SIZE } : { size: 1n, count: 0, maxCount: 0 }
  })
  const amount = (whole: bigint) => volumeIn({ n: whole, d: perMillilitre }, volume.unit)
  const rests = shelf
    .map((_, place) => ({ place, rest: parts[1 + shelf.length + place] ?? 0n }))
    .filter(({ rest }) => rest > 0n)
    .sort((first, second) => compareWhole(first.rest, second.rest))
  const taken = shelf.map(() => 0n)
  let missing = need
  let left = 0n
  for (const { place, rest } of rests) {
    if (missing === 0n) break
    taken[place] = rest < missing ? rest : missing
    left = rest < missing ? 0n : rest - missing
    missing -= taken[place]
  }
  const opened = need - missing
  const reasons: Reason<keyof FillCodes>[] = shelf.flatMap(([, { name }], place) =>
    taken[place] ? [fillReason('fill/opened-first', { container: name, taken: amount(taken[place]) })] : [],
  )
  const onShelf = kinds.reduce((sum, { size, count }) => sum + size * BigInt(count), 0n)
  const short = missing > onShelf ? missing - onShelf : 0n
  const found = missing === 0n || short > 0n ? undefined : searchContainers(missing, kinds)
  const counts = short > 0n ? kinds.map(({ count }) => count) : (found?.counts ?? kinds.map(() => 0))
  // for the shortfall as many of each known size may be bought as a shelf can hold
  const bought =
    short === 0n
      ? undefined
      : searchContainers(
          short,
          kinds.map(({ size, maxCount }) => ({
            size,
            count: Number(smaller(short / size + 1n, BigInt(maxCount))),
          })),
        )
  if (missing > 0n) left = bought ? bought.total - short : found ? found.total - missing : 0n
  for (const search of [found, bought]) {
    if (search?.complete === false)
      reasons.push(fillReason('fill/containers-not-searched-fully', { tried: search.tried }))
  }
  if (short > 0n) reasons.push(fillReason('fill/containers-short', { oil, short: amount(short) }))
  if (short === 0n || bought !== undefined)
    reasons.push(
      left === 0n
        ? fillReason('fill/containers-exact', { oil })
        : fillReason('fill/containers-left-over', { oil, left: amount(left) }),
    )
  const use = shelf.flatMap(([id], place) => {
    const full = counts[place] ?? 0
    const part = taken[place] ?? 0n
    return full === 0 && part === 0n ? [] : [{ id, ...(part > 0n ? { opened: amount(part) } : {}), full }]
  })
  const choice: ContainerChoice = {
    oil,
    needed: amount(need),
    use,
    leftOver: amount(left),
    ...(short > 0n ? { verdict: 'short', short: amount(short) } : { verdict: 'enough' }),
    buy: shelf.flatMap(([id], place) => {
      const count = bought?.counts[place] ?? 0
      return count === 0 ? [] : [{ id, count }]
    }),
    reasons,
  }
  return { choice, opened, left, missing: short, full: counts.reduce((sum, count) => sum + count, 0) }
}
