import { listSpellings, type QuantityCodes, UNITS_BY_MEASURE, type Unit } from '../../quantity/index.js'
import type { NotationPart } from '../../spec/index.js'

/** What an amount that cannot be read has for a unit. */
export interface UnitFound {
  /** What is before the unit. */
  readonly figures: string
  /** The symbols of the units that it may mean. */
  readonly symbols: readonly string[]
  /** Why it is not simply taken; absent where one unit alone is meant, or none is known. */
  readonly reason?: keyof QuantityCodes
}

/** Names besides a unit's own spellings, without spaces, dots and hyphens. */
const OTHER_NAMES: { readonly [U in Unit]?: string } = {
  'lbf.ft': 'lbft ftlb ftlbf poundfeet footpound',
  'lbf.in': 'lbin inlb inlbf inchpound',
  'ozf.in': 'ozin inoz inozf inchounce',
  'kgf.m': 'mkgf kpm mkp',
  'kgf.cm': 'cmkgf kpcm',
  mL: 'ml cc ccm',
  L: 'l lt ltr',
  cm3: 'cm3 cucm',
  in: '"',
  degC: 'degc celsius',
  degF: 'degf fahrenheit',
  h: 'hr',
  min: 'min',
  deg: '°',
}

const squeeze = (name: string) =>
  name
    .replaceAll(/[ .·*×()^_-]|liquid /g, '')
    .replace(/(met|lit)er/, '$1re')
    .replace(/(?<=..)s$/, '')
const namesOf = (unit: Unit) =>
  [...listSpellings(unit), ...(OTHER_NAMES[unit]?.split(' ') ?? [])].map(squeeze)

/** The unit that an amount of one of these measures was probably written with; undefined where none was expected. */
export function findUnit(found: string, expected: readonly NotationPart[]): UnitFound | undefined {
  const measures = expected.filter((part) => part in UNITS_BY_MEASURE) as (keyof typeof UNITS_BY_MEASURE)[]
  const [, figures, spelled] = /^([^a-z°"']*\d) ?([^\d ].*)$/i.exec(found) ?? []
  if (measures.length === 0 || figures === undefined || spelled === undefined) return undefined
  const name = squeeze(spelled)
  const units = measures.flatMap((measure): readonly Unit[] => UNITS_BY_MEASURE[measure])
  const having = (isMeant: (known: string) => boolean) => units.filter((unit) => namesOf(unit).some(isMeant))
  const lower = name.toLowerCase()
  const symbolsOf = (meant: readonly Unit[]) => meant.map((unit) => listSpellings(unit)[0] ?? unit)
  // Names in small letters are met by any case; capitals distinguish units.
  const exact = having((known) => known === name || known === lower)
  if (exact.length === 1) return { figures, symbols: symbolsOf(exact) }
  const doubtful: readonly (readonly [keyof QuantityCodes, readonly Unit[]])[] = [
    ['quantity/ratio-of-units', having((known) => name.includes('/') && known === name.replace('/', ''))],
    [
      'quantity/unit-is-ambiguous',
      having((known) => /^(us|imp)/i.test(known) && known.toLowerCase().replace(/^(us|imp)/, '') === lower),
    ],
    ['quantity/unit-in-wrong-case', having((known) => known.toLowerCase() === lower)],
    ['quantity/mass-unit-for-force', having((known) => known.replace('f', '') === name)],
  ]
  const [reason, meant] = doubtful.find(([, candidates]) => candidates.length > 0) ?? []
  if (reason !== undefined && meant !== undefined) return { figures, symbols: symbolsOf(meant), reason }
  // Words that are not a unit, such as `turns`, are not reported as an unknown unit.
  const isOther = Object.values(UNITS_BY_MEASURE).some((others: readonly Unit[]) =>
    others.some((unit) => namesOf(unit).includes(name)),
  )
  return {
    figures,
    symbols: [],
    ...(isOther && { reason: 'quantity/unit-of-other-measure' }),
  }
}
