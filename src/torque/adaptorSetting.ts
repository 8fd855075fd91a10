import { requireKnownKeys } from '../base/index.js'
import type { LengthUnit, Quantity, TorqueUnit } from '../quantity/index.js'
import {
  ANGLE_FACTORS,
  exactOf,
  findNearestDouble,
  LENGTH_FACTORS,
  multiply,
  requireQuantityOf,
  TORQUE_FACTORS,
} from '../quantity/index.js'
import { calculateAdaptorRatio } from './calculateAdaptorRatio.js'

export interface AdaptorInput {
  readonly torque: Quantity<TorqueUnit>
  readonly leverLength: Quantity<LengthUnit>
  readonly extension: Quantity<LengthUnit>
  readonly angle?: Quantity<'deg'>
}

export interface AdaptorSetting {
  /** The setting of the wrench, in the unit of `torque`. */
  readonly setting: Quantity<TorqueUnit>
  /** L ÷ (L + E·cos θ): the reading of the wrench for each unit of torque at the fastener. */
  readonly ratio: number
}

/**
 * Calculates the setting of a torque wrench with a crowfoot or another offset adaptor. Do not use it for straight
 * extensions between square drive and socket: they do not change the setting. To get a mark of the wrench's scale, pass
 * the adaptor to {@link checkWrench}.
 *
 * setting = torque × L ÷ (L + E·cos θ), with lever length L, extension E and the adaptor's angle θ.
 *
 * @param input - `torque` required at the fastener (above 0); `leverLength` from the centre of the square
 *   drive to the hand (above 0); `extension` from the centre of the square drive to the centre of the
 *   fastener (0 or more); `angle` from straight ahead, 0 (the default) to 180, where 180 points back to the
 *   hand. Lengths may have different units. A number means its shortest decimal
 * @returns the setting, as the double nearest to the exact value; exactly `torque` at 90°
 * @throws RangeError if L + E·cos θ is 0 or less (the adaptor reaches back to the hand or past it), or a value is
 *   out of its range; TypeError for a wrong type or unit
 *
 * Source: US Navy aviation training manual (NAVEDTRA 14315 family), figs 3-44 and 3-45. US Army TM 1-1500-204-23-9, fig
 * 8-16. Angled adaptors US Army TM 9-254, fig 4-6. Some web pages correct only at 90° and not in line. That is wrong:
 * the reverse is true.
 *
 * @example
 * ```ts
 * import { adaptorSetting } from 'drivetrain-service/v1/torque'
 * // What setting gives 30 lbf·ft through a 6 in crowfoot on a 12 in wrench?
 * adaptorSetting({
 *   torque: { value: 30, unit: 'lbf.ft' },
 *   leverLength: { value: 12, unit: 'in' },
 *   extension: { value: 6, unit: 'in' },
 * }).setting.value // => 20
 * ```
 */
export function adaptorSetting(input: AdaptorInput): AdaptorSetting {
  requireKnownKeys('input', input, ['torque', 'leverLength', 'extension', 'angle'])
  const { torque, leverLength, extension, angle } = input
  requireQuantityOf(TORQUE_FACTORS, 'torque', torque, { above: 0 })
  requireQuantityOf(LENGTH_FACTORS, 'leverLength', leverLength, { above: 0 })
  requireQuantityOf(LENGTH_FACTORS, 'extension', extension, { min: 0 })
  if (angle !== undefined) requireQuantityOf(ANGLE_FACTORS, 'angle', angle, { min: 0, max: 180 })
  const ratio = calculateAdaptorRatio(leverLength, extension, angle?.value ?? 0)
  if (ratio === undefined)
    throw new RangeError(
      `leverLength + extension × cos(angle) must be above 0, got ${leverLength.value} ${leverLength.unit} and ${extension.value} ${extension.unit} at ${angle?.value ?? 0}°`,
    )
  return {
    setting: { value: findNearestDouble(multiply(exactOf(torque.value), ratio)), unit: torque.unit },
    ratio: findNearestDouble(ratio),
  }
}
