import { listSpellings, type QuantityCodes, UNITS_BY_MEASURE, type Unit } from '../../quantity/index.js'
import type { NotationPart } from '../../spec/index.js'

/** The unit of an unreadable amount. */
export interface WrittenUnit {
  /** The text before the unit. */
  readonly figures: string
  /** The symbols of the possible units. */
  readonly symbols: readonly string[]
  /** The reason why the unit is not accepted. Absent unless several units are possible. */
  readonly reason?: keyof QuantityCodes
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
  cm3: 'cm3 cucm',
  in: '"',
  degC: 'degc celsius',
  degF: 'degf fahrenheit',
  h: 'hr',
  min: 'min',
  deg: '°',
}

const normalizeName = (name: string) =>
  name
    .replaceAll(/[ .·*×()^_-]|liquid /g, '')
    .replace(/(met|lit)er/, '$1re')
    .replace(/(?<=..)s$/, '')
const listNames = (unit: Unit) =>
  [...listSpellings(unit), ...(OTHER_NAMES[unit]?.split(' ') ?? [])].map(normalizeName)

/** The probable unit of an amount of one of these measures; undefined if no measure was expected. */
export function findUnit(found: string, expected: readonly NotationPart[]): WrittenUnit | undefined {
  const measures = expected.filter((part) => part in UNITS_BY_MEASURE) as (keyof typeof UNITS_BY_MEASURE)[]
  const [, figures, spelled] = /^([^a-z°"']*\d) ?([^\d ].*)$/i.exec(found) ?? []
  if (measures.length === 0 || figures === undefined || spelled === undefined) return undefined
  const name = normalizeName(spelled)
  const units = measures.flatMap((measure): readonly Unit[] => UNITS_BY_MEASURE[measure])
  const findUnitsNamed = (isMatch: (known: string) => boolean) =>
    units.filter((unit) => listNames(unit).some(isMatch))
  const lowerCaseName = name.toLowerCase()
  const listSymbols = (meant: readonly Unit[]) => meant.map((unit) => listSpellings(unit)[0] ?? unit)
  // Lower-case names match any case; upper case distinguishes units.
  const exactUnits = findUnitsNamed((known) => known === name || known === lowerCaseName)
  if (exactUnits.length === 1) return { figures, symbols: listSymbols(exactUnits) }
  const doubtfulUnits: readonly (readonly [keyof QuantityCodes, readonly Unit[]])[] = [
    [
      'quantity/ratio-of-units',
      findUnitsNamed((known) => name.includes('/') && known === name.replace('/', '')),
    ],
    [
      'quantity/unit-is-ambiguous',
      findUnitsNamed(
        (known) => /^(us|imp)/i.test(known) && known.toLowerCase().replace(/^(us|imp)/, '') === lowerCaseName,
      ),
    ],
    ['quantity/unit-in-wrong-case', findUnitsNamed((known) => known.toLowerCase() === lowerCaseName)],
    ['quantity/mass-unit-for-force', findUnitsNamed((known) => known.replace('f', '') === name)],
  ]
  const [reason, meant] = doubtfulUnits.find(([, candidates]) => candidates.length > 0) ?? []
  if (reason !== undefined && meant !== undefined) return { figures, symbols: listSymbols(meant), reason }
  // Words that are not a unit, such as `turns`, are not reported as an unknown unit.
  const isKnownElsewhere = Object.values(UNITS_BY_MEASURE).some((others: readonly Unit[]) =>
    others.some((unit) => listNames(unit).includes(name)),
  )
  return {
    figures,
    symbols: [],
    ...(isKnownElsewhere && { reason: 'quantity/unit-of-other-measure' }),
  }
}
