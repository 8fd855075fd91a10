import { quoteValue } from '../base/index.js'
import { isUnit } from './measureOf.js'
import type { Unit } from './unit.js'
import { UNIT_WORDS } from './unitWords.js'

/**
 * The symbol of a unit on cards, for tables with the unit in the heading. For a quantity, use
 * {@link formatQuantity}.
 */
export function unitSymbol(unit: Unit): string {
  if (!isUnit(unit)) throw new TypeError(`unit must be a unit id such as 'N.m', got ${quoteValue(unit)}`)
  return makeSymbol(unit).replaceAll(' ', '\u00a0')
}

/** The symbol, the id and the English name of a unit, each once and with plain spaces. */
export function listSpellings(unit: Unit): readonly string[] {
  return [...new Set([makeSymbol(unit), unit, UNIT_WORDS[unit]])]
}

/** `US fl oz` of `fl_oz_us`, `°C` of `degC` and of `degC_diff`, `mm²/s` of `mm2/s`. */
const makeSymbol = (unit: Unit): string =>
  unit
    .replace('_diff', '')
    .replace('deg', '°')
    .replace('.', '·')
    .replace('2', '²')
    .replace('3', '³')
    .replace(/(.+)_(us|imp)/, '$2 $1')
    .replace('us', 'US')
    .replace('_', ' ')
