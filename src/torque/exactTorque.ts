import {
  type Exact,
  type Figure,
  nearestDouble,
  over,
  type Quantity,
  type TorqueUnit,
  times,
  UNIT_FACTORS,
} from '../quantity/index.js'
import { exactOf } from './exact.js'

/** How many N·m one of `unit` is. Internal. */
export function newtonMetresIn(unit: TorqueUnit): Exact {
  return exactOf(UNIT_FACTORS[unit].factor)
}

/** The torque in N·m, exactly. Internal. */
export function exactNewtonMetres(value: number | Figure, unit: TorqueUnit): Exact {
  return times(exactOf(value), newtonMetresIn(unit))
}

/** The double nearest to an exact torque in N·m, told in `unit`. Internal. */
export function torqueIn(newtonMetres: Exact, unit: TorqueUnit): Quantity<TorqueUnit> {
  return { value: nearestDouble(over(newtonMetres, newtonMetresIn(unit))), unit }
}
