/** `1 line`, `2 lines`. */
export const count = (value: number, noun: string): string => `${value} ${noun}${value === 1 ? '' : 's'}`

/** `a, b or c`, from a list with commas. */
export const joinOr = (list: string): string => list.replace(/, ([^,]*)$/, ' or $1')
