import type { Result } from '../../base/index.js'
import type { SpecCodes } from '../../spec/index.js'
import { reportMistakesOf } from '../reportMistake.js'
import { explainText } from './explainText.js'
import type { NotationName } from './notations.js'
import { readNotation } from './readNotation.js'

/** Reads one text in short notation that is not in a document, such as a word of a command line. */
export function parseNotation(name: NotationName, text: string): Result<unknown, SpecCodes> {
  const read = readNotation(name, text)
  if (read.ok) return { ok: true, value: read.value, findings: [] }
  return { ok: false, findings: [explainText(name, text, read, '', reportMistakesOf({ kind: 'text' }))] }
}
