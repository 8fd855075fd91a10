import type { Unit } from './unit.js'

/** The unit that a difference is counted in: a step of 1 °C is one of 1.8 °F, wherever the scales begin. */
export function asDifference(unit: Unit): Unit {
  if (unit === 'degC') return 'degC_diff'
  if (unit === 'degF') return 'degF_diff'
  return unit === 'K' ? 'K_diff' : unit
}
