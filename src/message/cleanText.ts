import { refuse } from '../base/index.js'

const MAX_LENGTH = 400

/** Characters that hide, reorder or break a line of text; no name or figure needs them. */
const UNSAFE_CHARACTERS =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: it must match control characters
  /[\u0000-\u001f\u007f-\u009f\u00ad\u061c\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb\ue000-\uf8ff]|\p{Cs}|[\u{e0000}-\u{10ffff}]/gu

/**
 * Makes a foreign string safe for one line of a message or a card, so that a name cannot forge the text around it:
 * characters that break the line, change its direction or are invisible become `\u{…}`, and text over 400 characters is
 * cut. It does not escape HTML or Markdown.
 */
export function cleanText(text: string): string {
  if (typeof text !== 'string') throw refuse('text', text, 'a string')
  const shortText = text.length <= MAX_LENGTH ? text : `${text.slice(0, MAX_LENGTH)}…`
  return shortText.replace(UNSAFE_CHARACTERS, (found) => `\\u{${found.codePointAt(0)?.toString(16)}}`)
}
