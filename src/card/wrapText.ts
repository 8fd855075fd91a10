/**
 * Breaks text at spaces into lines of at most `width` characters, but not at no-break spaces. A longer word gets its
 * own line.
 */
export function wrapText(text: string, width: number, firstPrefix: string, nextPrefix: string): string[] {
  // Most lines are short; code units are at least as many as characters.
  if (firstPrefix.length + text.length <= width && !/^ | {2}| $/.test(text)) return [firstPrefix + text]
  const lines: string[] = []
  let line = firstPrefix
  let length = countCharacters(line)
  let isEmpty = true
  for (const word of text.split(' ')) {
    if (word === '') continue
    const added = countCharacters(word)
    if (!isEmpty && length + 1 + added > width) {
      lines.push(line)
      line = nextPrefix + word
      length = countCharacters(nextPrefix) + added
    } else {
      line += isEmpty ? word : ` ${word}`
      length += isEmpty ? added : 1 + added
    }
    isEmpty = false
  }
  lines.push(line)
  return lines
}

/** A character outside the basic plane is two code units. */
const countCharacters = (text: string): number =>
  /[\ud800-\udfff]/.test(text) ? Array.from(text).length : text.length
