import { shown } from '../base/index.js'
import { isFigure, type Measure, measureOf, type Quantity, type Unit } from '../quantity/index.js'
import type { StatedValue, TorqueWrench } from '../spec/index.js'

/* What a programmer may not pass to this room. Internal. */

/** Throws unless `value` is a number from `from` up to 1e9; `open` leaves `from` itself out. */
export function checkNumber(name: string, value: unknown, from: number, open: boolean): void {
  if (typeof value !== 'number') throw new TypeError(`${name} must be a number, got ${shown(value)}`)
  if (!(open ? value > from : value >= from) || value > 1e9)
    throw new RangeError(
      `${name} must be ${open ? 'above' : 'at least'} ${from} and at most 1e9, got ${value}`,
    )
}

export function checkObject(name: string, value: unknown): void {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new TypeError(`${name} must be an object, got ${shown(value)}`)
}

export function checkDesignation(name: string, value: unknown): void {
  if (typeof value !== 'string')
    throw new TypeError(`${name} must be a designation such as '1/2 in', got ${shown(value)}`)
}

function checkUnit(name: string, unit: unknown, measure: Measure): void {
  if (measureOf(unit as Unit) !== measure)
    throw new TypeError(`${name} must be a unit of ${measure}, got ${shown(unit)}`)
}

export function checkQuantity(
  name: string,
  quantity: Quantity,
  measure: Measure,
  from: number,
  open: boolean,
): void {
  checkObject(name, quantity)
  checkUnit(`${name}.unit`, quantity.unit, measure)
  checkNumber(`${name}.value`, quantity.value, from, open)
}

export function checkFigure(name: string, figure: unknown): void {
  if (!isFigure(figure))
    throw new TypeError(`${name} must be a printed figure such as '12.5', got ${shown(figure)}`)
}

export function checkStatedValue(name: string, stated: StatedValue, measure: Measure): void {
  checkObject(name, stated)
  checkUnit(`${name}.unit`, stated.unit, measure)
  if (stated.kind === 'limits') {
    if (stated.min === undefined && stated.max === undefined)
      throw new TypeError(`${name} must state at least one of min and max`)
    if (stated.min !== undefined) checkFigure(`${name}.min`, stated.min)
    if (stated.max !== undefined) checkFigure(`${name}.max`, stated.max)
    return
  }
  if (stated.kind !== 'nominal' && stated.kind !== 'nominal with tolerance')
    throw new TypeError(
      `${name}.kind must be 'nominal', 'nominal with tolerance' or 'limits', got ${shown((stated as { kind: unknown }).kind)}`,
    )
  checkFigure(`${name}.value`, stated.value)
  if (stated.kind === 'nominal') return
  checkFigure(`${name}.minus`, stated.minus)
  checkFigure(`${name}.plus`, stated.plus)
}

export function checkTorqueWrench(name: string, wrench: TorqueWrench): void {
  checkObject(name, wrench)
  if (!['click', 'dial', 'beam', 'electronic'].includes(wrench.type))
    throw new TypeError(`${name}.type must be click, dial, beam or electronic, got ${shown(wrench.type)}`)
  if (!Array.isArray(wrench.scales) || wrench.scales.length === 0)
    throw new TypeError(`${name}.scales must list at least one scale, got ${shown(wrench.scales)}`)
  for (const [at, scale] of wrench.scales.entries()) {
    const place = `${name}.scales[${at}]`
    checkObject(place, scale)
    checkUnit(`${place}.unit`, scale.unit, 'torque')
    checkNumber(`${place}.lowest`, scale.lowest, 0, false)
    checkNumber(`${place}.graduation`, scale.graduation, 0, true)
    checkNumber(`${place}.highest`, scale.highest, 0, true)
    if (scale.highest < scale.lowest)
      throw new RangeError(
        `${place}.highest must be at least ${scale.lowest}, its lowest, got ${scale.highest}`,
      )
  }
  if (wrench.declaredRange !== undefined) {
    checkQuantity(`${name}.declaredRange.min`, wrench.declaredRange.min, 'torque', 0, false)
    checkQuantity(`${name}.declaredRange.max`, wrench.declaredRange.max, 'torque', 0, true)
  }
  checkObject(`${name}.accuracy`, wrench.accuracy)
  const { accuracy } = wrench
  if (accuracy.kind === 'ISO 6789') return
  if (accuracy.kind !== 'of reading' && accuracy.kind !== 'of full scale')
    throw new TypeError(
      `${name}.accuracy.kind must be 'ISO 6789', 'of reading' or 'of full scale', got ${shown((accuracy as { kind: unknown }).kind)}`,
    )
  checkNumber(`${name}.accuracy.percent`, accuracy.percent, 0, true)
  if (accuracy.percent >= 100)
    throw new RangeError(`${name}.accuracy.percent must be below 100, got ${accuracy.percent}`)
}
