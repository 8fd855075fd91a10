import type { Unit } from './unit.js'

/** The units that a written name may mean, and why the name is unclear. */
export interface UnitNameMeaning {
  readonly units: readonly Unit[]
  readonly problem?: 'ambiguous' | 'a-ratio' | 'another-case' | 'mass-for-force'
}

/**
 * Unit names as people write them, but without spaces, dots and hyphens. A name with capitals matches only as
 * written, a name in small letters in any case. `lbs` for `lb` and plurals in s are added, except for symbols
 * where the s would mean a second.
 */
const UNIT_NAMES: { readonly [U in Unit]?: string } = {
  'N.m': 'Nm newtonmetre newtonmeter',
  'cN.m': 'cNm',
  'dN.m': 'dNm',
  'kN.m': 'kNm',
  'lbf.ft': 'lbfft ftlbf lbft ftlb footpound poundfoot poundfeet poundforcefoot',
  'lbf.in': 'lbfin inlbf lbin inlb inchpound poundinch poundinche poundforceinch',
  'ozf.in': 'ozfin inozf ozin inoz inchounce ounceinch ounceinche',
  'kgf.m': 'kgfm mkgf kpm mkp',
  'kgf.cm': 'kgfcm cmkgf kpcm',
  mL: 'ml cc ccm millilitre milliliter',
  L: 'l lt ltr litre liter',
  cm3: 'cm3 cucm cubiccentimetre cubiccentimeter',
  mm: 'mm millimetre millimeter',
  cm: 'cm centimetre centimeter',
  m: 'm metre meter',
  in: "in inch inche \" ''",
  ft: "ft foot feet '",
  km: 'km kilometre kilometer',
  mi: 'mi mile',
  N: 'N newton',
  kN: 'kN kilonewton',
  lbf: 'lbf poundforce',
  kPa: 'kpa',
  MPa: 'MPa',
  bar: 'bar',
  psi: 'psi',
  degC: '°c degc celsius degreecelsius degreescelsius degreec degreesc',
  degF: '°f degf fahrenheit degreefahrenheit degreesfahrenheit degreef degreesf',
  K: 'K kelvin',
  g: 'g gram gramme',
  kg: 'kg kilogram',
  h: 'h hr hour',
  min: 'min minute',
  s: 's sec second',
  d: 'd day',
  'km/h': 'km/h kmh kph kmph',
  mph: 'mph mi/h',
  'mm2/s': 'mm2/s cst',
  'mPa.s': 'mPas cP',
  'kg/m3': 'kg/m3',
}

/** Liquid measures with a US and an imperial size: the bare name is ambiguous. */
const LIQUID_MEASURES: { readonly [name: string]: string } = {
  fl_oz: 'floz fluidoz fluidounce',
  pt: 'pt pint',
  qt: 'qt quart',
  gal: 'gal gallon',
}

const UNCLEAR_NAMES: readonly (readonly [
  string,
  NonNullable<UnitNameMeaning['problem']>,
  readonly Unit[],
])[] = [
  ['oz ounce', 'ambiguous', ['oz', 'fl_oz_us', 'fl_oz_imp']],
  ['lb pound #', 'ambiguous', ['lb', 'lbf']],
  ['° deg degree', 'ambiguous', ['deg', 'degC', 'degF']],
  ['c', 'ambiguous', ['degC']],
  ['f', 'ambiguous', ['degF']],
  ['ft/lb lb/ft ft/lbf lbf/ft', 'a-ratio', ['lbf.ft']],
  ['in/lb lb/in in/lbf lbf/in', 'a-ratio', ['lbf.in']],
  ['n/m', 'a-ratio', ['N.m']],
  ['kg/m kgf/m', 'a-ratio', ['kgf.m']],
  ['kg/cm kgf/cm', 'a-ratio', ['kgf.cm']],
  ['nm', 'another-case', ['N.m']],
  ['kn', 'another-case', ['kN']],
  ['knm', 'another-case', ['kN.m']],
  ['cnm', 'another-case', ['cN.m']],
  ['dnm', 'another-case', ['dN.m']],
  ['mpa', 'another-case', ['MPa']],
  ['k', 'another-case', ['K']],
  ['n', 'another-case', ['N']],
  ['ML', 'another-case', ['mL']],
  ['M', 'another-case', ['m']],
  ['kgm mkg', 'mass-for-force', ['kgf.m']],
  ['kgcm cmkg', 'mass-for-force', ['kgf.cm']],
]

/** `ms`, `Ns`, `Nms` and `kPas` are units that contain a second. */
const AMBIGUOUS_PLURAL = /^([a-z]|[cdk]?nm?|[km]pa)$/i

let nameTable: Map<string, UnitNameMeaning> | undefined

/** The meaning of a name without spaces, dots and hyphens; undefined if no unit has it. */
export function findUnitName(name: string): UnitNameMeaning | undefined {
  nameTable ??= makeNameTable()
  return nameTable.get(name) ?? nameTable.get(name.toLowerCase())
}

function makeNameTable(): Map<string, UnitNameMeaning> {
  const table = new Map<string, UnitNameMeaning>()
  const addName = (written: string, name: UnitNameMeaning): void => {
    for (const writtenName of written.split(' ')) {
      const plural = AMBIGUOUS_PLURAL.test(writtenName) ? writtenName : `${writtenName}s`
      for (const spelling of [writtenName, plural, writtenName.replace('lb', 'lbs')]) {
        if (spelling === writtenName || !table.has(spelling)) table.set(spelling, name)
      }
    }
  }
  for (const [unit, written = ''] of Object.entries(UNIT_NAMES)) addName(written, { units: [unit as Unit] })
  for (const [written, problem, units] of UNCLEAR_NAMES) addName(written, { units, problem })
  for (const [unit, written] of Object.entries(LIQUID_MEASURES)) {
    const us: UnitNameMeaning = { units: [`${unit}_us` as Unit] }
    const imperial: UnitNameMeaning = { units: [`${unit}_imp` as Unit] }
    addName(written, { units: [...us.units, ...imperial.units], problem: 'ambiguous' })
    for (const writtenName of written.split(' ')) {
      for (const base of [writtenName, `${writtenName}s`]) {
        addName(`us${base} ${base}us usliq${base} usliquid${base}`, us)
        addName(`imp${base} ${base}imp uk${base} ${base}uk imperial${base} ${base}imperial`, imperial)
      }
    }
  }
  return table
}
