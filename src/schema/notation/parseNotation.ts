import type { Result } from '../../base/index.js'
import type { SpecCodes } from '../../spec/index.js'
import { reportMistakesOf } from '../reportMistake.js'
import { allNotations, type NotationName } from './allPlaces.js'
import { explainText } from './explainText.js'
import { readNotation } from './readNotation.js'

/** Reads one text in short notation that is not in a document, such as a word of a command line. */
export function parseNotation(name: NotationName, text: string): Result<unknown, SpecCodes> {
  const notation = allNotations()[name]
  const read = readNotation(notation, text)
  if (read.ok) return { ok: true, value: read.value, findings: [] }
  return { ok: false, findings: [explainText(notation, text, read, '', reportMistakesOf({ kind: 'text' }))] }
}
