import { nameOf } from '../phrases.js'

/** The meters of a log. */
const METER_NAMES = {
  hours: 'Betriebsstundenzähler',
  distance: 'Wegstreckenzähler',
} as const
export const writeMeterName = (meter: string): string => nameOf(METER_NAMES, meter)

/** The facts of a machine's identity. */
export const FACT_NAMES = {
  variant: 'Variante',
  modelYear: 'Modelljahr',
  serial: 'Seriennummer',
  market: 'Markt',
} as const
export const writeFactName = (fact: string): string => nameOf(FACT_NAMES, fact)
export const writeFactNames = (facts: readonly string[]): readonly string[] => facts.map(writeFactName)

/** Signal words in the sense of ISO 3864-2 and ANSI Z535.6; see docs/glossary-de.md. */
export const SIGNAL_WORDS = {
  danger: 'GEFAHR',
  warning: 'WARNUNG',
  caution: 'VORSICHT',
  notice: 'HINWEIS',
} as const
