/** `1 línea`, `2 líneas`. */
export const count = (value: number, singular: string, plural: string): string =>
  `${value} ${value === 1 ? singular : plural}`

/** `a, b o c`, from a list with commas. */
export const joinOr = (list: string): string => list.replace(/, ([^,]*)$/, ' o $1')
