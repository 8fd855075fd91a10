import * as z from 'zod/mini'
import { ABSOLUTE_ZERO, LARGEST_NUMBER } from '../../base/index.js'
import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { buildOnce } from './buildOnce.js'
import { amount } from './numberShapes.js'
import { partRegistry } from './textShapes.js'

/** Measured quantities of logs, toolboxes, stocks and records: a JSON number with its unit. */
export const quantityShapes = /* @__PURE__ */ buildOnce(() => {
  const parts = partRegistry()
  const quantity = <const Units extends readonly string[]>(
    name: string,
    units: Units,
    value: z.ZodMiniNumber = amount(),
  ) => z.strictObject({ value, unit: z.enum(units) }).register(parts, { id: `quantity-${name}` })
  return {
    volume: quantity('volume', UNITS_BY_MEASURE.volume),
    torque: quantity('torque', UNITS_BY_MEASURE.torque),
    length: quantity('length', UNITS_BY_MEASURE.length),
    mass: quantity('mass', UNITS_BY_MEASURE.mass),
    distance: quantity('distance', UNITS_BY_MEASURE.distance),
    hours: quantity('hours', ['h']),
    kinematicViscosity: quantity('kinematic-viscosity', ['mm2/s']),
    density: quantity('density', ['kg/m3']),
    celsius: quantity(
      'celsius',
      ['degC'],
      z.number().check(z.minimum(ABSOLUTE_ZERO), z.maximum(LARGEST_NUMBER)),
    ),
  }
})
