import { quoteValue, type Reason, requireObject } from '../base/index.js'
import { exactIn, type Quantity, type VolumeUnit } from '../quantity/index.js'
import type { Id, OilContainer } from '../spec/index.js'
import { type FillCodes, fillReason } from './codes.js'
import { searchContainers } from './searchContainers.js'
import type { VolumeAmount } from './volumeAmount.js'
import { compareBigInts, requireAmount, toWholeParts, volumeFromMillilitres } from './volumeAmount.js'

export interface ContainerUse {
  /** Id in the stock. */
  readonly id: Id
  /** Amount to take from the opened container. */
  readonly opened?: Quantity<VolumeUnit>
  /** Number of full containers to open. */
  readonly full: number
}

export type ContainerChoice = ContainerChoiceFacts &
  (
    | { readonly verdict: 'enough'; readonly short?: undefined }
    /** `short`: the amount missing from the shelf. */
    | { readonly verdict: 'short'; readonly short: Quantity<VolumeUnit> }
  )

interface ContainerChoiceFacts {
  /** Name of the oil that is used; absent if there are no containers. */
  readonly oil?: string
  readonly needed: Quantity<VolumeUnit>
  readonly use: readonly ContainerUse[]
  /** The amount left in the last container that was opened. */
  readonly leftOver: Quantity<VolumeUnit>
  /**
   * Containers to buy, in sizes that are on the shelf; empty if more than 10,000 of one size would be needed.
   */
  readonly buy: readonly { readonly id: Id; readonly count: number }[]
  readonly reasons: readonly Reason<keyof FillCodes>[]
}

/**
 * Chooses containers from the shelf for a refill, and containers to buy if they are not enough. Pass only
 * oils that the manual permits ({@link oilMeets}): this function compares only volumes.
 *
 * Rule: one oil only, never two mixed. Opened containers are used first, the emptiest first; then the full
 * ones that leave the smallest remainder, and of those the fewest. Among several oils, it prefers one that is
 * enough; then more opened oil used; then less left over; then fewer containers opened; then the order of the
 * list.
 *
 * @param containers - stock containers by id, in the stock's order
 * @param volume - volume needed, 0 to 1e15; a printed figure or a number
 * @returns what to use and what to buy, in the unit of `volume`. Sums are exact; a number means its shortest
 *   decimal
 * @throws TypeError or RangeError if an argument has the wrong shape, or a size or volume is not from 0 to
 *   1e15
 *
 * Source: house rule: opened oil absorbs water, so as little as possible of it should remain.
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
  const oilNames: string[] = []
  for (const [id, container] of Object.entries(containers)) {
    requireObject(`containers.${id}`, container)
    requireObject(`containers.${id}.oil`, container.oil)
    requireAmount(`containers.${id}.size`, container.size, 'volume')
    if (container.opened !== undefined) requireAmount(`containers.${id}.opened`, container.opened, 'volume')
    if (!Number.isInteger(container.count) || container.count < 0 || container.count > MAX_COUNT_OF_SIZE) {
      throw new RangeError(
        `containers.${id}.count must be a whole number from 0 to ${MAX_COUNT_OF_SIZE}, got ${quoteValue(container.count)}`,
      )
    }
    if (!oilNames.includes(container.oil.name)) oilNames.push(container.oil.name)
  }
  const choices = oilNames.map((oil) => chooseContainersOfOil(oil, containers, volume))
  const [best] = choices.sort(compareChoices)
  if (best === undefined) {
    const needed = volumeFromMillilitres(exactIn(volume, 'mL'), volume.unit)
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
  const otherOils = oilNames.filter((other) => other !== best.choice.oil)
  const oil = best.choice.oil ?? ''
  const reasons = otherOils.map((other) => fillReason('fill/other-oil-not-mixed', { oil, other }))
  return { ...best.choice, reasons: [...best.choice.reasons, ...reasons] }
}

/** A larger count of one size, on a shelf or in a purchase, is a typing mistake. */
const MAX_COUNT_OF_SIZE = 10_000

interface RankedChoice {
  readonly choice: ContainerChoice
  readonly opened: bigint
  readonly left: bigint
  readonly missing: bigint
  readonly full: number
}

function compareChoices(first: RankedChoice, second: RankedChoice): number {
  return (
    compareBigInts(first.missing, second.missing) ||
    compareBigInts(second.opened, first.opened) ||
    compareBigInts(first.left, second.left) ||
    first.full - second.full
  )
}

