const LONGEST = 400

/** Characters that hide, reorder or break a line of text, which no name or figure has a use for. */
const UNSAFE =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
  /[\u0000-\u001f\u007f-\u009f\u00ad\u061c\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb\ue000-\uf8ff]|\p{Cs}|[\u{e0000}-\u{10ffff}]/gu

/**
 * A foreign string made fit to stand in one line of a message or a card: what would break the line, turn its direction
 * or vanish is shown as `\u{…}`, and what is longer than 400 characters is cut. It does not escape markup: whoever
 * writes HTML or Markdown does that.
 *
 * @param text - any string
 * @returns one line, without controls, direction overrides, invisible or private characters, or lone surrogates
 *
 * Source: house rule; a name from a document must not be able to forge the text around it.
 *
 * @example
 * ```ts
 * // How does a name with a line break in it stand in a message?
 * import { cleanText } from 'drivetrain-service/v1'
 * cleanText('left\nhub') // => 'left\\u{a}hub'
 * ```
 */
export function cleanText(text: string): string {
  if (typeof text !== 'string') throw new TypeError(`text must be a string, not ${typeof text}`)
  const whole = text.length <= LONGEST ? text : `${text.slice(0, LONGEST)}…`
  return whole.replace(UNSAFE, (found) => `\\u{${found.codePointAt(0)?.toString(16)}}`)
}
