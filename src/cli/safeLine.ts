import { cleanText } from '../message/index.js'

/** A line of foreign words fit for a terminal: what would move the cursor or hide is shown as its number, nothing is cut. */
export function safeLine(text: string): string {
  return (text.match(/.{1,400}/gsu) ?? []).map(cleanText).join('')
}
