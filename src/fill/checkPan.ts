import { type Reason, requireObject } from '../base/index.js'
import type { Quantity, VolumeUnit } from '../quantity/index.js'
import type { DrainPan, Id } from '../spec/index.js'
import { type FillCodes, fillReason } from './codes.js'
import { requireAmount } from './requireAmount.js'
import { type VolumeAmount, volumeIn, wholeParts } from './volumeAmount.js'

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

/**
 * Whether a drain pan holds the oil of a whole visit, so that it does not overflow at the second gearcase.
 *
 * The smallest pan that holds everything is taken; a pan of exactly the total holds it. Where none does, the smallest
 * that holds the largest single draining, to be emptied in between.
 *
 * @param pans - by id
 * @param volumes - every volume that will run out at this visit, 0 or more; figures of the sheet or numbers
 * @returns the pan, the total in mL and the reasons; sums are exact, numbers read by their shortest decimal
 * @throws TypeError or RangeError when an argument has the wrong shape or a size is negative
 *
 * Source: common practice, no source; nearly full above 90 %: house rule.
 *
 * @example
 * ```ts
 * import { checkPan } from 'drivetrain-service/v1/fill'
 * // Does a 2 L pan hold 1.2 L and 0.9 L?
 * const pan = { name: 'Pan', size: { value: 2, unit: 'L' } } as const
 * const verdict = checkPan({ pan }, [{ value: '1.2', unit: 'L' }, { value: '0.9', unit: 'L' }])
 * verdict.verdict // => 'empty between'
 * ```
 */
export function checkPan(pans: Readonly<Record<Id, DrainPan>>, volumes: readonly VolumeAmount[]): PanVerdict {
  requireObject('pans', pans)
  if (!Array.isArray(volumes)) throw new TypeError('volumes must be an array of volumes')
  for (const [place, volume] of volumes.entries()) {
    requireAmount(`volumes[${place}]`, volume, 'volume', { figure: true })
  }
  const entries = Object.entries(pans)
  for (const [id, pan] of entries) {
    requireObject(`pans.${id}`, pan)
    requireAmount(`pans.${id}.size`, pan.size, 'volume')
  }
  const { parts, perMillilitre } = wholeParts([...volumes, ...entries.map(([, pan]) => pan.size)])
  const drained = parts.slice(0, volumes.length)
  const sum = drained.reduce((whole, part) => whole + part, 0n)
  let largest = 0n
  for (const part of drained) if (part > largest) largest = part
  const amount = (whole: bigint, unit: VolumeUnit) => volumeIn({ n: whole, d: perMillilitre }, unit)
  const total = volumeIn({ n: sum, d: perMillilitre }, 'mL')
  const bySize = entries
    .map(([id, pan], place) => ({ id, pan, size: parts[volumes.length + place] ?? 0n }))
    .sort((first, second) => (first.size < second.size ? -1 : first.size > second.size ? 1 : 0))
  const whole = bySize.find(({ size }) => size >= sum)
  if (whole !== undefined) {
    const { id, pan, size } = whole
    const nearly = sum * 100n > size * BigInt(NEARLY_FULL)
    const percent = size === 0n ? 0 : Number((sum * 100n) / size)
    return {
      verdict: 'large enough',
      pan: id,
      total,
      reasons: [
        fillReason('fill/pan-large-enough', {
          pan: pan.name,
          total: amount(sum, pan.size.unit),
          size: pan.size,
        }),
        ...(nearly ? [fillReason('fill/pan-nearly-full', { pan: pan.name, percent })] : []),
      ],
    }
  }
  const one = bySize.find(({ size }) => size >= largest)
  if (one !== undefined) {
    const { name, size } = one.pan
    const params = { pan: name, total: amount(sum, size.unit), size }
    return {
      verdict: 'empty between',
      pan: one.id,
      total,
      reasons: [fillReason('fill/pan-empty-between', params)],
    }
  }
  const biggest = bySize.at(-1)
  const reason =
    biggest === undefined
      ? fillReason('fill/no-pan', {})
      : fillReason('fill/pan-too-small', {
          largest: amount(largest, biggest.pan.size.unit),
          size: biggest.pan.size,
        })
  return { verdict: 'too small', total, reasons: [reason] }
}
