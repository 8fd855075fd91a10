import { requireLanguage } from './loadCatalogue.js'
import type { TranslatedWords } from './message/cliWords.js'

/** The words of the command line, each language loaded on use. English is always loaded. */
const WORDS: Readonly<Record<string, () => Promise<TranslatedWords>>> = {
  de: async () => (await import('./message/de/index.js')).de,
  es: async () => (await import('./message/es/index.js')).es,
  fr: async () => (await import('./message/fr/index.js')).fr,
}

/** Loads the words of one language; undefined if they are English. */
export async function loadWords(name: string): Promise<TranslatedWords | undefined> {
  requireLanguage(name)
  return Object.hasOwn(WORDS, name) ? WORDS[name]?.() : undefined
}