function minBigInt(first: bigint, second: bigint): bigint {
  return first < second ? first : second
}

function chooseContainersOfOil(
  oil: string,
  containers: Readonly<Record<Id, OilContainer>>,
  volume: VolumeAmount,
): RankedChoice {
  const shelf = Object.entries(containers).filter(([, container]) => container.oil.name === oil)
  const sizes = shelf.map(([, { size }]) => size)
  const openedAmounts = shelf.map(([, { opened, size }]) => opened ?? { value: 0, unit: size.unit })
  const { parts, perMillilitre } = toWholeParts([volume, ...sizes, ...openedAmounts])
  const neededParts = parts[0] ?? 0n
  // a document may state a size of 0: such a container is never used or bought
  const kinds = shelf.map(([, { count }], index) => {
    const size = parts[1 + index] ?? 0n
    return size > 0n ? { size, count, maxCount: MAX_COUNT_OF_SIZE } : { size: 1n, count: 0, maxCount: 0 }
  })
  const toQuantity = (parts: bigint) => volumeFromMillilitres({ n: parts, d: perMillilitre }, volume.unit)
  const openedVolumes = shelf
    .map((_, index) => ({ index, volume: parts[1 + shelf.length + index] ?? 0n }))
    .filter(({ volume }) => volume > 0n)
    .sort((first, second) => compareBigInts(first.volume, second.volume))
  const takenVolume = shelf.map(() => 0n)
  let missing = neededParts
  let leftOver = 0n
  for (const { index, volume } of openedVolumes) {
    if (missing === 0n) break
    takenVolume[index] = volume < missing ? volume : missing
    leftOver = volume < missing ? 0n : volume - missing
    missing -= takenVolume[index]
  }
  const opened = neededParts - missing
  const reasons: Reason<keyof FillCodes>[] = shelf.flatMap(([, { name }], index) =>
    takenVolume[index]
      ? [fillReason('fill/opened-first', { container: name, taken: toQuantity(takenVolume[index]) })]
      : [],
  )
  const shelfTotal = kinds.reduce((sum, { size, count }) => sum + size * BigInt(count), 0n)
  const shortfall = missing > shelfTotal ? missing - shelfTotal : 0n
  const shelfSearch = missing === 0n || shortfall > 0n ? undefined : searchContainers(missing, kinds)
  const counts =
    shortfall > 0n ? kinds.map(({ count }) => count) : (shelfSearch?.counts ?? kinds.map(() => 0))
  // a purchase may include up to the maximum count of each size
  const purchaseSearch =
    shortfall === 0n
      ? undefined
      : searchContainers(
          shortfall,
          kinds.map(({ size, maxCount }) => ({
            size,
            count: Number(minBigInt(shortfall / size + 1n, BigInt(maxCount))),
          })),
        )
  if (missing > 0n)
    leftOver = purchaseSearch
      ? purchaseSearch.total - shortfall
      : shelfSearch
        ? shelfSearch.total - missing
        : 0n
  for (const search of [shelfSearch, purchaseSearch]) {
    if (search?.isComplete === false)
      reasons.push(fillReason('fill/containers-not-searched-fully', { tried: search.tried }))
  }
  if (shortfall > 0n) reasons.push(fillReason('fill/containers-short', { oil, short: toQuantity(shortfall) }))
  if (shortfall === 0n || purchaseSearch !== undefined)
    reasons.push(
      leftOver === 0n
        ? fillReason('fill/containers-exact', { oil })
        : fillReason('fill/containers-left-over', { oil, left: toQuantity(leftOver) }),
    )
  const use = shelf.flatMap(([id], index) => {
    const full = counts[index] ?? 0
    const openedPart = takenVolume[index] ?? 0n
    return full === 0 && openedPart === 0n
      ? []
      : [{ id, ...(openedPart > 0n ? { opened: toQuantity(openedPart) } : {}), full }]
  })
  const choice: ContainerChoice = {
    oil,
    needed: toQuantity(neededParts),
    use,
    leftOver: toQuantity(leftOver),
    ...(shortfall > 0n ? { verdict: 'short', short: toQuantity(shortfall) } : { verdict: 'enough' }),
    buy: shelf.flatMap(([id], index) => {
      const count = purchaseSearch?.counts[index] ?? 0
      return count === 0 ? [] : [{ id, count }]
    }),
    reasons,
  }
  return {
    choice,
    opened,
    left: leftOver,
    missing: shortfall,
    full: counts.reduce((sum, count) => sum + count, 0),
  }
}
