import { cleanText } from '../../message/index.js'

/** The usual limits of captions: lines on the screen, and characters per line. */
const MAX_LINES = 2
const MAX_CHARACTERS = 42

/** Characters as a reader counts them: a pair of surrogates is one. */
export const countCharacters = (text: string): number => Array.from(text).length

/** A word that is longer than a line is broken. */
function breakWord(word: string): readonly string[] {
  const characters = Array.from(word)
  const count = Math.ceil(characters.length / MAX_CHARACTERS)
  return Array.from({ length: count }, (_, index) =>
    characters.slice(index * MAX_CHARACTERS, (index + 1) * MAX_CHARACTERS).join(''),
  )
}

function wrapWords(words: readonly string[]): readonly string[] {
  const lines: string[] = []
  for (const word of words) {
    const last = lines.at(-1)
    const joined = last === undefined ? word : `${last} ${word}`
    if (last !== undefined && countCharacters(joined) <= MAX_CHARACTERS) lines[lines.length - 1] = joined
    else lines.push(word)
  }
  return lines
}

/** Two lines of similar length; the first is as short as possible. */
function wrapEvenly(words: readonly string[]): readonly string[] {
  const shortestWrap = wrapWords(words)
  if (shortestWrap.length < 2) return shortestWrap
  const breaks = words.map((_, index) => [words.slice(0, index).join(' '), words.slice(index).join(' ')])
  const widthOf = (lines: readonly string[]) => Math.max(...lines.map(countCharacters))
  return breaks
    .slice(1)
    .reduce((best, lines) => (widthOf(lines) < widthOf(best) ? lines : best), shortestWrap)
}

/**
 * Splits sentences into captions of at most two lines of 42 characters. A sentence starts a new caption unless it fits
 * after the previous one. No word is lost.
 */
export function splitCaptions(text: string): readonly (readonly string[])[] {
  const captions: string[][] = []
  let current: string[] = []
  const flush = () => {
    if (current.length > 0) captions.push(current)
    current = []
  }
  for (const sentence of text.split(/(?<=[.!?]) /)) {
    // A cleaned character may be longer than the original.
    const words = sentence
      .split(/[ \t\r\n]+/)
      .filter((word) => word !== '')
      .flatMap((word) => breakWord(word).map(cleanText).flatMap(breakWord))
    if (wrapWords([...current, ...words]).length > MAX_LINES) flush()
    for (const word of words) {
      if (wrapWords([...current, word]).length > MAX_LINES) flush()
      current.push(word)
    }
  }
  flush()
  return captions.map(wrapEvenly)
}
