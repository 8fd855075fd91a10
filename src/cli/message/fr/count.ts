/** `1 ligne`, `2 lignes`; zero is singular. */
export const count = (value: number, singular: string, plural: string): string =>
  `${value} ${value < 2 ? singular : plural}`

/** `a, b ou c`, from a list with commas. */
export const joinOr = (list: string): string => list.replace(/, ([^,]*)$/, ' ou $1')
