import type { Exact, Quantity, TorqueUnit } from '../quantity/index.js'
import { divide, exactOf, findNearestDouble, multiply, TORQUE_FACTORS } from '../quantity/index.js'

/** One unit of `from` in `to`. */
export function findTorqueRatio(from: TorqueUnit, to: TorqueUnit): Exact {
  return divide(exactOf(TORQUE_FACTORS.torque[from]), exactOf(TORQUE_FACTORS.torque[to]))
}

/** A torque as an exact number in another unit. */
export function exactTorque({ value, unit }: Quantity<TorqueUnit>, to: TorqueUnit): Exact {
  return multiply(exactOf(value), findTorqueRatio(unit, to))
}

/** Converts an exact torque to a quantity. This is the only rounding. */
export function findNearestTorque(value: Exact, unit: TorqueUnit): Quantity<TorqueUnit> {
  return { value: findNearestDouble(value), unit }
}
