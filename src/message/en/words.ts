import { nameOf } from '../phrases.js'

/** The meters of a log. */
export const METER_NAMES: Readonly<Record<string, string>> = {
  hours: 'the hour meter',
  distance: 'the odometer',
}

/** The facts of a machine's identity. */
export const FACT_NAMES = {
  variant: 'variant',
  modelYear: 'model year',
  serial: 'serial number',
  market: 'market',
} as const

export const writeFactName = (fact: string): string => nameOf(FACT_NAMES, fact)
export const writeFactNames = (facts: readonly string[]): readonly string[] => facts.map(writeFactName)

/**
 * Adds the article that fits the sound of the first word: `an M18x1.5`, `a G 1/2`, `an 8 mm hex`, `a unit`.
 */
export function addArticle(text: string): string {
  const [first = ''] = /^[0-9]+|^[A-Za-z]+/.exec(text.replace(/^[“"(]+/, '')) ?? []
  return `${startsWithVowelSound(first) ? 'an' : 'a'} ${text}`
}

function startsWithVowelSound(word: string): boolean {
  // Numbers that begin with the sound of eight, eleven or eighteen, also as thousands and millions.
  if (/^[0-9]/.test(word)) return /^8|^1[18](...)*$/.test(word)
  // Letters spoken one by one, such as M18 or NPT.
  if (/^[A-Z]+$/.test(word)) return /^[AEFHILMNORSX]/.test(word)
  return /^[aeiou]|^hour/i.test(word) && !/^(uni|use|usu|eu|one)/i.test(word)
}

/** Signal words in the sense of ANSI Z535.6. */
export const SIGNAL_WORDS = {
  danger: 'DANGER',
  warning: 'WARNING',
  caution: 'CAUTION',
  notice: 'NOTICE',
} as const
