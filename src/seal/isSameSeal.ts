import type { Seal } from '../spec/index.js'

/**
 * Whether two descriptions mean the same part: `yes` or `no` where they say so, `perhaps` where a fact is missing on
 * either side. Internal: use {@link matchStockSeals}.
 */
export function isSameSeal(needed: Seal, offered: Seal): 'yes' | 'no' | 'perhaps' {
  if (needed.kind !== offered.kind || needed.kind === 'none' || needed.kind === 'not stated') return 'no'
  const parts = [needed, offered].map((seal) => ('partNumber' in seal ? seal.partNumber : undefined))
  const facts = factsOf(needed).map((fact, place) => sameFact(fact, factsOf(offered)[place]))
  if (parts[0] !== undefined && parts[1] !== undefined)
    return plain(parts[0]) === plain(parts[1]) ? 'yes' : 'no'
  if (facts.includes('no')) return 'no'
  return facts.length === 0 || facts.includes('perhaps') ? 'perhaps' : 'yes'
}

/** The properties of a seal besides its kind; undefined where none is given. Cut gaskets match only by part number. */
function factsOf(seal: Seal): (string | undefined)[] {
  switch (seal.kind) {
    case 'crush washer':
    case 'bonded seal': {
      const { inside, outside, thickness } = seal.size ?? {}
      const form = seal.kind === 'crush washer' ? seal.form : 'bonded'
      return [form, stated(seal.material), number(inside), number(outside), number(thickness)]
    }
    case 'o-ring': {
      const dash = /([0-9]{3})$/.exec(seal.designation ?? '')?.[1]
      const size =
        seal.size === undefined ? undefined : `${number(seal.size.inside)}×${number(seal.size.section)}`
      return [
        stated(seal.material),
        dash === undefined && size === undefined ? undefined : `${dash ?? ''}|${size ?? ''}`,
      ]
    }
    case 'thread sealant':
    case 'liquid gasket':
      return [plain(seal.product)]
    default:
      return []
  }
}

/** Rings are the same where dash number or size is the same and the other does not contradict it. */
function sameFact(first: string | undefined, second: string | undefined): 'yes' | 'no' | 'perhaps' {
  if (first === undefined || second === undefined) return 'perhaps'
  if (first === second) return 'yes'
  const [firstDash, firstSize] = first.split('|')
  const [secondDash, secondSize] = second.split('|')
  if (firstSize === undefined || secondSize === undefined) return 'no'
  const pairs = [
    [firstDash, secondDash],
    [firstSize, secondSize],
  ].filter(([left, right]) => left !== '' && right !== '')
  if (pairs.length === 0) return 'perhaps'
  return pairs.every(([left, right]) => left === right) ? 'yes' : 'no'
}

function stated(material: string): string | undefined {
  return material === 'not stated' ? undefined : material
}

/** `1.50` and `1.5` are one size. */
function number(figure: string | undefined): string | undefined {
  return figure === undefined ? undefined : String(Number(figure))
}

function plain(text: string): string {
  return text.trim().replace(/\s+/g, ' ').toUpperCase()
}
