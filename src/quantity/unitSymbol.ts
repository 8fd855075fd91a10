import { quoteValue } from '../base/index.js'
import { isUnit } from './measureOf.js'
import type { Unit } from './unit.js'
import { UNIT_WORDS } from './unitWords.js'

/** Symbols that differ from the unit's id; `~` is a no-break space. */
const SYMBOLS: { readonly [U in Unit]?: string } = {
  cm3: 'cm³',
  fl_oz_us: 'US~fl~oz',
  pt_us: 'US~pt',
  qt_us: 'US~qt',
  gal_us: 'US~gal',
  fl_oz_imp: 'imp~fl~oz',
  pt_imp: 'imp~pt',
  qt_imp: 'imp~qt',
  gal_imp: 'imp~gal',
  degC: '°C',
  degF: '°F',
  degC_diff: '°C',
  degF_diff: '°F',
  K_diff: 'K',
  deg: '°',
  'mm2/s': 'mm²/s',
  'kg/m3': 'kg/m³',
}

/**
 * The symbol of a unit on cards, for tables with the unit in the heading. For a quantity, use
 * {@link formatQuantity}.
 */
export function unitSymbol(unit: Unit): string {
  if (!isUnit(unit)) throw new TypeError(`unit must be a unit id such as 'N.m', got ${quoteValue(unit)}`)
  const symbol = Object.hasOwn(SYMBOLS, unit) ? SYMBOLS[unit] : undefined
  return symbol?.replaceAll('~', '\u00a0') ?? unit.replace('.', '·')
}

/** The id, the symbol and the English name of a unit, each once and with plain spaces. */
export function listSpellings(unit: Unit): readonly string[] {
  return [...new Set([unitSymbol(unit).replaceAll('\u00a0', ' '), unit, UNIT_WORDS[unit]])]
}
