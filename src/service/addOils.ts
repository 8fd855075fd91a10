import { addExactly } from './addExactly.js'
import type { KitOil } from './kitContents.js'

/** Adds up volumes by the oil's name, in the order of first mention. */
export function addOils(oils: readonly KitOil[]): readonly KitOil[] {
  const names = [...new Set(oils.map(({ oil }) => oil))]
  return names.map((oil) => ({
    oil,
    volume: addExactly(oils.filter((one) => one.oil === oil).map(({ volume }) => volume)),
  }))
}
