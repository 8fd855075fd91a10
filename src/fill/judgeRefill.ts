import { type Reason, requireObject, shown } from '../base/index.js'
import {
  compareExact,
  type Exact,
  minus,
  nearestDouble,
  over,
  type Quantity,
  type VolumeUnit,
} from '../quantity/index.js'
import type { FillMethod, SpecValue } from '../spec/index.js'
import { type FillCodes, fillReason } from './codes.js'
import { requireAmount } from './requireAmount.js'
import { exactVolume, volumeIn } from './volumeAmount.js'
import { sideOfBand, type VolumeBand, volumeBand } from './volumeBand.js'

export interface RefillVerdict {
  /**
   * `right`: inside the stated band, or the printed figure itself. `the level decides`: hole, dipstick or glass has the
   * last word. `outside`: past the band. `stop`: more than 10 % off: something is wrong before more oil goes in.
   * `cannot tell`: the manual states no quantity, or no band for one.
   */
  readonly answer: 'right' | 'the level decides' | 'outside' | 'stop' | 'cannot tell'
  /** Refilled minus stated: from the nominal, else from the nearer limit, 0 inside limits. */
  readonly difference?: Quantity<VolumeUnit>
  readonly reasons: readonly Reason<keyof FillCodes>[]
}

/** House rule: up to 10 % the level may well decide; 10 % itself is still allowed. */
const FAR_OFF_PERCENT = 10

/**
 * Whether the oil put in agrees with what the manual states, when the refill is done or written down. By quantity, the
 * stated band decides; at a level hole, dipstick or sight glass the level decides, and a quantity more than 10 % off
 * stops the job: the machine may stand askew, or old oil may have stayed in. What ran out is {@link judgeDrained}'s.
 *
 * @param stated - the sheet's refill; its first printed figure counts
 * @param refilled - measured, 0 or more, read by its shortest decimal
 * @param method - how the manual fills this gearcase
 * @returns the verdict, the difference in the unit of `refilled`, and reasons; limits belong to their band
 * @throws TypeError or RangeError when an argument has the wrong shape
 *
 * Source: house rule for 10 %; that the hole decides: common practice, no source.
 *
 * @example
 * ```ts
 * import { judgeRefill } from 'drivetrain-service/v1/fill'
 * // 0.60 L went in to the level hole where the manual states 0.75 L: may the plug go back?
 * const stated = { kind: 'nominal', value: '0.75', unit: 'L' } as const
 * judgeRefill(stated, { value: 0.6, unit: 'L' }, { kind: 'to level hole', opening: 'fill' }).answer // => 'stop'
 * ```
 */
export function judgeRefill(
  stated: SpecValue<VolumeUnit>,
  refilled: Quantity<VolumeUnit>,
  method: FillMethod,
): RefillVerdict {
  requireObject('stated', stated)
  requireAmount('refilled', refilled, 'volume', { least: 0 })
  requireObject('method', method)
  const methods = ['by quantity', 'to level hole', 'dipstick', 'sight glass']
  if (!methods.includes(method.kind)) {
    throw new TypeError(`method.kind must be one of ${methods.join(', ')}, got ${shown(method.kind)}`)
  }
  if (stated.kind === 'not stated') {
    return { answer: 'cannot tell', reasons: [fillReason('fill/refill-not-stated', {})] }
  }
  const band = volumeBand(stated)
  const volume = exactVolume(refilled)
  const side = sideOfBand(volume, band)
  const hasBand = band.min !== undefined || band.max !== undefined
  const from = band.nominal ?? (side < 0 ? band.min : side > 0 ? band.max : undefined) ?? volume
  const gap = minus(volume, from)
  const difference = volumeIn(gap, refilled.unit)
  const size = gap.n < 0n ? { n: -gap.n, d: gap.d } : gap
  const inside = hasBand ? side === 0 : band.rounding !== undefined && compareExact(size, band.rounding) <= 0
  if (!inside && isFarOff(size, from)) {
    const percent = nearestDouble(over({ n: size.n * 100n, d: size.d }, positive(from)))
    const params = { difference, percent, limit: FAR_OFF_PERCENT }
    return { answer: 'stop', difference, reasons: [fillReason('fill/refill-far-off', params)] }
  }
  if (method.kind !== 'by quantity') {
    const params = { difference, method: method.kind }
    return {
      answer: 'the level decides',
      difference,
      reasons: [fillReason('fill/refill-level-decides', params)],
    }
  }
  return { ...byQuantity(band, refilled, difference, inside, hasBand), difference }
}

function byQuantity(
  band: VolumeBand,
  refilled: Quantity<VolumeUnit>,
  difference: Quantity<VolumeUnit>,
  inside: boolean,
  hasBand: boolean,
): Pick<RefillVerdict, 'answer' | 'reasons'> {
  if (hasBand) {
    const min = band.min === undefined ? {} : { min: band.shown.min ?? volumeIn(band.min, refilled.unit) }
    const max = band.max === undefined ? {} : { max: band.shown.max ?? volumeIn(band.max, refilled.unit) }
    const params = { refilled, ...min, ...max }
    return inside
      ? { answer: 'right', reasons: [fillReason('fill/refill-inside-band', params)] }
      : { answer: 'outside', reasons: [fillReason('fill/refill-outside-band', { ...params, difference })] }
  }
  const printed = band.printed ?? refilled
  return inside
    ? { answer: 'right', reasons: [fillReason('fill/refill-as-printed', { refilled, printed })] }
    : {
        answer: 'cannot tell',
        reasons: [fillReason('fill/refill-band-not-stated', { refilled, printed, difference })],
      }
}

function isFarOff(size: Exact, from: Exact): boolean {
  return size.n * 100n * from.d > from.n * BigInt(FAR_OFF_PERCENT) * size.d
}

/** A stated volume of zero would divide by zero; any difference from it is shown as against one millilitre. */
function positive(volume: Exact): Exact {
  return volume.n > 0n ? volume : { n: 1n, d: 1n }
}
