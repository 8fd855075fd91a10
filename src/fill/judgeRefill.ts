import { dropUndefined, type Reason, requireObject, requireOneOf } from '../base/index.js'
import type { Band, Exact, Quantity, VolumeUnit } from '../quantity/index.js'
import {
  chooseSide,
  compareExact,
  divide,
  exactIn,
  findNearestDouble,
  readBand,
  requireBand,
  subtract,
} from '../quantity/index.js'
import type { FillMethod, SpecValue, StatedValue } from '../spec/index.js'
import { type FillCodes, fillReason } from './codes.js'
import { requireAmount, volumeFromMillilitres } from './volumeAmount.js'

interface JudgedRefill {
  /**
   * `right`: inside the stated band, or equal to the printed figure. `the level decides`: fill to the level
   * hole, the dipstick's mark or the sight glass. `outside`: outside the band. `stop`: more than 10 % off;
   * find the cause before you add oil.
   */
  readonly verdict: 'right' | 'the level decides' | 'outside' | 'stop'
  /** Refilled minus the nominal, or minus the nearer limit; 0 inside limits. */
  readonly difference: Quantity<VolumeUnit>
  readonly reasons: readonly Reason<keyof FillCodes>[]
}

/** The manual states no quantity, or a quantity without a band; then `difference` is from its figure. */
interface UnknownRefill {
  readonly verdict: 'cannot tell'
  readonly difference?: Quantity<VolumeUnit>
  readonly reasons: readonly Reason<keyof FillCodes>[]
}

export type RefillVerdict = JudgedRefill | UnknownRefill

/** House rule: up to and including 10 %, the level may decide. */
const MAX_DIFFERENCE_PERCENT = 10

/**
 * Compares a refill with the quantity that the manual states. When filling by quantity, or if the method is
 * not stated, the stated band decides. At a level hole, dipstick or sight glass the level decides, but a
 * quantity more than 10 % off stops the job: the machine may not be level, or old oil may have stayed in.
 *
 * @param stated - the sheet's refill; its first printed figure is used
 * @param refilled - measured volume, 0 or more; the number means its shortest decimal
 * @param method - how the manual fills this gearcase
 * @returns the verdict, the difference in the unit of `refilled`, and reasons; the band includes its limits
 * @throws TypeError or RangeError if an argument has the wrong shape
 *
 * Source: 10 % is a house rule. Filling to the level hole is common practice, no source.
 *
 * @example
 * ```ts
 * import { judgeRefill } from 'drivetrain-service/v1/fill'
 * // 0.60 L went in to the level hole where the manual states 0.75 L: may the plug go back?
 * const stated = { kind: 'nominal', value: '0.75', unit: 'L' } as const
 * judgeRefill(stated, { value: 0.6, unit: 'L' }, { kind: 'to level hole', opening: 'fill' }).verdict // => 'stop'
 * ```
 */
export function judgeRefill(
  stated: SpecValue<VolumeUnit>,
  refilled: Quantity<VolumeUnit>,
  method: FillMethod,
): RefillVerdict {
  requireObject('stated', stated)
  requireAmount('refilled', refilled, 'volume')
  requireObject('method', method)
  requireOneOf('method.kind', method.kind, [
    'by quantity',
    'to level hole',
    'dipstick',
    'sight glass',
    'not stated',
  ])
  if (stated.kind === 'not stated')
    return { verdict: 'cannot tell', reasons: [fillReason('fill/refill-not-stated', {})] }
  requireBand('stated', stated)
  const band = readBand(stated, 'mL')
  const volume = exactIn(refilled, 'mL')
  const reference = chooseReferenceVolume(volume, band)
  const gap = subtract(volume, reference)
  const difference = volumeFromMillilitres(gap, refilled.unit)
  const size = gap.n < 0n ? { n: -gap.n, d: gap.d } : gap
  const isInside =
    band.basis === 'nominal' ? compareExact(size, band.rounding) <= 0 : chooseSide(volume, band) === 0
  if (!isInside && isFarOff(size, reference)) {
    const percent = findNearestDouble(divide({ n: size.n * 100n, d: size.d }, replaceZeroVolume(reference)))
    const params = { difference, percent, limit: MAX_DIFFERENCE_PERCENT }
    return { verdict: 'stop', difference, reasons: [fillReason('fill/refill-far-off', params)] }
  }
  if (method.kind !== 'by quantity' && method.kind !== 'not stated') {
    const params = { difference, method: method.kind }
    return {
      verdict: 'the level decides',
      difference,
      reasons: [fillReason('fill/refill-level-decides', params)],
    }
  }
  return { ...judgeByQuantity(stated, band, refilled, difference, isInside), difference }
}

function judgeByQuantity(
  stated: StatedValue<VolumeUnit>,
  band: Band,
  refilled: Quantity<VolumeUnit>,
  difference: Quantity<VolumeUnit>,
  isInside: boolean,
): Pick<RefillVerdict, 'verdict' | 'reasons'> {
  if (stated.kind !== 'nominal') {
    const params = { refilled, ...makeLimitParams(stated, band, refilled.unit) }
    return isInside
      ? { verdict: 'right', reasons: [fillReason('fill/refill-inside-band', params)] }
      : { verdict: 'outside', reasons: [fillReason('fill/refill-outside-band', { ...params, difference })] }
  }
  const printed = { value: stated.value, unit: stated.unit }
  return isInside
    ? { verdict: 'right', reasons: [fillReason('fill/refill-as-printed', { refilled, printed })] }
    : {
        verdict: 'cannot tell',
        reasons: [fillReason('fill/refill-band-not-stated', { refilled, printed, difference })],
      }
}

/** Printed limits unchanged; the ends of a tolerance in the unit of the refill. */
function makeLimitParams(stated: StatedValue<VolumeUnit>, { low, high }: Band, unit: VolumeUnit) {
  if (stated.kind === 'limits') {
    const printed = (value: string | undefined) =>
      value === undefined ? undefined : { value, unit: stated.unit }
    return dropUndefined({ min: printed(stated.min), max: printed(stated.max) })
  }
  return dropUndefined({
    min: low && volumeFromMillilitres(low, unit),
    max: high && volumeFromMillilitres(high, unit),
  })
}

/** The volume to compare with: the nominal, otherwise the nearer limit; inside limits the volume itself. */
function chooseReferenceVolume(volume: Exact, band: Band): Exact {
  if (band.basis !== 'limits' && band.basis !== 'one limit') return band.aim
  const side = chooseSide(volume, band)
  return (side < 0 ? band.low : side > 0 ? band.high : undefined) ?? volume
}

function isFarOff(size: Exact, reference: Exact): boolean {
  return size.n * 100n * reference.d > reference.n * BigInt(MAX_DIFFERENCE_PERCENT) * size.d
}

/** Replaces a stated volume of zero by one millilitre, to avoid a division by zero. */
function replaceZeroVolume(volume: Exact): Exact {
  return volume.n > 0n ? volume : { n: 1n, d: 1n }
}
