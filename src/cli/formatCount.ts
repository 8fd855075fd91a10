/** `1 line`, `2 lines`. */
export function formatCount(value: number, word: string): string {
  return `${value} ${word}${value === 1 ? '' : 's'}`
}
