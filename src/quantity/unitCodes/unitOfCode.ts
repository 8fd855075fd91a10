import { quoteValue } from '../../base/index.js'
import type { Unit } from '../unit.js'
import { UNIT_CODES } from './unitCodeTable.js'

/** A system of unit codes. */
export type CodeSystem = 'UCUM' | 'UN/ECE Rec 20' | 'QUDT'

const FIELDS = { UCUM: 'ucum', 'UN/ECE Rec 20': 'rec20', QUDT: 'qudt' } as const

/**
 * Finds the unit of another system's code, for figures received from that system. To read units as people write them,
 * use `parseQuantity`.
 *
 * @param system - the system of the code
 * @param code - the code, matched exactly, including case
 * @returns the unit, or `null` if no unit has this code; a temperature code never means a difference
 * @throws TypeError for an unknown system or a code that is not a string
 *
 * Source: as {@link UNIT_CODES}.
 *
 * @example
 * ```ts
 * import { unitOfCode } from 'drivetrain-service/v1/quantity/codes'
 * // Which unit is `KMT` in a machine's telematics record?
 * unitOfCode('UN/ECE Rec 20', 'KMT') // => 'km'
 * ```
 */
export function unitOfCode(system: CodeSystem, code: string): Unit | null {
  if (typeof system !== 'string' || !Object.hasOwn(FIELDS, system))
    throw new TypeError(`system must be 'UCUM', 'UN/ECE Rec 20' or 'QUDT', got ${quoteValue(system)}`)
  if (typeof code !== 'string') throw new TypeError(`code must be a string, got ${quoteValue(code)}`)
  const field = FIELDS[system]
  for (const [unit, codes] of Object.entries(UNIT_CODES)) if (codes[field] === code) return unit as Unit
  return null
}
