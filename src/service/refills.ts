import type { Exact, Quantity, VolumeUnit } from '../quantity/index.js'
import {
  add,
  convertExact,
  divide,
  exactOf,
  findNearestQuantity,
  getStatedEnds,
  multiply,
  readBand,
  subtract,
} from '../quantity/index.js'
import type { OilAdditive, SpecValue } from '../spec/index.js'

/** The volume for one instance, and for all instances of the visit. */
export interface RefillAmount {
  readonly each: Quantity<VolumeUnit>
  readonly all: Quantity<VolumeUnit>
  /** The volume for one instance in millilitres, not rounded. */
  readonly exactEach: Exact
}

function makeAmount(each: Exact, from: VolumeUnit, instances: number, unit = from): RefillAmount {
  return {
    each: findNearestQuantity(each, from, unit),
    all: findNearestQuantity(multiply(each, exactOf(instances)), from, unit),
    exactEach: convertExact(each, from, 'mL'),
  }
}

/**
 * Reads the volume of a stated refill: its nominal, or the upper limit, so that enough oil is taken.
 * Undefined if it is not stated or not known.
 */
export function readRefill(
  stated: SpecValue<VolumeUnit> | undefined,
  per: 'instance' | 'all instances' | undefined,
  instances: { readonly worked: number; readonly all: number },
): RefillAmount | undefined {
  const highest = stated && findHighestStated(stated)
  if (highest === undefined) return undefined
  // A figure for all instances is divided, even if the visit works on only some of them.
  const share = exactOf(per === 'all instances' ? instances.all : 1)
  return makeAmount(divide(highest.amount, share), highest.unit, instances.worked)
}

/** A refill split into oil and additive. */
export interface SplitRefill {
  readonly oil: RefillAmount
  /** Absent without an additive, or if its volume is not stated. */
  readonly additive?: RefillAmount
  /** The sum of both. */
  readonly all: RefillAmount
}

/**
 * Splits a refill into oil and additive. If the refill includes the additive, the oil is reduced by that
 * volume; if not, the additive is extra.
 */
export function splitRefill(
  refill: RefillAmount,
  additive: OilAdditive | undefined,
  instances: number,
): SplitRefill {
  const stated = additive && findHighestStated(additive.volume)
  if (additive === undefined || stated === undefined) return { oil: refill, all: refill }
  const { unit } = refill.each
  const additiveAmount = makeAmount(stated.amount, stated.unit, instances)
  const { exactEach } = refill
  const makeTotal = (candidate: Exact) => makeAmount(candidate, 'mL', instances, unit)
  if (!additive.includedInRefill)
    return {
      oil: refill,
      additive: additiveAmount,
      all: makeTotal(add(exactEach, additiveAmount.exactEach)),
    }
  const oilVolume = subtract(exactEach, additiveAmount.exactEach)
  return { oil: makeTotal(oilVolume.n < 0n ? exactOf(0) : oilVolume), additive: additiveAmount, all: refill }
}

function findHighestStated(
  value: SpecValue<VolumeUnit>,
): { readonly amount: Exact; readonly unit: VolumeUnit } | undefined {
  if (value.kind === 'not stated') return undefined
  if (value.kind === 'limits' && value.min === undefined && value.max === undefined) return undefined
  return { amount: getStatedEnds(readBand(value, value.unit)).high, unit: value.unit }
}
