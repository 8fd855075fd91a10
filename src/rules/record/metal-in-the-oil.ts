import { entryRule } from '../ruleMakers.js'

/**
 * Chips or pieces on the magnet, or metal in the oil, but the gearcase was refilled: something is breaking up
 * inside. Stop, and have it opened before the machine works again. Fine paste is normal wear.
 * Judges: Every judged entry with `refilled`. Finds `magnet` of `chips` or `pieces`; else `oilFinding` of `metallic`.
 * Place: `/entries/<place>/magnet`, or `/entries/<place>/oilFinding`
 * Params: gearcase: its name; found: `chips`, `pieces` or `metallic`
 * Harm: machine
 * Common practice, no source.
 */
export const rule = entryRule('record/metal-in-the-oil', 'error', ({ path, entry, gearcase }) => {
  if (entry.refilled === undefined) return []
  const { magnet, oilFinding } = entry
  const onMagnet = magnet === 'chips' || magnet === 'pieces' ? magnet : undefined
  const found = onMagnet ?? (oilFinding === 'metallic' ? oilFinding : undefined)
  if (found === undefined) return []
  const place = onMagnet === undefined ? 'oilFinding' : 'magnet'
  return [{ path: `${path}/${place}`, params: { gearcase: gearcase.name, found } }]
})
