import { refuse } from '../base/index.js'
import { EXTERNAL_HEX_SIZES, INTERNAL_HEX_SIZES } from './standardSizes.js'

/**
 * Whether tools are commonly sold for a hexagon of this designation, for rules that look for misprints. Tools and
 * fasteners are matched by designation, exactly: `14 mm` does not match `9/16 in`.
 *
 * Source: ISO 2936 and ISO 272 sizes, older DIN widths and the inch series, from memory.
 */
export function isStandardHexSize(size: string, kind: 'internal hex' | 'external hex'): boolean {
  if (typeof size !== 'string') throw refuse('size', size, 'a string')
  if (kind === 'internal hex') return INTERNAL_HEX_SIZES.includes(size)
  if (kind === 'external hex') return EXTERNAL_HEX_SIZES.includes(size)
  throw refuse('kind', kind, "'internal hex' or 'external hex'")
}
