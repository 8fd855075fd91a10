import type { UsageError } from '../cliIo.js'
import type { CliWords } from './cliWords.js'
import { nameFile } from './nameFile.js'

/** The text of an error; `cleanLine` makes foreign text safe for a terminal. */
export function renderUsageError(
  { key, values }: { readonly key: UsageError['key']; readonly values?: object | undefined },
  words: CliWords,
  cleanLine: (text: string) => string,
): string {
  const clean = Object.entries(values ?? {}).map(([name, value]) => [
    name,
    typeof value === 'string' ? cleanLine(name === 'path' ? nameFile(value, words) : value) : value,
  ])
  const write = words.errors[key] as (values: object) => string
  return write(Object.fromEntries(clean))
}
