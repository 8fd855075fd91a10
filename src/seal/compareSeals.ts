import type { NumberedPart, Seal } from '../spec/index.js'

/** Whether two descriptions mean the same part: `perhaps` if a property is missing on either side. */
export function compareSeals(needed: Seal, offered: Seal): 'yes' | 'no' | 'perhaps' {
  if (needed.kind !== offered.kind || needed.kind === 'none' || needed.kind === 'not stated') return 'no'
  const [neededNumbers = [], offeredNumbers = []] = [needed, offered].map((seal) =>
    partNumbersOf(seal as NumberedPart).map(normalizeText),
  )
  const propertyVerdicts = listProperties(needed).map((property, index) => {
    const other = listProperties(offered)[index]
    // sizes in two units must be compared by measuring
    return compareProperties(
      property,
      other?.endsWith(' in') === property?.endsWith(' in') ? other : undefined,
    )
  })
  if (neededNumbers.length > 0 && offeredNumbers.length > 0)
    return neededNumbers.some((number) => offeredNumbers.includes(number)) ? 'yes' : 'no'
  if (propertyVerdicts.includes('no')) return 'no'
  return propertyVerdicts.length === 0 || propertyVerdicts.includes('perhaps') ? 'perhaps' : 'yes'
}

/**
 * Lists the properties of a seal except its kind; undefined for a missing property. Cut gaskets match only by
 * part number.
 */
function listProperties(seal: Seal): (string | undefined)[] {
  switch (seal.kind) {
    case 'crush washer':
    case 'bonded seal': {
      const { inside, outside, thickness, unit } = seal.size ?? {}
      const sizes = [inside, outside, thickness].map((figure) => normalizeLength(figure, unit))
      return [seal.form ?? 'bonded', knownMaterial(seal.material), ...sizes]
    }
    case 'o-ring': {
      const dash = normalizeRingNumber(seal.designation)
      const { inside, section, unit } = seal.size ?? {}
      const size =
        unit === undefined ? undefined : `${normalizeLength(inside, unit)}×${normalizeLength(section, unit)}`
      return [
        knownMaterial(seal.material),
        dash === undefined && size === undefined ? undefined : `${dash ?? ''}|${size ?? ''}`,
      ]
    }
    case 'thread sealant':
    case 'liquid gasket':
      return [normalizeText(seal.product)]
    default:
      return []
  }
}

/** Rings are the same if their number or size is the same and the other property does not contradict it. */
function compareProperties(first: string | undefined, second: string | undefined): 'yes' | 'no' | 'perhaps' {
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

function knownMaterial(material: string): string | undefined {
  return material === 'not stated' ? undefined : material
}

/** `1.50` and `1.5` are the same size. */
function normalizeLength(figure: string | undefined, unit: string | undefined): string | undefined {
  return figure === undefined ? undefined : `${Number(figure)}${unit === 'in' ? ' in' : ''}`
}

function normalizeText(text: string): string {
  return text.trim().replace(/\s+/g, ' ').toUpperCase()
}

/** The number of an o-ring in a standard spelling: `214` of AS568, `P22`, `P22A` and `G45` of JIS B 2401. */
export function normalizeRingNumber(designation: string | undefined): string | undefined {
  const text = (designation ?? '').slice(0, 30).trim().toUpperCase()
  const dashNumber = /^(?:AS ?568[A-Z]?|BS|2)?[ -]*([0-9]{3})$/.exec(text)?.[1]
  const jisMatch = /^(?:JIS ?)?(?:B ?2401)?[ -]*(?:[1-4][A-D]?[ -]?)?([PG]) ?-?([0-9]{1,3}A?)$/.exec(text)
  return dashNumber ?? (jisMatch === null ? undefined : `${jisMatch[1]}${jisMatch[2]}`)
}

/** All numbers of a part: first the one to buy, then the manual's, then equivalents. */
export function partNumbersOf({
  partNumber,
  supersededBy,
  equivalents = [],
}: NumberedPart): readonly string[] {
  const numbers = [
    supersededBy?.partNumber,
    partNumber,
    ...equivalents.map((equivalent) => equivalent.partNumber),
  ]
  return numbers.filter((number) => number !== undefined)
}
