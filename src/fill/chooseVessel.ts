import { type Reason, requireObject } from '../base/index.js'
import type { Quantity, VolumeUnit } from '../quantity/index.js'
import type { Id, MeasuringVessel } from '../spec/index.js'
import { type FillCodes, fillReason } from './codes.js'
import type { VolumeAmount } from './volumeAmount.js'
import { compareBigInts, requireAmount, toWholeParts, volumeFromMillilitres } from './volumeAmount.js'

export type VesselChoice =
  | {
      /** `tolerance not stated`: the required accuracy is unknown. */
      readonly verdict: 'fits' | 'tolerance not stated'
      readonly vessel: Id
      /** The mark for each pour, in the vessel's unit. */
      readonly marks: readonly Quantity<VolumeUnit>[]
      /** Sum of the marks minus the volume to measure. */
      readonly difference: Quantity<VolumeUnit>
      /** Maximum error: the difference plus half a graduation for each pour. */
      readonly error: Quantity<VolumeUnit>
      readonly reasons: readonly Reason<keyof FillCodes>[]
    }
  | {
      readonly verdict: 'does not fit'
      readonly vessel?: undefined
      readonly marks: readonly []
      readonly difference?: undefined
      readonly error?: undefined
      readonly reasons: readonly Reason<keyof FillCodes>[]
    }

const MAX_POURS = 50

/**
 * Chooses the vessel that measures a refill accurately enough, and the mark for each pour. Only for filling
 * by quantity: at a level hole, the level decides ({@link judgeRefill}).
 *
 * Error = |marks − volume| + pours × half a graduation; it may equal the tolerance.
 *
 * Rule: with a tolerance, the fewest pours among the vessels within it, then the smallest error, then the
 * smallest vessel; without a tolerance, the smallest error first. Every pour fills the vessel to the top
 * mark, except the last, which fills it to the nearest mark (the lower of two). If the last pour would be
 * below the lowest mark, the last two share their volume.
 *
 * @param vessels - by id; the lowest mark is one graduation if the vessel states none
 * @param volume - volume to measure, 0 or more; a printed figure or a number
 * @param tolerance - permitted error above or below, 0 or more; absent if the manual states none
 * @returns the vessel and its marks, differences in the unit of `volume`; a number means its shortest decimal
 * @throws TypeError or RangeError if an argument has the wrong shape, or a size is negative
 *
 * Source: house rule: a mark is read to half a graduation.
 *
 * @example
 * ```ts
 * import { chooseVessel } from 'drivetrain-service/v1/fill'
 * // Is a half-litre jug with marks every 50 mL fine enough for 450 mL within 20 mL?
 * const jug = { name: 'Jug', size: { value: 500, unit: 'mL' }, graduation: { value: 50, unit: 'mL' } } as const
 * const answer = chooseVessel({ jug }, { value: '450', unit: 'mL' }, { value: '20', unit: 'mL' })
 * console.log(answer.verdict, answer.reasons[0]?.code) // => does not fit fill/vessel-too-coarse
 * ```
 */
