import type { Unit } from './unit.js'
import { unitSymbol } from './unitSymbol.js'
import { UNIT_WORDS } from './unitWords.js'

/** The id, the symbol and the English name of a unit, each once and with plain spaces. */
export function listSpellings(unit: Unit): readonly string[] {
  return [...new Set([unitSymbol(unit).replaceAll('\u00a0', ' '), unit, UNIT_WORDS[unit]])]
}
