import type { IdentityFact } from '../../spec/index.js'
import { join as joinWords, nameOf } from '../phrases.js'

/** The meters of a log, with the article; {@link withDe} joins it to “de”. */
export const METER_NAMES = {
  hours: 'el horómetro',
  distance: 'el odómetro',
} as const

export const writeMeter = (meter: string): string => nameOf(METER_NAMES, meter)

/** The facts of a machine's identity, as labels. */
export const FACT_NAMES: Readonly<Record<IdentityFact, string>> = {
  variant: 'variante',
  modelYear: 'año de modelo',
  serial: 'número de serie',
  market: 'mercado',
}

/** The same facts with the article, for sentences. */
const FACTS: Readonly<Record<IdentityFact, string>> = {
  variant: 'la variante',
  modelYear: 'el año de modelo',
  serial: 'el número de serie',
  market: 'el mercado',
}

export const writeFact = (fact: string): string => nameOf(FACTS, fact)
export const writeFacts = (facts: readonly string[]): readonly string[] => facts.map(writeFact)

/** `uno, dos y tres`; “y” is “e” before the sound of i, “o” is “u” before the sound of o. */
export function join(items: readonly string[], word: 'y' | 'o'): string {
  const last = (items.at(-1) ?? '').replace(/^[“"«(]+/, '')
  if (word === 'y') return joinWords(items, /^(i|hi(?![aeou]))/i.test(last) ? 'e' : 'y')
  // 8, 80 and 800 begin with the sound of o, and so does 11 (once).
  return joinWords(items, /^(h?o|8|11(?![0-9]))/i.test(last) ? 'u' : 'o')
}

/** “de el” becomes “del”. */
export const withDe = (text: string): string =>
  text.startsWith('el ') ? `del ${text.slice(3)}` : `de ${text}`

/** A name from a document: its language and gender are unknown, so it has no article. */
export const quote = (name: string): string => `“${name}”`

/** The digits of a printed figure, with the decimal mark of the language. */
export const writeDigits = (figure: string | number): string => String(figure).replace('.', ',')

/** Signal words in the sense of ANSI Z535.6. */
export const SIGNAL_WORDS = {
  danger: 'PELIGRO',
  warning: 'ADVERTENCIA',
  caution: 'PRECAUCIÓN',
  notice: 'AVISO',
} as const
