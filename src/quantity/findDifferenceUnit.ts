import type { Unit } from './unit.js'

/** The unit of a difference between two values: 1 °C of difference is 1.8 °F of difference. */
export function findDifferenceUnit(unit: Unit): Unit {
  if (unit === 'degC') return 'degC_diff'
  if (unit === 'degF') return 'degF_diff'
  return unit === 'K' ? 'K_diff' : unit
}
