import type { Result } from '../base/index.js'
import type { ParseOptions, SpecSheet } from '../spec/index.js'
import { readDocumentText } from './readDocumentText.js'

/**
 * Reads a JSON text as a spec sheet. For data already parsed use {@link parseSpecSheet}; where the kind is not known
 * beforehand, {@link parseDocumentText}.
 *
 * Equation: the text is scanned once for repeated keys and for where it breaks off, then read as data.
 * @param text A JSON text; a byte order mark before it is passed over.
 * @param options `name`: the caller's name for the document, repeated in its findings.
 * @returns The spec sheet, or all findings; also `spec/not-json` and `spec/duplicate-key`.
 * @throws TypeError when `text` is no string, `options` no object or `options.name` no string.
 *
 * Source: RFC 8259 (2017); repeated keys are refused by house rule, since a reader drops all but one in silence.
 * @example
 * ```ts
 * import { parseSpecSheetText } from 'drivetrain-service/v1/spec'
 * // What if the text breaks off?
 * console.log(parseSpecSheetText('{"kind": ', { name: 'sheet.json' }).findings[0].code) // => 'spec/not-json'
 * ```
 */
export function parseSpecSheetText(text: string, options: ParseOptions = {}): Result<SpecSheet> {
  return readDocumentText(text, ['spec-sheet'], options) as Result<SpecSheet>
}
