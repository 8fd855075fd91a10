import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Catalogue } from '../../src/v1/message.js'

const ENTRIES = join(import.meta.dirname, '../../src/v1/message')

/** The code of every language that the library has: one entry each. */
export const LANGUAGES: readonly string[] = readdirSync(ENTRIES)
  .map((file) => file.replace(/\.ts$/, ''))
  .sort()

/** The catalogue of a language, as an app imports it. */
export async function loadLanguage(language: string): Promise<Catalogue> {
  const entry: Readonly<Record<string, Catalogue>> = await import(
    /* @vite-ignore */ `../../src/v1/message/${language}.ts`
  )
  const catalogue = entry[language]
  if (catalogue === undefined) throw new Error(`no ${language} in its own entry`)
  return catalogue
}
