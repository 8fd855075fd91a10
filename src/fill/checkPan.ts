import { requireObject } from '../base/index.js'
import { exactIn } from '../quantity/index.js'
import type { DrainPan, Id } from '../spec/index.js'
import { judgePan, type PanVerdict } from './judgePan.js'
import { requireAmount, type VolumeAmount } from './volumeAmount.js'

/**
 * Checks whether a drain pan can hold all the oil of a visit, so that it does not overflow at the second
 * gearcase.
 *
 * It chooses the smallest pan for the total (a pan of exactly the total is enough). If no pan is large
 * enough, it chooses the smallest pan for the largest single drain, to be emptied in between.
 *
 * @param pans - by id
 * @param volumes - every volume to be drained at this visit, 0 or more; printed figures or numbers
 * @returns the pan, the total in mL and the reasons; sums are exact; a number means its shortest decimal
 * @throws TypeError or RangeError if an argument has the wrong shape or a size is negative
 *
 * Source: common practice, no source. Nearly full above 90 %: house rule.
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
  if (!Array.isArray(volumes)) throw new TypeError('volumes must be a list of volumes')
  for (const [index, volume] of volumes.entries())
    requireAmount(`volumes[${index}]`, volume, 'volume', { figure: true })
  for (const [id, pan] of Object.entries(pans)) {
    requireObject(`pans.${id}`, pan)
    requireAmount(`pans.${id}.size`, pan.size, 'volume')
  }
  return judgePan(
    pans,
    volumes.map((volume) => exactIn(volume, 'mL')),
  )
}
