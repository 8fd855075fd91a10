import { type NumberRange, quoteValue, requireNumber, requireObject } from '../base/index.js'
import { isFigure } from './isFigure.js'
import { type Measure, UNITS_BY_MEASURE } from './unit.js'

/** Throws for a unit that is none of the measure. */
export function requireUnitOf(measure: Measure, name: string, unit: unknown): void {
  const units: readonly unknown[] = UNITS_BY_MEASURE[measure]
  if (!units.includes(unit))
    throw new TypeError(`${name} must be a unit of ${measure}, got ${quoteValue(unit)}`)
}

/** Throws for what is no quantity of the measure, or outside the range. A printed figure counts where `figure` says so. */
export function requireQuantity(
  name: string,
  quantity: unknown,
  measure: Measure,
  { figure, ...range }: NumberRange & { readonly figure?: true },
): void {
  requireObject(name, quantity)
  const { value, unit } = quantity as { value?: unknown; unit?: unknown }
  requireUnitOf(measure, `${name}.unit`, unit)
  const place = `${name}.value`
  if (figure !== true || typeof value !== 'string') requireNumber(place, value, range)
  else if (isFigure(value)) requireNumber(place, Number(value), range)
  else throw new TypeError(`${place} must be a number or a printed figure, got ${quoteValue(value)}`)
}
