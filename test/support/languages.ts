import { join } from 'node:path'
import type { Catalogue } from '../../src/v1/message.js'
import { listLanguages } from './languageEntry.js'

/** The code of every language that the library has: one folder each. */
export const LANGUAGES: readonly string[] = listLanguages(join(import.meta.dirname, '../../src/message'))

/** The catalogue of a language, as an app imports it. */
export async function loadLanguage(language: string): Promise<Catalogue> {
  const entry: Readonly<Record<string, Catalogue>> = await import(
    /* @vite-ignore */ `../../src/v1/message/${language}.ts`
  )
  const catalogue = entry[language]
  if (catalogue === undefined) throw new Error(`no ${language} in its own entry`)
  return catalogue
}
