import {
  type Exact,
  exactOf,
  nearestQuantity,
  type Quantity,
  type TorqueUnit,
  UNIT_FACTORS,
} from '../quantity/index.js'

/** How many N·m one of `unit` is. */
export function newtonMetresIn(unit: TorqueUnit): Exact {
  return exactOf(UNIT_FACTORS[unit])
}

/** An exact torque in N·m as a quantity in `unit`. */
export function torqueIn(newtonMetres: Exact, unit: TorqueUnit): Quantity<TorqueUnit> {
  return nearestQuantity(newtonMetres, 'N.m', unit)
}
