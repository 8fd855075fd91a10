import { requireObject, shown } from '../base/index.js'
import { isFigure, type Measure, UNITS_BY_MEASURE } from '../quantity/index.js'

/** Far beyond every sum of a document's numbers, in any unit; every calculation with it ends. */
const LARGEST = 1e15

/**
 * Throws where a programmer passes something that is no amount of the measure: TypeError for the wrong shape or unit,
 * RangeError for a number that is not finite, below the range, or larger than any document's. A figure of a sheet counts where it is asked for.
 */
export function requireAmount(
  name: string,
  amount: unknown,
  measure: Measure,
  range: { readonly above?: number; readonly from?: number; readonly figure?: true } = {},
): void {
  const units: readonly string[] = UNITS_BY_MEASURE[measure]
  requireObject(name, amount)
  const { value, unit } = amount as { value?: unknown; unit?: unknown }
  if (typeof unit !== 'string' || !units.includes(unit)) {
    throw new TypeError(`${name}.unit must be one of ${units.join(', ')}, got ${shown(unit)}`)
  }
  const isPrinted = range.figure === true && typeof value === 'string' && isFigure(value)
  if (typeof value !== 'number' && !isPrinted) {
    const kinds = range.figure === true ? 'a number or a printed figure' : 'a number'
    throw new TypeError(`${name}.value must be ${kinds}, got ${shown(value)}`)
  }
  const { above, from } = range
  const number = Number(value)
  if (!Number.isFinite(number)) throw new RangeError(`${name}.value must be finite, got ${number}`)
  if (number > LARGEST) throw new RangeError(`${name}.value must be 1e15 or less, got ${number}`)
  if (above !== undefined && number <= above) {
    throw new RangeError(`${name}.value must be above ${above}, got ${number}`)
  }
  if (from !== undefined && number < from) {
    throw new RangeError(`${name}.value must be ${from} or more, got ${number}`)
  }
}
