import { MAX_NUMBER } from '../../base/index.js'
import type { WrenchScale } from '../../spec/index.js'

/** Whether a wrench's scale rises from its lowest mark, in steps no wider than the scale. */
export function isPlausibleScale({ lowest, highest, graduation }: WrenchScale): boolean {
  return lowest < highest && highest <= MAX_NUMBER && graduation > 0 && graduation <= highest - lowest
}
