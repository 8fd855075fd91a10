/**
 * Breaks text at spaces into lines of at most `width` characters, but not at no-break spaces. A longer word is alone on its
 * line.
 */
export function wrapText(text: string, width: number, firstPrefix: string, nextPrefix: string): string[] {
  const lines: string[] = []
  addWrapped(lines, text, width, firstPrefix, nextPrefix)
  return lines
}

/** Adds the lines of {@link wrapText} to a list. `nextPrefix` is the prefix as spaces if it is not given. */
export function addWrapped(
  lines: string[],
  text: string,
  width: number,
  firstPrefix: string,
  nextPrefix?: string,
): void {
  const hasExtraSpaces = text.includes('  ') || text.startsWith(' ') || text.endsWith(' ')
  const words = hasExtraSpaces ? text.replace(/ +/g, ' ').replace(/^ | $/g, '') : text
  // A text never has fewer code units than characters.
  if (firstPrefix.length + words.length <= width) {
    lines.push(firstPrefix + words)
    return
  }
  // A character outside the basic plane is two code units.
  const hasPairs = /[\ud800-\udfff]/.test(firstPrefix + words)
  const count = (part: string) => (hasPairs ? Array.from(part).length : part.length)
  let prefix = firstPrefix
  let start = 0
  for (;;) {
    const maxLength = Math.max(0, width - count(prefix))
    // The index of the first code unit that has no room.
    const end =
      start + (hasPairs ? findOffset(words.slice(start, start + 2 * maxLength), maxLength) : maxLength)
    if (end >= words.length) break
    const lastSpace = words.lastIndexOf(' ', end)
    const space = lastSpace > start ? lastSpace : words.indexOf(' ', start)
    if (space < 0) break
    lines.push(prefix + words.slice(start, space))
    start = space + 1
    prefix = nextPrefix ?? ' '.repeat(firstPrefix.length)
  }
  lines.push(prefix + words.slice(start))
}

/** The index of the code unit after this many characters. */
const findOffset = (text: string, characters: number): number =>
  Array.from(text).slice(0, characters).join('').length
