import { escapeMarkdown } from './escapeMarkdown.js'

/** A piece of a line; `strong` is bold. */
export interface Phrase {
  readonly text: string
  readonly strong?: boolean
}

/** Writes the pieces of a line. A bold piece next to a letter, as in `a**(b)**`, is bold only if the letter is written as its code. */
export function writePhrasing(phrases: readonly Phrase[]): string {
  const pieces = joinPhrases(joinPhrases(phrases).flatMap(splitEnds))
  return pieces
    .map(({ text, strong }, index) => {
      if (strong) return `**${escapeMarkdown(text)}**`
      const before = pieces[index - 1]?.text ?? ''
      const after = pieces[index + 1]?.text ?? ''
      const signs = [...text]
      const first = blocksBold(signs[0], findLastSign(before)) ? signs.shift() : undefined
      const last = blocksBold(signs.at(-1), after) ? signs.pop() : undefined
      return `${toCode(first)}${escapeMarkdown(signs.join(''))}${toCode(last)}`
    })
    .join('')
}

/** Neighbouring pieces of one kind are joined. */
function joinPhrases(phrases: readonly Phrase[]): Phrase[] {
  const joined: { text: string; strong: boolean }[] = []
  for (const { text, strong = false } of phrases) {
    const last = joined.at(-1)
    if (text === '') continue
    if (last?.strong === strong) last.text += text
    else joined.push({ text, strong })
  }
  return joined
}

/** White space at the ends of a bold piece is moved outside it. */
function splitEnds({ text, strong = false }: Phrase): Phrase[] {
  const inner = strong ? text.trim() : text
  const start = text.indexOf(inner)
  return [{ text: text.slice(0, start) }, { text: inner, strong }, { text: text.slice(start + inner.length) }]
}

/** Source: CommonMark 0.31.2, left- and right-flanking delimiter runs. */
const blocksBold = (outside: string | undefined, inside: string): boolean =>
  outside !== undefined && /^[\p{P}\p{S}]/u.test(inside) && !/[\s\p{P}\p{S}]/u.test(outside)

const findLastSign = (text: string): string => /.$/su.exec(text)?.[0] ?? ''

const toCode = (sign: string | undefined): string =>
  sign === undefined ? '' : `&#x${sign.codePointAt(0)?.toString(16).toUpperCase()};`
