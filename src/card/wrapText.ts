/**
 * Breaks text at spaces into lines of at most `width` characters, but not at no-break spaces. A longer word is alone on its
 * line.
 */
export function wrapText(text: string, width: number, firstPrefix: string, nextPrefix: string): string[] {
  const lines: string[] = []
  let prefix = firstPrefix
  let remainingText = / {2}|^ | $/.test(text) ? text.replace(/ +/g, ' ').replace(/^ | $/g, '') : text
  for (;;) {
    const maxLength = width - countCharacters(prefix)
    // A text never has fewer code units than characters.
    if (remainingText.length <= maxLength || countCharacters(remainingText) <= maxLength) break
    const lastSpace = remainingText.lastIndexOf(' ', findOffset(remainingText, maxLength))
    const end = lastSpace > 0 ? lastSpace : remainingText.indexOf(' ')
    if (end < 0) break
    lines.push(prefix + remainingText.slice(0, end))
    remainingText = remainingText.slice(end + 1)
    prefix = nextPrefix
  }
  lines.push(prefix + remainingText)
  return lines
}

const hasSurrogatePairs = (text: string): boolean => /[\ud800-\udfff]/.test(text)

/** A character outside the basic plane is two code units. */
const countCharacters = (text: string): number =>
  hasSurrogatePairs(text) ? Array.from(text).length : text.length

/** The index of the code unit after this many characters. */
const findOffset = (text: string, characters: number): number =>
  hasSurrogatePairs(text) ? Array.from(text).slice(0, Math.max(0, characters)).join('').length : characters
