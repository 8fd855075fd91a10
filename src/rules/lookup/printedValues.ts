import type { Unit } from '../../quantity/index.js'
import type { PrintedValue, StatedValue } from '../../spec/index.js'

/** The first printed figure of a stated value. */
export function pickFirstPrinted<U extends Unit>(value: StatedValue<U>): PrintedValue<U> {
  const { printed: _printed, source: _source, ...first } = value
  return first
}

/** Whether a printed value has a figure; limits that were not parsed may lack both. */
export function hasFigure(printed: PrintedValue): boolean {
  return printed.kind !== 'limits' || printed.min !== undefined || printed.max !== undefined
}
