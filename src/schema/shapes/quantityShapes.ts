import { ABSOLUTE_ZERO } from '../../base/index.js'
import { UNITS_BY_MEASURE } from '../../quantity/index.js'
import { buildOnce, numberFrom, oneOf, wholeNumber } from './makeShape.js'
import { namedObject, textShapes } from './textShapes.js'

/** Measured quantities of logs, toolboxes, stocks and records: a JSON number with its unit. */
export const quantityShapes = /* @__PURE__ */ buildOnce(() => {
  const quantity = <const Units extends readonly string[]>(
    name: string,
    units: Units,
    value = numberFrom(),
  ) => namedObject(`quantity-${name}`, { value, unit: oneOf<Units[number]>(units) })
  return {
    volume: quantity('volume', UNITS_BY_MEASURE.volume),
    torque: quantity('torque', UNITS_BY_MEASURE.torque),
    length: quantity('length', UNITS_BY_MEASURE.length),
    mass: quantity('mass', UNITS_BY_MEASURE.mass),
    distance: quantity('distance', UNITS_BY_MEASURE.distance),
    hours: quantity('hours', ['h']),
    workingTime: quantity('working-time', ['min', 'h']),
    kinematicViscosity: quantity('kinematic-viscosity', ['mm2/s']),
    density: quantity('density', ['kg/m3']),
    celsius: quantity('celsius', ['degC'], numberFrom(ABSOLUTE_ZERO)),
  }
})

/** The sheet of a log, a procedure or a record. */
export const sheetReferenceShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  return namedObject('sheet-reference', { id: text.id, revision: text.text })
})

/** The known facts of one machine. */
export const identityShape = /* @__PURE__ */ buildOnce(() => {
  const text = textShapes()
  return namedObject('identity', {
    'variant?': text.id,
    'modelYear?': wholeNumber(),
    'serial?': text.text,
    'market?': text.text,
  })
})
