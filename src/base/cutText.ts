import { MAX_QUOTED_LENGTH } from './documentLimits.js'

/** Cuts foreign text to fit a message, never inside a character. */
export function cutText(text: string): string {
  if (text.length <= MAX_QUOTED_LENGTH) return text
  const end = /[\uD800-\uDBFF]/.test(text.charAt(MAX_QUOTED_LENGTH - 2))
    ? MAX_QUOTED_LENGTH - 2
    : MAX_QUOTED_LENGTH - 1
  return `${text.slice(0, end)}…`
}
