import { cleanText } from '../message/index.js'

/** A line of foreign text for a terminal: characters that hide or move the cursor are shown as their number; nothing is cut. */
export function safeLine(text: string): string {
  return (text.match(/.{1,400}/gsu) ?? []).map(cleanText).join('')
}
