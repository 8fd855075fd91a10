import { compareExact, type DistanceUnit, exactOf, type PrintedQuantity } from '../../quantity/index.js'

/** Whether one of two distances is in miles, the other in km, and the miles are the larger number. */
export function isConvertedWrongWay(
  first: PrintedQuantity<DistanceUnit>,
  second: PrintedQuantity<DistanceUnit>,
): boolean {
  if (first.unit === second.unit) return false
  const [miles, kilometres] = first.unit === 'mi' ? [first, second] : [second, first]
  return compareExact(exactOf(miles.value), exactOf(kilometres.value)) > 0
}
