import { amountIn, figureToNumber, type Quantity, type VolumeUnit } from '../quantity/index.js'
import type { Leaf, OilAdditive, Resolved, SpecValue } from '../spec/index.js'
import { addExactly, divideExactly, multiplyExactly } from './exactNumbers.js'

/** What one instance takes, and all that are worked on. */
export interface RefillAmount {
  readonly each: Quantity<VolumeUnit>
  readonly all: Quantity<VolumeUnit>
}

/**
 * Reads how much oil a resolved refill calls for: its nominal, or the upper of two limits so that the shelf is never
 * short. Undefined where it is not stated or cannot be told.
 */
export function readRefill(
  resolved: Resolved<Leaf> | undefined,
  per: 'instance' | 'all instances' | undefined,
  instances: { readonly worked: number; readonly all: number },
): RefillAmount | undefined {
  if (resolved?.kind !== 'stated') return undefined
  const value = resolved.value as Exclude<SpecValue<VolumeUnit>, { kind: 'not stated' }>
  const figure = value.kind === 'limits' ? (value.max ?? value.min) : value.value
  if (figure === undefined) return undefined
  const { unit } = value
  const stated = { value: figureToNumber(figure), unit }
  if (per !== 'all instances')
    return { each: stated, all: { value: multiplyExactly(stated.value, instances.worked), unit } }
  // The figure stands for all that the gearcase has, also where a visit works on some of them.
  const each = { value: divideExactly(stated.value, instances.all), unit }
  const all = { value: divideExactly(multiplyExactly(stated.value, instances.worked), instances.all), unit }
  return { each, all }
}

/** A refill split into oil and additive. */
export interface SplitRefill {
  /** Oil alone. */
  readonly oil: RefillAmount
  /** Additive alone; absent: none, or its volume is not stated. */
  readonly additive?: RefillAmount
  /** All that goes in, and comes out at the next change. */
  readonly all: RefillAmount
}

/**
 * Splits a refill into oil and additive: where the manual's figure includes the additive, so much less oil goes in; where
 * it does not, the additive comes on top.
 */
export function splitRefill(
  refill: RefillAmount,
  additive: OilAdditive | undefined,
  instances: number,
): SplitRefill {
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
