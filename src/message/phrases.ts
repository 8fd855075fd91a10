// Helpers for texts that are the same in every language.
import type { Say } from './catalogue.js'

/** `one, two and three`, with the language's word before the last item. */
export const join = (items: readonly string[], word: string): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} ${word} ${items.at(-1)}`

export const capitalize = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** `N·m`, without a number. */
export const writeUnitName = (unit: string, say: Say): string =>
  say.quantity({ value: '1', unit }).replace(/^1\s*/, '')

/** The language's word for a document value; a value that the table lacks is shown as it is typed. */
export const nameOf = (names: Readonly<Record<string, string>>, value: string): string =>
  Object.hasOwn(names, value) ? (names[value] ?? value) : value
