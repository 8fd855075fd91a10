import { partRule } from '../ruleMakers.js'

/**
 * An opening that lists both a seal and `none`. One of the entries is wrong.
 * Judges: Every opening. Finds an opening with an entry `none` and an entry of another kind.
 * Place: the first `none`, `<opening>/seals/<place>`
 * Params: part: the name of the part (see terms)
 * Harm: machine
 * House rule.
 */
export const rule = partRule('seal/none-beside-seal', 'error', ({ kind, part, path, name }) => {
  if (kind !== 'opening' || part.seals.every((seal) => seal.kind === 'none')) return []
  const place = part.seals.findIndex((seal) => seal.kind === 'none')
  if (place === -1) return []
  const at = `${path}/seals/${place}`
  return [{ path: at, params: { part: name }, cures: [{ op: 'remove' as const, path: at }] }]
})
