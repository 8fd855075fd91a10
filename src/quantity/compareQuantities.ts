import { quoteValue, requireObject } from '../base/index.js'
import { compareExact, type Exact, exactOf } from './exact.js'
import { requireFigure } from './figure.js'
import { convertExact } from './findUnitPair.js'
import type { Figure, PrintedQuantity, Quantity } from './unit.js'

/**
 * Compares two quantities exactly, in any units of one measure, so that rounding never decides at a limit. A
 * number means its shortest decimal: 0.1 is a tenth, as a number and as a figure. Source: limits are compared
 * unrounded, the absolute method of ASTM E29.
 */
export function compareQuantities(
  first: Quantity | PrintedQuantity,
  second: Quantity | PrintedQuantity,
): -1 | 0 | 1 {
  requireObject('first', first)
  requireObject('second', second)
  return compareExact(
    convertExact(requireExact('first.value', first.value), first.unit, second.unit),
    requireExact('second.value', second.value),
  )
}

function requireExact(name: string, value: unknown): Exact {
  if (typeof value === 'string') return requireFigure(value, name)
  if (typeof value !== 'number')
    throw new TypeError(`${name} must be a number or a figure, got ${quoteValue(value)}`)
  if (!Number.isFinite(value)) throw new RangeError(`${name} must be finite, got ${value}`)
  return exactOf(value)
}

/** Compares two figures of the same unit by their decimal values; for different units use {@link compareQuantities}. */
export function compareFigures(first: Figure, second: Figure): -1 | 0 | 1 {
  return compareExact(requireFigure(first, 'first'), requireFigure(second, 'second'))
}
