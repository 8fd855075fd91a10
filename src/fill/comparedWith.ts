import { type Band, type Exact, sideOfBand } from '../quantity/index.js'

/** What a volume is compared with: the nominal, else the nearer limit, else itself inside limits. */
export function comparedWith(volume: Exact, band: Band): Exact {
  if (band.basis !== 'limits' && band.basis !== 'one limit') return band.aim
  const side = sideOfBand(volume, band)
  return (side < 0 ? band.low : side > 0 ? band.high : undefined) ?? volume
}
