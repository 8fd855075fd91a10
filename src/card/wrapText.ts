/**
 * Breaks text at spaces into lines of at most this many characters; no-break spaces hold. A single word that
 * is longer is alone on its line.
 */
export function wrapText(text: string, width: number, lead: string, follow: string): string[] {
  const lines: string[] = []
  let line = lead
  let empty = true
  for (const word of text.split(/ +/).filter((piece) => piece !== '')) {
    const longer = empty ? line + word : `${line} ${word}`
    if (!empty && Array.from(longer).length > width) {
      lines.push(line)
      line = follow + word
    } else line = longer
    empty = false
  }
  lines.push(line)
  return lines
}
