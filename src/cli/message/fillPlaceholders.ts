import type { CliWords } from './cliWords.js'

/** The usage of a command with the words of the language for what the user writes: `<file>`, `[log]`, `FOLDER`. */
export function fillPlaceholders(text: string, { placeholders }: CliWords): string {
  const words: Readonly<Record<string, string>> = placeholders
  return text.replaceAll(/(?<=<)[^<>]+(?=>)|(?<=\[)[a-z]+(?=\])|\b[A-Z]{2,}\b/g, (name) =>
    Object.hasOwn(words, name) ? (words[name] ?? name) : name,
  )
}
