import type { Result } from '../../base/index.js'
import type { SpecCodes } from '../../spec/index.js'
import { reportMistakesOf } from '../reportMistake.js'
import { buildOnce } from '../shapes/makeShape.js'
import { explainText } from './explainText.js'
import { interval, oils, seal, severeUse, window } from './leafNotations.js'
import { makeNotations } from './notation.js'
import { readNotation } from './readNotation.js'
import { SHEET_SLIPS } from './sheetSlips.js'

/** The notations that questions are asked in. */
const getNotations = /* @__PURE__ */ buildOnce(() =>
  makeNotations({ interval, oils, seal, severeUse, window }, SHEET_SLIPS),
)

/** Reads one text in short notation that is not in a document, such as a word of a command line. */
export function parseNotation(
  name: keyof ReturnType<typeof getNotations>,
  text: string,
): Result<unknown, SpecCodes> {
  const notation = getNotations()[name]
  const reading = readNotation(notation, text)
  if (reading.ok) return { ok: true, value: reading.value, findings: [] }
  return {
    ok: false,
    findings: [explainText(notation, text, reading, '', reportMistakesOf({ kind: 'text' }))],
  }
}
