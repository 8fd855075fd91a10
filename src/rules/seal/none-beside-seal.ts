import { defineRule } from '../rule.js'

/** An opening that lists a seal and `none` side by side: one of the two entries is left over. House rule. */
export const noneBesideSeal = defineRule({
  code: 'seal/none-beside-seal',
  severity: 'error',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.parts.flatMap(({ kind, part, path, name }) => {
      if (kind !== 'opening' || part.seals.every((seal) => seal.kind === 'none')) return []
      const place = part.seals.findIndex((seal) => seal.kind === 'none')
      const at = `${path}/seals/${place}`
      return place === -1
        ? []
        : [{ path: at, params: { part: name }, cures: [{ op: 'remove' as const, path: at }] }]
    }),
})
