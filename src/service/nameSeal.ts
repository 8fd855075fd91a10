import type { Seal } from '../spec/index.js'

/** A seal as a parts list names it: its part number first, what it is, its product or size. */
export function nameSeal(seal: Seal): string {
  if (seal.kind === 'none' || seal.kind === 'not stated') return seal.kind
  const number = seal.partNumber === undefined ? [] : [seal.partNumber]
  const what: readonly string[] =
    seal.kind === 'thread sealant' || seal.kind === 'liquid gasket'
      ? [seal.product]
      : 'size' in seal && seal.size !== undefined
        ? [Object.values(seal.size).slice(0, -1).join(' × '), seal.size.unit]
        : []
  return [...number, seal.kind, ...what].join(' ')
}
