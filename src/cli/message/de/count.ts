/** `1 Zeile`, `2 Zeilen`. */
export const count = (value: number, singular: string, plural: string): string =>
  `${value} ${value === 1 ? singular : plural}`

/** `a, b oder c`, from a list with commas. */
export const joinOr = (list: string): string => list.replace(/, ([^,]*)$/, ' oder $1')
