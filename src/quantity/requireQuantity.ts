import { type NumberRange, quoteValue, requireNumber, requireObject, requireOneOf } from '../base/index.js'
import { isFigure, requireFigure } from './figure.js'
import type { Measure, PrintedBand } from './unit.js'
import { FACTORS_BY_MEASURE } from './unitFactors.js'

/** A measure with its units, for callers that avoid loading all measures. */
type MeasureUnits = { readonly [M in Measure]?: { readonly [unit: string]: string } }

/** Throws TypeError if the unit is not one of the measure. */
export function requireUnitOf(measure: MeasureUnits, name: string, unit: unknown): void {
  if (typeof unit !== 'string' || !Object.values(measure).some((units) => Object.hasOwn(units, unit)))
    throw new TypeError(`${name} must be a unit of ${Object.keys(measure)}, got ${quoteValue(unit)}`)
}

type QuantityRange = NumberRange & { readonly figure?: true }

/**
 * Throws if the argument is not a quantity of the measure or is outside the range. `figure`: a printed figure
 * is allowed too.
 */
export function requireQuantityOf(
  measure: MeasureUnits,
  name: string,
  quantity: unknown,
  { figure, ...range }: QuantityRange,
): void {
  requireObject(name, quantity)
  const { value, unit } = quantity as { value?: unknown; unit?: unknown }
  requireUnitOf(measure, `${name}.unit`, unit)
  const valueName = `${name}.value`
  if (figure !== true || typeof value !== 'string') requireNumber(valueName, value, range)
  else if (isFigure(value)) requireNumber(valueName, Number(value), range)
  else throw new TypeError(`${valueName} must be a number or a printed figure, got ${quoteValue(value)}`)
}

/** {@link requireQuantityOf} for any measure; without a range, any finite number. */
export function requireQuantity(
  name: string,
  quantity: unknown,
  measure: Measure,
  range: QuantityRange = { max: Number.MAX_VALUE },
): void {
  requireQuantityOf({ [measure]: FACTORS_BY_MEASURE[measure] }, name, quantity, range)
}

const FIGURE_KEYS = {
  nominal: ['value'],
  'nominal with tolerance': ['value', 'minus', 'plus'],
  limits: ['min', 'max'],
} as const

/**
 * Throws TypeError if the argument is not a printed value. If a measure is given, the unit must belong to it, and no figure
 * may be below zero.
 */
export function requireBand(
  name: string,
  value: unknown,
  measure?: MeasureUnits,
): asserts value is PrintedBand {
  requireObject(name, value)
  const band = value as { readonly [key: string]: unknown; readonly kind: PrintedBand['kind'] }
  if (measure !== undefined) requireUnitOf(measure, `${name}.unit`, band['unit'])
  requireOneOf(`${name}.kind`, band.kind, Object.keys(FIGURE_KEYS))
  const keys = FIGURE_KEYS[band.kind].filter((key) => band.kind !== 'limits' || band[key] !== undefined)
  if (keys.length === 0) throw new TypeError(`${name} of kind limits must have min or max`)
  for (const key of keys) requireFigure(band[key], `${name}.${key}`, measure === undefined)
}
