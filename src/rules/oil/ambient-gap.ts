import { compareQuantities, type PrintedQuantity, type TemperatureUnit } from '../../quantity/index.js'
import type { OilChoice } from '../../spec/index.js'
import { oilsRule } from '../ruleMakers.js'

/**
 * Oils for different temperatures that leave a gap: in between, no oil would be permitted. The bands may
 * overlap, and usually do.
 * Judges: Every list of two or more oils, including overrides, in which each choice has `ambient` limits; a
 * list with a choice for any temperature is not judged. Sorts by `min` (absent first), in exact degrees
 * Celsius. Finds the first `min` above the highest `max` so far; an absent `max` ends the search.
 * Place: `<oils>/choices`
 * Params: from: the highest `max` below the gap, as printed; to: the `min` above it, as printed
 * Harm: job
 * Common practice, no source.
 */
export const rule = oilsRule('oil/ambient-gap', 'warning', ({ path, choices }) => {
  const bands = choices.map(readAmbientBand)
  if (bands.length < 2 || bands.some((band) => band === undefined)) return []
  const sorted = bands
    .filter((band) => band !== undefined)
    .sort((first, second) => compareLimits(first.min, second.min))
  let highestMax = sorted[0]?.max
  for (const { min, max } of sorted.slice(1)) {
    if (highestMax === undefined || min === undefined) return []
    if (compareQuantities(highestMax, min) < 0)
      return [{ path: `${path}/choices`, params: { from: highestMax, to: min } }]
    if (max === undefined || compareQuantities(max, highestMax) > 0) highestMax = max
  }
  return []
})

type Temperature = PrintedQuantity<TemperatureUnit> | undefined

function readAmbientBand({
  ambient,
}: OilChoice): { readonly min: Temperature; readonly max: Temperature } | undefined {
  if (ambient?.kind !== 'limits') return undefined
  const { min, max, unit } = ambient
  const toTemperature = (value: string | undefined) => (value === undefined ? undefined : { value, unit })
  return { min: toTemperature(min), max: toTemperature(max) }
}

function compareLimits(first: Temperature, second: Temperature): number {
  if (first === undefined || second === undefined) return first === second ? 0 : first === undefined ? -1 : 1
  return compareQuantities(first, second)
}
