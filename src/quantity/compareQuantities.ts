import { requireObject, shown } from '../base/index.js'
import { compareExact, type Exact, exactOf } from './exact.js'
import { figureOf } from './figureOf.js'
import type { PrintedQuantity, Quantity } from './unit.js'
import { exactlyIn } from './unitPair.js'

/**
 * Which of two quantities is larger, exactly, in whatever units each is stated: for limits, where a rounding in the
 * last digit would decide. A number means its shortest decimal, a figure its decimal value: 0.1 is a tenth either way.
 *
 * @param first - a quantity with a finite number, or a printed one
 * @param second - another of the same measure
 * @returns −1 when `first` is smaller, 0 when they are equal, 1 when it is larger
 * @throws TypeError for a value that is neither number nor figure, an unknown unit, or two measures
 * @throws RangeError for NaN and infinities
 *
 * Source: house rule, limits are compared unrounded (the absolute method of ASTM E29).
 *
 * @example
 * ```ts
 * import { compareQuantities } from 'drivetrain-service/v1/quantity'
 * // Is 1 lbf·ft more than 12 lbf·in?
 * compareQuantities({ value: '1', unit: 'lbf.ft' }, { value: 12, unit: 'lbf.in' }) // => 0
 * ```
 */
export function compareQuantities(
  first: Quantity | PrintedQuantity,
  second: Quantity | PrintedQuantity,
): -1 | 0 | 1 {
  requireObject('first', first)
  requireObject('second', second)
  return compareExact(
    exactlyIn(requireExact('first.value', first.value), first.unit, second.unit),
    requireExact('second.value', second.value),
  )
}

function requireExact(name: string, value: unknown): Exact {
  if (typeof value === 'string') return figureOf(value, name)
  if (typeof value !== 'number')
    throw new TypeError(`${name} must be a number or a figure, got ${shown(value)}`)
  if (!Number.isFinite(value)) throw new RangeError(`${name} must be finite, got ${value}`)
  return exactOf(value)
}
