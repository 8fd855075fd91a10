import { compareExact, type DistanceUnit, exactOf, type PrintedQuantity } from '../../quantity/index.js'

/** Whether one distance is in miles and the other in km, and the number of miles is larger. */
export function isConvertedWrongWay(
  first: PrintedQuantity<DistanceUnit>,
  second: PrintedQuantity<DistanceUnit>,
): boolean {
  if (first.unit === second.unit) return false
  const [miles, kilometres] = first.unit === 'mi' ? [first, second] : [second, first]
  return compareExact(exactOf(miles.value), exactOf(kilometres.value)) > 0
}
