/**
 * Breaks text at spaces into lines of at most `width` characters, but not at no-break spaces. A longer word is alone on its
 * line.
 */
export function wrapText(text: string, width: number, firstPrefix: string, nextPrefix: string): string[] {
  const lines: string[] = []
  let prefix = firstPrefix
  let rest = / {2}|^ | $/.test(text) ? text.replace(/ +/g, ' ').replace(/^ | $/g, '') : text
  for (;;) {
    const room = width - countCharacters(prefix)
    // A text never has fewer code units than characters.
    if (rest.length <= room || countCharacters(rest) <= room) break
    const lastSpace = rest.lastIndexOf(' ', findOffset(rest, room))
    const end = lastSpace > 0 ? lastSpace : rest.indexOf(' ')
    if (end < 0) break
    lines.push(prefix + rest.slice(0, end))
    rest = rest.slice(end + 1)
    prefix = nextPrefix
  }
  lines.push(prefix + rest)
  return lines
}

const hasSurrogatePairs = (text: string): boolean => /[\ud800-\udfff]/.test(text)

/** A character outside the basic plane is two code units. */
const countCharacters = (text: string): number =>
  hasSurrogatePairs(text) ? Array.from(text).length : text.length

/** The index of the code unit after this many characters. */
const findOffset = (text: string, characters: number): number =>
  hasSurrogatePairs(text) ? Array.from(text).slice(0, Math.max(0, characters)).join('').length : characters
