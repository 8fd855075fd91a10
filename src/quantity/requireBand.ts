import { requireObject, shown } from '../base/index.js'
import { figureOf } from './figureOf.js'
import type { PrintedBand } from './printed.js'

/** Throws TypeError where a programmer passes something that is no printed value. Its unit is judged where it is used. */
export function requireBand(name: string, value: unknown): asserts value is PrintedBand {
  requireObject(name, value)
  const band = value as PrintedBand
  switch (band.kind) {
    case 'limits':
      if (band.min === undefined && band.max === undefined)
        throw new TypeError(`${name} of kind limits must have min or max`)
      if (band.min !== undefined) figureOf(band.min, `${name}.min`)
      if (band.max !== undefined) figureOf(band.max, `${name}.max`)
      return
    case 'nominal with tolerance':
      figureOf(band.minus, `${name}.minus`)
      figureOf(band.plus, `${name}.plus`)
      figureOf(band.value, `${name}.value`)
      return
    case 'nominal':
      figureOf(band.value, `${name}.value`)
      return
    default:
      throw new TypeError(
        `${name}.kind must be nominal, nominal with tolerance or limits, got ${shown((band as { kind?: unknown }).kind)}`,
      )
  }
}
