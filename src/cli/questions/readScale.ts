import type { Measure, PrintedBand, Quantity, Unit, UnitOf } from '../../quantity/index.js'
import { UsageError } from '../cliIo.js'
import { readBand, readIn } from './readText.js'

/** A scale: its range or highest mark, and the step between marks, such as `40–200 lbf·in by 1`. */
export function readScale<M extends Measure>(
  where: string,
  text: string,
  measure: M,
): { readonly band: PrintedBand & { readonly unit: UnitOf<M> }; readonly step: Quantity<UnitOf<M> & Unit> } {
  const [range = '', step, ...rest] = text.split(/\s+by\s+/)
  if (step === undefined || rest.length > 0)
    throw new UsageError(
      `${where} ${JSON.stringify(text)}: expected marks and their step, such as "700 mL by 10"`,
    )
  const band = readBand(where, range, measure)
  const found = readIn(where, step, measure, band.unit)
  if (!(found.value > 0)) throw new UsageError(`${where} ${JSON.stringify(text)}: the step must be above 0`)
  return { band, step: found }
}
