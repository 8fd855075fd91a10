import { shown } from '../../base/index.js'
import { isUnit } from '../isUnit.js'
import type { Unit } from '../unit.js'
import { UNIT_CODES, type UnitCodes } from './unitCodeTable.js'

/**
 * The codes of a unit in other systems, for figures sent to stock, telematics or purchasing. The
 * symbol for people is `unitSymbol`.
 *
 * @param unit - a unit id
 * @returns name, source of the exact factor, and the UCUM, UN/ECE Rec 20 and QUDT codes as far as they exist
 * @throws TypeError when `unit` is no unit id
 *
 * Source: UCUM 2.2 (2024); UN/ECE Recommendation 20, revision 17 (2021), annex I; QUDT unit vocabulary.
 *
 * @example
 * ```ts
 * import { unitCodes } from 'drivetrain-service/v1/quantity/codes'
 * // Under which code does a parts system take US quarts?
 * unitCodes('qt_us').rec20 // => 'QTL'
 * ```
 */
export function unitCodes(unit: Unit): UnitCodes {
  if (!isUnit(unit)) throw new TypeError(`unit must be a unit id such as 'N.m', got ${shown(unit)}`)
  return UNIT_CODES[unit]
}
