import { amountIn, figureToNumber, type Quantity, type VolumeUnit } from '../quantity/index.js'
import type { OilAdditive } from '../spec/index.js'
import { addExactly, multiplyExactly } from './exactNumbers.js'
import type { RefillAmount } from './readRefill.js'

/** A refill parted into oil and additive. */
export interface ParedRefill {
  /** Oil alone. */
  readonly oil: RefillAmount
  /** Additive alone; absent: none, or its volume is not stated. */
  readonly additive?: RefillAmount
  /** All that goes in, and comes out at the next change. */
  readonly all: RefillAmount
}

/**
 * Parts a refill into oil and additive: where the manual's figure includes the additive, so much less oil goes in; where
 * it does not, the additive comes on top.
 */
export function allowForAdditive(
  refill: RefillAmount,
  additive: OilAdditive | undefined,
  instances: number,
): ParedRefill {
  const stated = additive === undefined ? undefined : readVolume(additive)
  if (additive === undefined || stated === undefined) return { oil: refill, all: refill }
  const { unit } = refill.each
  const each = amountIn(stated, unit)
  const times = (amount: Quantity<VolumeUnit>): RefillAmount => ({
    each: amount,
    all: { value: multiplyExactly(amount.value, instances), unit: amount.unit },
  })
  const sum = (sign: 1 | -1): RefillAmount =>
    times({ value: Math.max(0, addExactly([refill.each.value, sign * each.value])), unit })
  return additive.includedInRefill
    ? { oil: sum(-1), additive: times(stated), all: refill }
    : { oil: refill, additive: times(stated), all: sum(1) }
}

function readVolume({ volume }: OilAdditive): Quantity<VolumeUnit> | undefined {
  if (volume.kind === 'not stated') return undefined
  const figure = volume.kind === 'limits' ? (volume.max ?? volume.min) : volume.value
  return figure === undefined ? undefined : { value: figureToNumber(figure), unit: volume.unit }
}
