import type { Measure, QuantityCodes, Unit } from '../../quantity/index.js'
import { listSpellings, UNITS_BY_MEASURE } from '../../quantity/index.js'
import type { NotationPart } from '../../spec/index.js'

/** The probable meaning of an unreadable amount. */
export interface ProbableAmounts {
  /** The amount with the symbol of each possible unit. */
  readonly amounts: readonly string[]
  /** The reason why the unit is not accepted. */
  readonly reason?: keyof QuantityCodes | undefined
}

/** Other names of units besides their spellings, without spaces, dots and hyphens. */
const OTHER_NAMES: { readonly [U in Unit]?: string } = {
  'lbf.ft': 'lbft ftlb ftlbf poundfeet footpound',
  'lbf.in': 'lbin inlb inlbf inchpound',
  'ozf.in': 'ozin inoz inozf inchounce',
  'kgf.m': 'mkgf kpm mkp',
  'kgf.cm': 'cmkgf kpcm',
  mL: 'ml cc ccm',
  L: 'l lt ltr',
  cm3: 'cucm',
  in: '"',
  degC: 'degc celsius',
  degF: 'degf fahrenheit',
  h: 'hr',
  min: 'min',
}

const normalizeName = (name: string) =>
  name
    .replaceAll(/[ .·*×()^_-]|liquid /g, '')
    .replace(/(met|lit)er/, '$1re')
    .replace(/(?<=..)s$/, '')
const listNames = (unit: Unit) =>
  [...listSpellings(unit), ...(OTHER_NAMES[unit]?.split(' ') ?? [])].map(normalizeName)

/** The probable meaning of an amount of one of these measures. */
export function findUnit(found: string, expected: readonly NotationPart[]): ProbableAmounts {
  const measures = expected.filter((part) => part in UNITS_BY_MEASURE) as Measure[]
  const [, figures, spelled] = /^([^a-z°"']*\d) ?([^\d ].*)$/i.exec(found) ?? []
  if (measures.length === 0 || spelled === undefined) return { amounts: [] }
  const name = normalizeName(spelled)
  const lowerCaseName = name.toLowerCase()
  const units = measures.flatMap((measure): readonly Unit[] => UNITS_BY_MEASURE[measure])
  const spellings: readonly (readonly [ProbableAmounts['reason'], (known: string) => boolean])[] = [
    // Lower-case names match any case; upper case distinguishes units.
    [undefined, (known) => known === name || known === lowerCaseName],
    ['quantity/ratio-of-units', (known) => name.includes('/') && known === name.replace('/', '')],
    [
      'quantity/unit-is-ambiguous',
      (known) => ['us', 'imp'].some((system) => known.toLowerCase() === system + lowerCaseName),
    ],
    ['quantity/unit-in-wrong-case', (known) => known.toLowerCase() === lowerCaseName],
    ['quantity/mass-unit-for-force', (known) => known.replace('f', '') === name],
  ]
  for (const [reason, isMeant] of spellings) {
    const meant = units.filter((unit) => listNames(unit).some(isMeant))
    if (meant.length === 1 || (reason && meant.length > 0))
      return { amounts: meant.map((unit) => `${figures} ${listSpellings(unit)[0]}`), reason }
  }
  // Words that are not a unit, such as `turns`, are not reported as an unknown unit.
  const isKnownElsewhere = Object.values(UNITS_BY_MEASURE)
    .flat()
    .some((unit) => listNames(unit).includes(name))
  return { amounts: [], ...(isKnownElsewhere && { reason: 'quantity/unit-of-other-measure' }) }
}
