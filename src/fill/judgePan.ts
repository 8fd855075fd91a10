import type { Reason } from '../base/index.js'
import type { Exact, Quantity } from '../quantity/index.js'
import { compareExact, exactIn, exactOf, over, plus, roundExact, times } from '../quantity/index.js'
import type { DrainPan, Id } from '../spec/index.js'
import { type FillCodes, fillReason } from './codes.js'
import { volumeIn } from './volumeAmount.js'

/** `empty between`: the pan holds each draining, but not all of the visit together. */
export type PanVerdict = {
  /** All drained oil of the visit. */
  readonly total: Quantity<'mL'>
  readonly reasons: readonly Reason<keyof FillCodes>[]
} & (
  | { readonly verdict: 'large enough' | 'empty between'; readonly pan: Id }
  | { readonly verdict: 'too small'; readonly pan?: undefined }
)

/** Above this share a pan is called nearly full: house rule, it must still be carried. */
const NEARLY_FULL = 90

const NOTHING: Exact = { n: 0n, d: 1n }

/** {@link checkPan} for exact millilitres, such as a third of a printed figure. */
export function judgePan(pans: Readonly<Record<Id, DrainPan>>, drained: readonly Exact[]): PanVerdict {
  const sum = drained.reduce(plus, NOTHING)
  const largest = drained.reduce((one, next) => (compareExact(next, one) > 0 ? next : one), NOTHING)
  const total = volumeIn(sum, 'mL')
  const bySize = Object.entries(pans)
    .map(([id, pan]) => ({ id, pan, size: exactIn(pan.size, 'mL') }))
    .sort((first, second) => compareExact(first.size, second.size))
  const paramsOf = ({ name, size }: DrainPan) => ({ pan: name, total: volumeIn(sum, size.unit), size })
  const whole = bySize.find(({ size }) => compareExact(size, sum) >= 0)
  if (whole !== undefined) {
    const { id, pan, size } = whole
    const percent = size.n === 0n ? NOTHING : times(over(sum, size), exactOf(100))
    const nearly = compareExact(percent, exactOf(NEARLY_FULL)) > 0
    const reasons: Reason<keyof FillCodes>[] = [fillReason('fill/pan-large-enough', paramsOf(pan))]
    if (nearly) {
      const params = { pan: pan.name, percent: Number(roundExact(percent, 'down')) }
      reasons.push(fillReason('fill/pan-nearly-full', params))
    }
    return { verdict: 'large enough', pan: id, total, reasons }
  }
  const one = bySize.find(({ size }) => compareExact(size, largest) >= 0)
  if (one !== undefined) {
    const reasons = [fillReason('fill/pan-empty-between', paramsOf(one.pan))]
    return { verdict: 'empty between', pan: one.id, total, reasons }
  }
  const biggest = bySize.at(-1)
  const reason =
    biggest === undefined
      ? fillReason('fill/no-pan', {})
      : fillReason('fill/pan-too-small', {
          largest: volumeIn(largest, biggest.pan.size.unit),
          size: biggest.pan.size,
        })
  return { verdict: 'too small', total, reasons: [reason] }
}
