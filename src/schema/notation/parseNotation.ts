import type { Result } from '../../base/index.js'
import type { SpecCodes } from '../../spec/index.js'
import { createMistakeReporter } from '../reportMistake.js'
import { buildOnce } from '../shapes/makeShape.js'
import { explainText } from './explainText.js'
import { interval, oils, seal, severeUse, window } from './leafNotations.js'
import { makeNotations } from './notation.js'
import { readNotation } from './readNotation.js'
import { SHEET_SLIPS } from './sheetSlips.js'

/** The notations of commands that answer a single question. */
const getNotations = /* @__PURE__ */ buildOnce(() =>
  makeNotations({ interval, oils, seal, severeUse, window }, SHEET_SLIPS),
)

/** Parses one text in short notation outside a document, such as a command line argument. */
export function parseNotation(
  name: keyof ReturnType<typeof getNotations>,
  text: string,
): Result<unknown, SpecCodes> {
  const notation = getNotations()[name]
  const reading = readNotation(notation, text)
  if (reading.ok) return { ok: true, value: reading.value, findings: [] }
  return {
    ok: false,
    findings: [explainText(notation, text, reading, '', createMistakeReporter({ kind: 'text' }))],
  }
}
