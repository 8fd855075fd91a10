import { asText } from '../base/index.js'

/** `API GL 5`, `gl5` and `GL-5` are the same designation. */
export function normalCategory(label: string): string {
  const text = asText(label)
  const match = /^(?:API)?[ -]?(GL|MT)[ -]?([0-9])$/.exec(text.slice(0, 20).trim().toUpperCase())
  return match === null ? text.trim() : `${match[1]}-${match[2]}`
}
