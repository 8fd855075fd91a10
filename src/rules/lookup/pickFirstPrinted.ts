import type { Unit } from '../../quantity/index.js'
import type { PrintedValue, StatedValue } from '../../spec/index.js'

/** The first printed figure of a stated value. */
export function pickFirstPrinted<U extends Unit>(value: StatedValue<U>): PrintedValue<U> {
  const { printed: _printed, source: _source, ...first } = value
  return first
}
