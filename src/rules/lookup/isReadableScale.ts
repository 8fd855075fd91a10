import { MAX_NUMBER } from '../../base/index.js'
import type { WrenchScale } from '../../spec/index.js'

/** Whether a setting can be read off a wrench's scale: it rises from its lowest mark, in steps that fit into it. */
export function isReadableScale({ lowest, highest, graduation }: WrenchScale): boolean {
  return lowest < highest && highest <= MAX_NUMBER && graduation > 0 && graduation <= highest - lowest
}
