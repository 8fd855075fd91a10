import {
  type Exact,
  exactlyIn,
  exactOf,
  minus,
  nearestQuantity,
  over,
  plus,
  type Quantity,
  readBand,
  statedEnds,
  times,
  type VolumeUnit,
} from '../quantity/index.js'
import type { OilAdditive, SpecValue } from '../spec/index.js'

/** What one instance takes, and all that are worked on. */
export interface RefillAmount {
  readonly each: Quantity<VolumeUnit>
  readonly all: Quantity<VolumeUnit>
  /** What one instance takes in millilitres, not rounded: a third of a litre has no last digit. */
  readonly exactEach: Exact
}

function amounts(each: Exact, from: VolumeUnit, instances: number, unit = from): RefillAmount {
  return {
    each: nearestQuantity(each, from, unit),
    all: nearestQuantity(times(each, exactOf(instances)), from, unit),
    exactEach: exactlyIn(each, from, 'mL'),
  }
}

/**
 * Reads how much oil a stated refill calls for: its nominal, or the upper of two limits so that the shelf is never
 * short. Undefined where it is not stated or not known.
 */
export function readRefill(
  stated: SpecValue<VolumeUnit> | undefined,
  per: 'instance' | 'all instances' | undefined,
  instances: { readonly worked: number; readonly all: number },
): RefillAmount | undefined {
  const highest = stated && highestStated(stated)
  if (highest === undefined) return undefined
  // Where the figure is for all that the gearcase has, it is shared out, also where a visit works on some of them.
  const share = exactOf(per === 'all instances' ? instances.all : 1)
  return amounts(over(highest.amount, share), highest.unit, instances.worked)
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
  const stated = additive && highestStated(additive.volume)
  if (additive === undefined || stated === undefined) return { oil: refill, all: refill }
  const { unit } = refill.each
  const alone = amounts(stated.amount, stated.unit, instances)
  const { exactEach } = refill
  const amount = (each: Exact) => amounts(each, 'mL', instances, unit)
  if (!additive.includedInRefill)
    return { oil: refill, additive: alone, all: amount(plus(exactEach, alone.exactEach)) }
  const rest = minus(exactEach, alone.exactEach)
  return { oil: amount(rest.n < 0n ? exactOf(0) : rest), additive: alone, all: refill }
}

function highestStated(
  value: SpecValue<VolumeUnit>,
): { readonly amount: Exact; readonly unit: VolumeUnit } | undefined {
  if (value.kind === 'not stated') return undefined
  if (value.kind === 'limits' && value.min === undefined && value.max === undefined) return undefined
  return { amount: statedEnds(readBand(value, value.unit)).high, unit: value.unit }
}
