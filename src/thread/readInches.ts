/** Inches of a written size: `1/2`, `1 1/4`, `1-1/4`, `2`. Internal; the text is checked. */
export function readInches(size: string): number {
  let inches = 0
  for (const part of size.split(/[ -]/)) {
    const [over = '0', under = '1'] = part.split('/')
    inches += Number(over) / Number(under)
  }
  return inches
}
