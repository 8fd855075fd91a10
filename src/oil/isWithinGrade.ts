import { requireObject } from '../base/index.js'
import { type Quantity, requireQuantity } from '../quantity/index.js'
import type { GradeBand } from './findGradeBand.js'

/**
 * Whether a kinematic viscosity at `band.at` is in a grade's band: min ≤ ν < below (SAE), min ≤ ν ≤ max (ISO).
 * Source: SAE J306 ("< 18.5") and ISO 3448 (midpoint ±10 %), from secondary sources.
 */
export function isWithinGrade(viscosity: Quantity<'mm2/s'>, band: GradeBand): boolean {
  requireQuantity('viscosity', viscosity, 'kinematicViscosity', { above: 0, max: Number.MAX_VALUE })
  requireObject('band', band)
  for (const key of ['min', 'below', 'max'] as const)
    if (key === 'min' || band[key] !== undefined)
      requireQuantity(`band.${key}`, band[key], 'kinematicViscosity')
  const { value } = viscosity
  if (value < band.min.value) return false
  if (band.below !== undefined && value >= band.below.value) return false
  return band.max === undefined || value <= band.max.value
}
