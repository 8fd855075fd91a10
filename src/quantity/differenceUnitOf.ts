import type { Unit } from './unit.js'

/**
 * The unit of a difference between two values: a difference of 1 °C is one of 1.8 °F, although the zeros of
 * the scales differ.
 */
export function differenceUnitOf(unit: Unit): Unit {
  if (unit === 'degC') return 'degC_diff'
  if (unit === 'degF') return 'degF_diff'
  return unit === 'K' ? 'K_diff' : unit
}
