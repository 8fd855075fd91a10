import { asText } from '../base/index.js'

/** The normal spelling of a category: `GL-5` for `API GL 5` and `gl5`. */
export function normalizeCategory(label: string): string {
  const text = asText(label)
  const match = /^(?:API)?[ -]?(GL|MT)[ -]?([0-9])$/.exec(text.slice(0, 20).trim().toUpperCase())
  return match === null ? text.trim() : `${match[1]}-${match[2]}`
}