export function chooseVessel(
  vessels: Readonly<Record<Id, MeasuringVessel>>,
  volume: VolumeAmount,
  tolerance?: VolumeAmount,
): VesselChoice {
  requireObject('vessels', vessels)
  requireAmount('volume', volume, 'volume', { figure: true })
  if (tolerance !== undefined) requireAmount('tolerance', tolerance, 'volume', { figure: true })
  const entries = Object.entries(vessels)
  const sizesByVessel = entries.map(([id, vessel]) => {
    requireObject(`vessels.${id}`, vessel)
    requireAmount(`vessels.${id}.size`, vessel.size, 'volume')
    requireAmount(`vessels.${id}.graduation`, vessel.graduation, 'volume')
    const lowest = vessel.lowestMark ?? vessel.graduation
    requireAmount(`vessels.${id}.lowestMark`, lowest, 'volume')
    return [vessel.size, vessel.graduation, lowest]
  })
  const { parts, perMillilitre } = toWholeParts([volume, tolerance ?? volume, ...sizesByVessel.flat()])
  // doubled, so that half a graduation is a whole number
  const [neededParts = 0n, toleranceParts = 0n, ...vesselParts] = parts.map((part) => part * 2n)
  const toQuantity = (parts: bigint, unit = volume.unit) =>
    volumeFromMillilitres({ n: parts, d: perMillilitre * 2n }, unit)
  const reasons: Reason<keyof FillCodes>[] = []
  const addReason = (reason: Reason<keyof FillCodes>): [] => {
    reasons.push(reason)
    return []
  }
  const candidates = entries.flatMap(([id, vessel], index) => {
    const { name } = vessel
    const [size = 0n, step = 1n, lowest = 0n] = vesselParts.slice(index * 3, index * 3 + 3)
    if (step === 0n) return addReason(fillReason('fill/vessel-without-marks', { vessel: name }))
    const marks = chooseMarks(neededParts, (size / step) * step, step, lowest)
    if (marks === 'too large')
      return addReason(fillReason('fill/vessel-too-large', { vessel: name, lowestMark: toQuantity(lowest) }))
    if (marks === 'too many pours')
      return addReason(fillReason('fill/vessel-too-many-pours', { vessel: name, limit: MAX_POURS }))
    const difference = marks.reduce((sum, mark) => sum + mark, 0n) - neededParts
    const error = (difference < 0n ? -difference : difference) + (step / 2n) * BigInt(marks.length)
    if (tolerance !== undefined && error > toleranceParts) {
      const params = { vessel: name, error: toQuantity(error, tolerance.unit), tolerance }
      return addReason(fillReason('fill/vessel-too-coarse', params))
    }
    return [{ id, name, marks, difference, error, size, unit: vessel.size.unit }]
  })
  const [best] = candidates.sort((first, second) => {
    const errorOrder = compareBigInts(first.error, second.error)
    const pourOrder = first.marks.length - second.marks.length
    const order = tolerance === undefined ? errorOrder || pourOrder : pourOrder || errorOrder
    return order || compareBigInts(first.size, second.size)
  })
  if (best === undefined) {
    return {
      verdict: 'does not fit',
      marks: [],
      reasons: entries.length === 0 ? [fillReason('fill/no-vessel', {})] : reasons,
    }
  }
  const error = toQuantity(best.error)
  if (best.marks.length > 1)
    reasons.push(fillReason('fill/vessel-in-several-pours', { vessel: best.name, pours: best.marks.length }))
  reasons.push(
    tolerance === undefined
      ? fillReason('fill/tolerance-not-stated', { error })
      : fillReason('fill/vessel-accurate-enough', {
          vessel: best.name,
          error: toQuantity(best.error, tolerance.unit),
          tolerance,
        }),
  )
  return {
    verdict: tolerance === undefined ? 'tolerance not stated' : 'fits',
    vessel: best.id,
    marks: best.marks.map((mark) => toQuantity(mark, best.unit)),
    difference: toQuantity(best.difference),
    error,
    reasons,
  }
}

function chooseMarks(
  needed: bigint,
  topMark: bigint,
  step: bigint,
  lowest: bigint,
): bigint[] | 'too large' | 'too many pours' {
  if (topMark < lowest || topMark === 0n) return 'too large'
  const fullPours = (needed - 1n) / topMark
  if (fullPours >= BigInt(MAX_POURS)) return 'too many pours'
  const lastMark = findNearestMark(needed - fullPours * topMark, step)
  const topMarks = Array.from({ length: Number(fullPours) }, () => topMark)
  if (lastMark >= lowest && lastMark > 0n) return [...topMarks, lastMark]
  if (fullPours === 0n) return 'too large'
  // a remainder that rounds to zero is not a pour
  if (lastMark === 0n) return topMarks
  const sharedVolume = needed - (fullPours - 1n) * topMark
  const halfMark = findNearestMark(sharedVolume / 2n, step)
  const remainingMark = findNearestMark(sharedVolume - halfMark, step)
  if (halfMark < lowest || remainingMark < lowest || remainingMark > topMark) return 'too large'
  return [...topMarks.slice(1), remainingMark, halfMark]
}

function findNearestMark(volume: bigint, step: bigint): bigint {
  const markBelow = (volume / step) * step
  return (volume - markBelow) * 2n > step ? markBelow + step : markBelow
}
