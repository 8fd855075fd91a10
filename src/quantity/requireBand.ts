import { requireObject, requireOneOf } from '../base/index.js'
import type { PrintedBand } from './printed.js'
import { requireFigure } from './requireFigure.js'
import { type MeasureUnits, requireUnitOf } from './requireQuantity.js'

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
