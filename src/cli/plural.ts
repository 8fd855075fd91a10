/** `1 line`, `2 lines`. */
export function plural(value: number, word: string): string {
  return `${value} ${word}${value === 1 ? '' : 's'}`
}
