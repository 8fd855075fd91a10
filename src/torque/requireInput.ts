import { requireKnownKeys, shown } from '../base/index.js'
import { isFigure, type Measure, measureOf, type Quantity, type Unit } from '../quantity/index.js'
import type { StatedValue, Tightening, TorqueWrench } from '../spec/index.js'
import type { WrenchOptions } from './wrenchVerdict.js'

/* Throws for what a programmer may not pass to this room. */

/** Throws unless `value` is a number from `from` up to 1e9; `open` leaves `from` itself out. */
export function requireNumber(name: string, value: unknown, from: number, open: boolean): void {
  if (typeof value !== 'number') throw new TypeError(`${name} must be a number, got ${shown(value)}`)
  if (!(open ? value > from : value >= from) || value > 1e9)
    throw new RangeError(
      `${name} must be ${open ? 'above' : 'at least'} ${from} and at most 1e9, got ${value}`,
    )
}

/** As the floor's, and no list either. */
export function requireObject(name: string, value: unknown): void {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new TypeError(`${name} must be an object, got ${shown(value)}`)
}

export function requireDesignation(name: string, value: unknown): void {
  if (typeof value !== 'string')
    throw new TypeError(`${name} must be a designation such as '1/2 in', got ${shown(value)}`)
}

function requireUnit(name: string, unit: unknown, measure: Measure): void {
  if (measureOf(unit as Unit) !== measure)
    throw new TypeError(`${name} must be a unit of ${measure}, got ${shown(unit)}`)
}

export function requireQuantity(
  name: string,
  quantity: Quantity,
  measure: Measure,
  from: number,
  open: boolean,
): void {
  requireObject(name, quantity)
  requireUnit(`${name}.unit`, quantity.unit, measure)
  requireNumber(`${name}.value`, quantity.value, from, open)
}

export function requireFigure(name: string, figure: unknown): void {
  if (!isFigure(figure))
    throw new TypeError(`${name} must be a printed figure such as '12.5', got ${shown(figure)}`)
}

export function requireStatedValue(name: string, stated: StatedValue, measure: Measure): void {
  requireObject(name, stated)
  requireUnit(`${name}.unit`, stated.unit, measure)
  if (stated.kind === 'limits') {
    if (stated.min === undefined && stated.max === undefined)
      throw new TypeError(`${name} must state at least one of min and max`)
    if (stated.min !== undefined) requireFigure(`${name}.min`, stated.min)
    if (stated.max !== undefined) requireFigure(`${name}.max`, stated.max)
    return
  }
  if (stated.kind !== 'nominal' && stated.kind !== 'nominal with tolerance')
    throw new TypeError(
      `${name}.kind must be 'nominal', 'nominal with tolerance' or 'limits', got ${shown((stated as { kind: unknown }).kind)}`,
    )
  requireFigure(`${name}.value`, stated.value)
  if (stated.kind === 'nominal') return
  requireFigure(`${name}.minus`, stated.minus)
  requireFigure(`${name}.plus`, stated.plus)
}

export function requireWrench(name: string, wrench: TorqueWrench): void {
  requireObject(name, wrench)
  if (!['click', 'dial', 'beam', 'electronic'].includes(wrench.type))
    throw new TypeError(`${name}.type must be click, dial, beam or electronic, got ${shown(wrench.type)}`)
  if (!Array.isArray(wrench.scales) || wrench.scales.length === 0)
    throw new TypeError(`${name}.scales must list at least one scale, got ${shown(wrench.scales)}`)
  for (const [at, scale] of wrench.scales.entries()) {
    const place = `${name}.scales[${at}]`
    requireObject(place, scale)
    requireUnit(`${place}.unit`, scale.unit, 'torque')
    requireNumber(`${place}.lowest`, scale.lowest, 0, false)
    requireNumber(`${place}.graduation`, scale.graduation, 0, true)
    requireNumber(`${place}.highest`, scale.highest, 0, true)
    if (scale.highest < scale.lowest)
      throw new RangeError(
        `${place}.highest must be at least ${scale.lowest}, its lowest, got ${scale.highest}`,
      )
  }
  if (wrench.declaredRange !== undefined) {
    requireQuantity(`${name}.declaredRange.min`, wrench.declaredRange.min, 'torque', 0, false)
    requireQuantity(`${name}.declaredRange.max`, wrench.declaredRange.max, 'torque', 0, true)
  }
  requireObject(`${name}.accuracy`, wrench.accuracy)
  const { accuracy } = wrench
  if (accuracy.kind === 'ISO 6789') return
  if (accuracy.kind !== 'of reading' && accuracy.kind !== 'of full scale')
    throw new TypeError(
      `${name}.accuracy.kind must be 'ISO 6789', 'of reading' or 'of full scale', got ${shown((accuracy as { kind: unknown }).kind)}`,
    )
  requireNumber(`${name}.accuracy.percent`, accuracy.percent, 0, true)
  if (accuracy.percent >= 100)
    throw new RangeError(`${name}.accuracy.percent must be below 100, got ${accuracy.percent}`)
}

/** Throws for anything but a tightening of a sheet. */
export function requireTightening(name: string, tightening: Tightening): void {
  requireObject(name, tightening)
  if (tightening.kind === 'not stated') return
  if (tightening.kind === 'turns') {
    requireFigure(`${name}.min`, tightening.min)
    if (tightening.max !== undefined) requireFigure(`${name}.max`, tightening.max)
    return
  }
  if (tightening.kind !== 'torque')
    throw new TypeError(
      `${name}.kind must be 'torque', 'turns' or 'not stated', got ${shown((tightening as { kind: unknown }).kind)}`,
    )
  requireStatedValue(`${name}.torque`, tightening.torque, 'torque')
  for (const [at, stage] of (tightening.stages ?? []).entries())
    requireStatedValue(`${name}.stages[${at}]`, stage, 'torque')
}

/** Throws for anything but options of {@link checkWrench}. */
export function requireWrenchOptions(options: WrenchOptions, more: 'adaptor' | 'adaptors' = 'adaptor'): void {
  requireObject('options', options)
  requireKnownKeys('options', options, ['iso6789', 'tolerancePercent', more])
  if (options.iso6789 !== '2017' && options.iso6789 !== '2003')
    throw new TypeError(`options.iso6789 must be '2017' or '2003', got ${shown(options.iso6789)}`)
  if (options.tolerancePercent !== undefined) {
    requireNumber('options.tolerancePercent', options.tolerancePercent, 0, true)
    if (options.tolerancePercent >= 100)
      throw new RangeError(`options.tolerancePercent must be below 100, got ${options.tolerancePercent}`)
  }
  if (options.adaptor === undefined) return
  requireObject('options.adaptor', options.adaptor)
  const { kind, extension, angle } = options.adaptor
  if (kind !== undefined && !['crowfoot', 'straight extension', 'drive adaptor'].includes(kind))
    throw new TypeError(
      `options.adaptor.kind must be crowfoot, straight extension or drive adaptor, got ${shown(kind)}`,
    )
  if (extension !== undefined) requireQuantity('options.adaptor.extension', extension, 'length', 0, false)
  if (angle === undefined) return
  requireQuantity('options.adaptor.angle', angle, 'angle', 0, false)
  if (angle.value > 180)
    throw new RangeError(`options.adaptor.angle.value must be 0 to 180, got ${angle.value}`)
}
