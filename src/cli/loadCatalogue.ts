import type { Catalogue } from '../message/index.js'
import { UsageError } from './cliIo.js'

/** The languages, each loaded on use. */
const LANGUAGES: Readonly<Record<string, () => Promise<Catalogue>>> = {
  de: async () => (await import('../message/de/index.js')).de,
  en: async () => (await import('../message/en/index.js')).en,
  es: async () => (await import('../message/es/index.js')).es,
  fr: async () => (await import('../message/fr/index.js')).fr,
}

/** The names for `--language`. */
export const LANGUAGE_NAMES = Object.keys(LANGUAGES)

/** Loads the texts of findings and cards in one language. */
export function loadCatalogue(name = 'en'): Promise<Catalogue> {
  requireLanguage(name)
  return (LANGUAGES[name] as () => Promise<Catalogue>)()
}

/** Throws for an unknown language. */
export function requireLanguage(name: string): void {
  if (!Object.hasOwn(LANGUAGES, name))
    throw new UsageError('notOneOf', { given: `--language ${name}`, expected: LANGUAGE_NAMES.join(', ') })
}
