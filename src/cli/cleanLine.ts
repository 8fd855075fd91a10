import { cleanText } from '../message/index.js'

/**
 * Makes foreign text safe for a terminal: control characters become their code points. Unlike `cleanText`, it
 * does not shorten the text.
 */
export function cleanLine(text: string): string {
  return (text.match(/.{1,400}/gsu) ?? []).map(cleanText).join('')
}
