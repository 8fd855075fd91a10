import type { Reason } from '../base/index.js'
import type { Exact, Quantity } from '../quantity/index.js'
import { add, compareExact, divide, exactIn, exactOf, multiply, roundExact } from '../quantity/index.js'
import type { DrainPan, Id } from '../spec/index.js'
import { type FillCodes, fillReason } from './codes.js'
import { volumeFromMillilitres } from './volumeAmount.js'

/** `empty between`: the pan can hold each drain, but not all the oil of the visit. */
export type PanVerdict = {
  /** All drained oil of the visit. */
  readonly total: Quantity<'mL'>
  readonly reasons: readonly Reason<keyof FillCodes>[]
} & (
  | { readonly verdict: 'large enough' | 'empty between'; readonly pan: Id }
  | { readonly verdict: 'too small'; readonly pan?: undefined }
)

/** House rule: above this limit a pan is nearly full and hard to carry. */
const NEARLY_FULL_PERCENT = 90

const NO_VOLUME: Exact = { n: 0n, d: 1n }

/** {@link checkPan} for exact millilitres, such as a third of a printed figure. */
export function judgePan(pans: Readonly<Record<Id, DrainPan>>, drained: readonly Exact[]): PanVerdict {
  const sum = drained.reduce(add, NO_VOLUME)
  const largest = drained.reduce(
    (largestSoFar, next) => (compareExact(next, largestSoFar) > 0 ? next : largestSoFar),
    NO_VOLUME,
  )
  const total = volumeFromMillilitres(sum, 'mL')
  const sortedPans = Object.entries(pans)
    .map(([id, pan]) => ({ id, pan, size: exactIn(pan.size, 'mL') }))
    .sort((first, second) => compareExact(first.size, second.size))
  const makeParams = ({ name, size }: DrainPan) => ({
    pan: name,
    total: volumeFromMillilitres(sum, size.unit),
    size,
  })
  const panForAll = sortedPans.find(({ size }) => compareExact(size, sum) >= 0)
  if (panForAll !== undefined) {
    const { id, pan, size } = panForAll
    const percent = size.n === 0n ? NO_VOLUME : multiply(divide(sum, size), exactOf(100))
    const isNearlyFull = compareExact(percent, exactOf(NEARLY_FULL_PERCENT)) > 0
    const reasons: Reason<keyof FillCodes>[] = [fillReason('fill/pan-large-enough', makeParams(pan))]
    if (isNearlyFull) {
      const params = { pan: pan.name, percent: Number(roundExact(percent, 'down')) }
      reasons.push(fillReason('fill/pan-nearly-full', params))
    }
    return { verdict: 'large enough', pan: id, total, reasons }
  }
  const panForEachDrain = sortedPans.find(({ size }) => compareExact(size, largest) >= 0)
  if (panForEachDrain !== undefined) {
    const reasons = [fillReason('fill/empty-pan-between-drains', makeParams(panForEachDrain.pan))]
    return { verdict: 'empty between', pan: panForEachDrain.id, total, reasons }
  }
  const largestPan = sortedPans.at(-1)
  const reason =
    largestPan === undefined
      ? fillReason('fill/no-pan', {})
      : fillReason('fill/pan-too-small', {
          largest: volumeFromMillilitres(largest, largestPan.pan.size.unit),
          size: largestPan.pan.size,
        })
  return { verdict: 'too small', total, reasons: [reason] }
}
