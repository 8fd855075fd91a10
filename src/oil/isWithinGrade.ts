import { requireObject } from '../base/index.js'
import type { Quantity } from '../quantity/index.js'
import type { GradeBand } from './gradeBand.js'
import { requireQuantity } from './requireQuantity.js'

/**
 * Whether a kinematic viscosity lies in a grade's band. It must have been measured at the band's own temperature
 * (`band.at`); for another temperature ask {@link viscosityAt} first. A viscosity says nothing about cold flow, shear
 * or additives: to choose an oil use {@link oilMeets}.
 *
 * min ≤ ν < below (SAE), min ≤ ν ≤ max (ISO).
 *
 * @param viscosity - kinematic viscosity at `band.at`, above 0
 * @param band - from {@link gradeBand}
 * @returns true inside the band; SAE maxima do not belong to it, ISO maxima do
 * @throws TypeError or RangeError when `viscosity` is no positive quantity in mm²/s
 *
 * Source: SAE J306 ("< 18.5"), ISO 3448 (midpoint ±10 %), read second hand.
 *
 * @example
 * ```ts
 * import { gradeBand, isWithinGrade } from 'drivetrain-service/v1/oil'
 * // Is an oil of 18.5 mm²/s at 100 °C still a SAE 90?
 * const band = gradeBand({ system: 'SAE J306', grade: '90', edition: '2019' })
 * band.kind === 'band' && isWithinGrade({ value: 18.5, unit: 'mm2/s' }, band) // => false
 * ```
 */
export function isWithinGrade(viscosity: Quantity<'mm2/s'>, band: GradeBand): boolean {
  requireQuantity('viscosity', viscosity, 'kinematicViscosity', 0)
  requireObject('band', band)
  for (const key of ['min', 'below', 'max'] as const)
    if (key === 'min' || band[key] !== undefined)
      requireQuantity(`band.${key}`, band[key], 'kinematicViscosity')
  const { value } = viscosity
  if (value < band.min.value) return false
  if (band.below !== undefined && value >= band.below.value) return false
  return band.max === undefined || value <= band.max.value
}
