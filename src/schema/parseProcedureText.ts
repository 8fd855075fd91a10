import type { Result } from '../base/index.js'
import type { ParseOptions, ProcedureDocument } from '../spec/index.js'
import { readDocumentText } from './readDocumentText.js'

/**
 * Reads a JSON text as a procedure. For data already parsed use {@link parseProcedure}; where the kind is not known
 * beforehand, {@link parseDocumentText}.
 *
 * Equation: the text is scanned once for repeated keys and for where it breaks off, then read as data.
 * @param text A JSON text; a byte order mark before it is passed over.
 * @param options `name`: the caller's name for the document, repeated in its findings.
 * @returns The procedure, or all findings; also `spec/not-json` and `spec/duplicate-key`.
 * @throws TypeError when `text` is no string, `options` no object or `options.name` no string.
 *
 * Source: RFC 8259 (2017); repeated keys are refused by house rule, since a reader drops all but one in silence.
 * @example
 * ```ts
 * import { parseProcedureText } from 'drivetrain-service/v1/spec'
 * // What if the text breaks off?
 * console.log(parseProcedureText('{"kind": ', { name: 'procedure.json' }).findings[0].code) // => 'spec/not-json'
 * ```
 */
export function parseProcedureText(text: string, options: ParseOptions = {}): Result<ProcedureDocument> {
  return readDocumentText(text, ['procedure'], options) as Result<ProcedureDocument>
}
