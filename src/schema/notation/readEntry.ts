import { getTypeName } from '../convertIssue.js'
import type { Notation } from './notation.js'
import type { Expander, Holder, Place } from './placeTable.js'

/** Reads a value that must be a string. */
export function readEntry(
  text: unknown,
  notation: Notation,
  place: Place,
  { readText, findings, unreadPointers, report }: Expander,
): Holder | null {
  if (typeof text === 'string') return readText(text, notation, place) as Holder | null
  findings.push(report(place.path, 'spec/wrong-type', { expected: 'text', found: getTypeName(text) }))
  unreadPointers.push(place.full)
  return null
}
