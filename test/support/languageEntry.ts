import { readdirSync } from 'node:fs'

/** The languages that have a folder of texts. */
export const listLanguages = (messages: string): readonly string[] =>
  readdirSync(messages, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort()

/** The public entry of a language. */
export const writeLanguageEntry = (language: string): string =>
  `export { ${language}, ${language}Calculations } from '../../message/${language}/index.js'\n`
