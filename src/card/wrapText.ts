/**
 * Breaks text at spaces into lines of at most `width` characters, but not at no-break spaces. A longer word gets its
 * own line.
 */
export function wrapText(text: string, width: number, firstPrefix: string, nextPrefix: string): string[] {
  const lines: string[] = []
  let line = firstPrefix
  let isEmpty = true
  for (const word of text.split(/ +/).filter((piece) => piece !== '')) {
    const longerLine = isEmpty ? line + word : `${line} ${word}`
    if (!isEmpty && Array.from(longerLine).length > width) {
      lines.push(line)
      line = nextPrefix + word
    } else line = longerLine
    isEmpty = false
  }
  lines.push(line)
  return lines
}
