import type { Catalogue } from '../message/index.js'
import { UsageError } from './cliIo.js'
import type { CliWords } from './message/cliWords.js'

interface Language {
  /** The texts of findings and cards. */
  readonly catalogue: () => Promise<Catalogue>
  /** The words of the command line; English is always loaded. */
  readonly words?: () => Promise<CliWords>
}

/** The languages, each loaded on use. */
const LANGUAGES: Readonly<Record<string, Language>> = {
  de: {
    catalogue: async () => (await import('../message/de/index.js')).de,
    words: async () => (await import('./message/de/index.js')).de,
  },
  en: { catalogue: async () => (await import('../message/en/index.js')).en },
  es: {
    catalogue: async () => (await import('../message/es/index.js')).es,
    words: async () => (await import('./message/es/index.js')).es,
  },
  fr: {
    catalogue: async () => (await import('../message/fr/index.js')).fr,
    words: async () => (await import('./message/fr/index.js')).fr,
  },
}

/** The names for `--language`. */
export const LANGUAGE_NAMES = Object.keys(LANGUAGES)

/** Loads the texts of findings and cards in one language. */
export function loadCatalogue(name = 'en'): Promise<Catalogue> {
  return requireLanguage(name).catalogue()
}

/** Loads the words of the command line in one language; undefined for English. */
export async function loadWords(name: string): Promise<CliWords | undefined> {
  return requireLanguage(name).words?.()
}

function requireLanguage(name: string): Language {
  const language = Object.hasOwn(LANGUAGES, name) ? LANGUAGES[name] : undefined
  if (language === undefined)
    throw new UsageError('notOneOf', { given: `--language ${name}`, expected: LANGUAGE_NAMES.join(', ') })
  return language
}
