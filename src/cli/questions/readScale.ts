import type { Measure, PrintedBand, Quantity, Unit, UnitOf } from '../../quantity/index.js'
import { UsageError } from '../cliIo.js'
import { readBand, readInUnit } from './readText.js'

/** A scale: its range or highest mark, and the step between marks, such as `40–200 lbf·in by 1`. */
export function readScale<M extends Measure>(
  option: string,
  text: string,
  measure: M,
): { readonly band: PrintedBand & { readonly unit: UnitOf<M> }; readonly step: Quantity<UnitOf<M> & Unit> } {
  const [range = '', step, ...others] = text.split(/\s+by\s+/)
  if (step === undefined || others.length > 0)
    throw new UsageError(
      `${option} ${JSON.stringify(text)}: expected marks and a step, such as "700 mL by 10"`,
    )
  const band = readBand(option, range, measure)
  const stepQuantity = readInUnit(option, step, measure, band.unit)
  if (!(stepQuantity.value > 0))
    throw new UsageError(`${option} ${JSON.stringify(text)}: the step must be above 0`)
  return { band, step: stepQuantity }
}
