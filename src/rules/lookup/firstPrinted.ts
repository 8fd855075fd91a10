import type { Unit } from '../../quantity/index.js'
import type { PrintedValue, StatedValue } from '../../spec/index.js'

/** A stated value as it is printed first, without what is printed next to it. */
export function firstPrinted<U extends Unit>(value: StatedValue<U>): PrintedValue<U> {
  const { printed: _printed, source: _source, ...first } = value
  return first
}
